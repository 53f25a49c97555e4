import type { Board } from './board';
import type { Groove } from './layout';

/** One physical thing the same setting cuts: its id in operations, and what it is called. */
export type Copy = { readonly id: string; readonly name: string };

/**
 * What one setting of a groove cuts: left and right of a pair, so many alike, or the one face of a partition.
 *
 * @example copiesOf(pair, groove).map((c) => c.name) // Left, Right
 */
export function copiesOf(board: Board, groove: Groove): readonly Copy[] {
  if (board.made === 'pair') {
    return [
      { id: 'left', name: 'Left' },
      { id: 'right', name: 'Right' },
    ];
  }
  if (board.made === 'partition') return [{ id: groove.face, name: `Face ${groove.face}` }];
  if (board.copies === 1) return [{ id: '1', name: 'This board' }];
  return Array.from({ length: board.copies }, (_, k) => ({ id: `${k + 1}`, name: `No. ${k + 1}` }));
}

/** The operation of cutting one copy at one setting. The same tick shows wherever the operation does. */
export const cutOp = (board: string, setting: string, copy: string): string =>
  `cut/${board}/${setting}/${copy}`;

/** The operation of knifing one groove's near edge. */
export const markOp = (board: string, groove: string): string => `mark/${board}/${groove}`;
