import type { CopyName } from '../carcass/part-name';
import type { Board } from './board';
import type { Groove } from './layout';

/** One physical thing the same setting cuts: its id in operations, and which one it is. */
export type Copy = {
  readonly id: string;
  /** Nothing where there is no other of its kind: it is the part itself. */
  readonly name?: CopyName;
  /** Cut again so many times. */
  readonly again: number;
};

/**
 * What one setting of a groove cuts: left and right of a pair, so many alike, or the one face of a partition. A copy
 * cut again has an id of its own, so that no tick of the spoiled one stands for it.
 *
 * @example copiesOf(pair, groove).map((c) => c.id) // left, right
 */
export function copiesOf(board: Board, groove: Groove): readonly Copy[] {
  if (board.made === 'pair') return (['left', 'right'] as const).map((hand) => copyFrom(board, hand));
  if (board.made === 'partition') {
    const again = board.recuts?.['1'] ?? 0;
    return [{ id: copyId(groove.face, again), name: groove.face, again }];
  }
  const alike = Array.from({ length: board.copies }, (_, k) => copyFrom(board, k + 1));
  return board.copies === 1 ? alike.map(({ id, again }) => ({ id, again })) : alike;
}

const copyFrom = (board: Board, name: CopyName): Copy => {
  const again = board.recuts?.[`${name}`] ?? 0;
  return { id: copyId(`${name}`, again), name, again };
};

/** Id of a copy cut again so many times. @example copyId('left', 1) // 'left~2' */
export const copyId = (id: string, again: number): string => (again === 0 ? id : `${id}~${again + 1}`);

/** The copy an id stands for, however often it was cut again. @example copyOf('left~2') // 'left' */
export const copyOf = (id: string): string => id.split('~')[0] ?? id;

/** The operation of cutting one copy at one setting. The same tick shows wherever the operation does. */
export const cutOp = (board: string, setting: string, copy: string): string =>
  `cut/${board}/${setting}/${copy}`;

/** The operation of knifing one groove's near edge. */
export const markOp = (board: string, groove: string): string => `mark/${board}/${groove}`;
