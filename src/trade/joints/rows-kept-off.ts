import type { Part } from '../carcass/part';
import { faultOf, type HandJoint, idOf } from './by-hand';

/**
 * The rows of holes by hand that one other cut by hand keeps from being bored: without it they run into nothing.
 *
 * @param part with all that was added to it
 * @param own what was added to it
 */
export function rowsKeptOff(part: Part, cut: HandJoint, own: readonly HandJoint[]): readonly HandJoint[] {
  if (cut.kind === 'holes') return [];
  const bare = withoutCut(part, idOf(cut));
  return own.filter(
    (row) => row.kind === 'holes' && faultOf(part, row)?.code === 'hole-in-cut' && !faultOf(bare, row),
  );
}

function withoutCut(part: Part, id: string): Part {
  const others = <T extends { readonly id?: string | undefined }>(cuts: readonly T[] = []): readonly T[] =>
    cuts.filter((cut) => cut.id !== id);
  const { board } = part;
  return {
    ...part,
    rabbets: others(part.rabbets),
    along: others(part.along),
    notches: others(part.notches),
    laps: others(part.laps),
    ...(board ? { board: { ...board, wides: others(board.wides) } } : {}),
  };
}
