import { type Length, subtract, zero } from '../../length/length';
import { toStored } from '../../length/stored';
import { boardFrom, type Cutting } from '../carcass/boards';
import type { Part } from '../carcass/part';
import type { Board, Wide } from '../grooves/board';
import { layOut } from '../grooves/lay-out';

/** A dado added by hand across a part: its near wall from the reference end. Inches. */
export type HandDado = Required<Pick<Wide, 'id' | 'face'>> & {
  readonly near: Length;
  readonly width: Length;
  readonly depth: Length;
  readonly said: string;
};

/**
 * Why a dado is not cut: the grooves of a board laid out by hand are laid out in Marks; it starts before the end, or
 * runs into another groove, by so much; so little would stay between it and a groove of a run; or it comes out in one
 * of the other face, by so much or just.
 */
export type DadoFault =
  | { readonly code: 'in-marks' }
  | { readonly code: 'before' | 'meets' | 'other-face'; readonly by: Length }
  | { readonly code: 'land'; readonly land: Length };

/** What keeps a dado from being cut among the other grooves of its part, itself left out. */
export function dadoFault(part: Part, dado: HandDado): DadoFault | undefined {
  if (part.name.role === 'board') return { code: 'in-marks' };
  const board = boardOf(part, {});
  const without = { ...board, wides: board.wides.filter(({ id }) => id !== dado.id) };
  const { problems, dropped } = layOut(grooved(without, dado));
  const lost = dropped.find(({ by }) => by.id === dado.id);
  if (lost)
    return lost.why === 'overlap' ? { code: 'meets', by: lost.amount } : { code: 'land', land: lost.amount };
  for (const found of problems) {
    if (found.code === 'off-the-end' && found.in === dado.id) return { code: 'before', by: found.by };
    const isOne = 'a' in found && (found.a === dado.id || found.b === dado.id);
    if (isOne) return { code: found.code === 'overlap' ? 'meets' : 'other-face', by: found.by };
  }
  return undefined;
}

/** A dado of another part. Inches. */
type Other = Pick<HandDado, 'near' | 'width' | 'depth'> & { readonly of: Part };

/**
 * The dados of other parts that stand on the stop at the end of the same name, one of those alike: one set to the exact
 * figures of another is cut while its setup stands, and what is let in with room stands between two marks.
 */
export function othersLike(part: Part, parts: readonly Part[]): readonly Other[] {
  const found = new Map<string, Other>();
  for (const of of parts) {
    if (of.id === part.id || of.end !== part.end || !of.board) continue;
    for (const { wide, near, width, depth } of layOut(of.board).grooves) {
      const key = [near, width, depth].map((x) => x && toStored(x)).join(' ');
      if (wide && depth && !found.has(key)) found.set(key, { of, near, width, depth });
    }
  }
  return [...found.values()];
}

/** A part with a dado among its grooves, cut as they are: at the stop, where nothing else was said. */
export const withDado = (part: Part, dado: HandDado, cutting: Cutting): Part => ({
  ...part,
  board: grooved(boardOf(part, cutting), dado),
});

/** The grooves of a part as a board; of one that has none yet, the part as it is cut to length. */
const boardOf = (part: Part, cutting: Cutting): Board =>
  part.board ??
  boardFrom(
    {
      id: part.id,
      part: part.name,
      length: part.length.sum.value,
      thickness: part.thickness,
      across: part.width.sum.value,
      end: part.end,
    },
    { made: part.pair ? 'pair' : 'alike', copies: part.copies, lengthMark: part.length.mark },
    { ...cutting, end: part.end },
  );

/** Its places count from the datum of the board. */
function grooved(board: Board, { near, ...dado }: HandDado): Board {
  const { datum = zero } = board;
  return { ...board, wides: [...board.wides, { ...dado, near: subtract(near, datum) }] };
}
