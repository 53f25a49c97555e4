import { add, half, subtract, zero } from '../../length/length';
import type { Rounded } from '../../length/round';
import { fromOtherEnd, markAt, type Tape } from '../../length/tape';
import type { Board } from './board';
import type { Layout } from './lay-out';
import type { Groove } from './layout';

/** The figures of one groove at the tape. Every figure but the mate's stands on the rounded near mark. */
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
  const length = board.length ?? zero;
  return layout.grooves.map((groove) => {
    const near = markAt(groove.near, tape);
    const mate = board.mate && subtract(add(groove.near, board.mate), board.datum ?? zero);
    return {
      groove,
      near,
      centre: markAt(add(near.value, half(groove.width)), tape),
      far: markAt(add(near.value, groove.width), tape),
      other: fromOtherEnd(length, near, tape),
      ...(mate ? { mate: markAt(mate, tape) } : {}),
    };
  });
}
