import type { Part } from '../carcass/part';
import type { CopyName, PieceName } from '../carcass/part-name';
import { copyId } from '../grooves/copies';
import { opId } from './operation';

/** A piece of a part: its copy, and what it is. */
export type Piece = { readonly id: string; readonly name: PieceName };

/** The pieces of a part that are to be made; one spoiled is replaced by its recut. */
export function piecesToCut(part: Part, recuts: Readonly<Record<string, number>>): readonly Piece[] {
  const pair = part.pair ?? part.board?.made === 'pair';
  return Array.from({ length: part.copies }, (_, k) => {
    const copy: CopyName = pair ? (k === 0 ? 'left' : 'right') : k + 1;
    const own = `${copy}`;
    const again = recuts[own] ?? 0;
    return { id: copyId(own, again), name: pieceOf(part, part.copies === 1 ? undefined : copy, again) };
  });
}

export const pieceOf = (part: Part, copy: CopyName | undefined, again: number): PieceName => ({
  of: part.name,
  copy,
  recut: again > 0,
});

/** What an operation of a piece begins with. */
export const base = (part: Part, piece: Piece, cut: string) =>
  ({ id: opId(part.id, cut, piece.id), part: part.id, copy: piece.id, name: piece.name, after: [] }) as const;
