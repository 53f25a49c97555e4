import { add, half, type Length, subtract, zero } from '../../length/length';
import type { Rounded } from '../../length/round';
import { markAt, restOfLength, type Tape } from '../../length/tape';
import type { Held } from '../machines/machine';
import type { Board } from './board';
import type { Layout } from './lay-out';
import type { Groove } from './layout';

/**
 * The figures of one groove at the tape. Every figure but the mate's stands on the rounded near mark, and what it
 * leaves is told from its exact place: with all that is left, its walls stand exactly as far apart as wanted.
 */
export type Mark = {
  readonly groove: Groove;
  readonly near: Rounded;
  readonly centre: Rounded;
  readonly far: Rounded;
  /** Near edge from the other end: rounded length less rounded mark, so both marks meet. */
  readonly other: Rounded;
  /** Near edge on the facing part, from that part's own reference end. */
  readonly mate?: Rounded;
};

/**
 * The marks of a laid-out board, each rounded once, from the reference end.
 *
 * @param tape the marks of the job
 * @example marksOf(board, layOut(board), '1/32')[0].near.value
 */
export function marksOf(board: Board, layout: Layout, tape: Tape): readonly Mark[] {
  const length = lengthMark(board, tape);
  return layout.grooves.map((groove) => {
    const near = markAt(groove.near, tape);
    const mate = board.mate && subtract(add(groove.near, board.mate), board.datum ?? zero);
    const past = (part: Length): Rounded => {
      const { value, rest } = markAt(add(near.value, part), tape);
      return { value, rest: add(rest, near.rest) };
    };
    return {
      groove,
      near,
      centre: past(half(groove.width)),
      far: past(groove.width),
      other: restOfLength(length, near),
      ...(mate ? { mate: markAt(mate, tape) } : {}),
    };
  });
}

/** The length of a board as it is cut: rounded by its own purpose where it has one, else to the nearest mark. */
export const lengthMark = ({ length = zero, lengthMark: own }: Held, tape: Tape): Rounded =>
  own ?? markAt(length, tape);
