import type { Board } from './board';
import type { Groove } from './layout';

/** One physical thing the same setting cuts: its id in operations, and what it is called. */
export type Copy = {
  readonly id: string;
  readonly name: string;
  /** Cut again so many times. */
  readonly again: number;
  /** There is no other of its kind: it is the part itself. */
  readonly only: boolean;
};

/**
 * What one setting of a groove cuts: left and right of a pair, so many alike, or the one face of a partition. A copy
 * cut again has an id of its own, so that no tick of the spoiled one stands for it.
 *
 * @example copiesOf(pair, groove).map((c) => c.name) // Left, Right
 */
export function copiesOf(board: Board, groove: Groove): readonly Copy[] {
  if (board.made === 'pair') return [recut(board, 'left', 'Left'), recut(board, 'right', 'Right')];
  if (board.made === 'partition') {
    const again = board.recuts?.['1'] ?? 0;
    return [
      { id: copyId(groove.face, again), name: called(`Face ${groove.face}`, again), again, only: false },
    ];
  }
  if (board.copies === 1)
    return [{ ...recut(board, '1', board.hand ? board.name : 'This board'), only: true }];
  return Array.from({ length: board.copies }, (_, k) => recut(board, `${k + 1}`, `No. ${k + 1}`));
}

const recut = (board: Board, id: string, name: string): Copy => {
  const again = board.recuts?.[id] ?? 0;
  return { id: copyId(id, again), name: called(name, again), again, only: false };
};

/** Id of a copy cut again so many times. @example copyId('left', 1) // 'left~2' */
export const copyId = (id: string, again: number): string => (again === 0 ? id : `${id}~${again + 1}`);

/** The copy an id stands for, however often it was cut again. @example copyOf('left~2') // 'left' */
export const copyOf = (id: string): string => id.split('~')[0] ?? id;

/** What a piece is called, cut again so many times. */
export const called = (name: string, again: number): string => (again === 0 ? name : `${name}, recut`);

/** The operation of cutting one copy at one setting. The same tick shows wherever the operation does. */
export const cutOp = (board: string, setting: string, copy: string): string =>
  `cut/${board}/${setting}/${copy}`;

/** The operation of knifing one groove's near edge. */
export const markOp = (board: string, groove: string): string => `mark/${board}/${groove}`;
