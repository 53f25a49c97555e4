import { add, atMost, inches, isPositive, type Length, shortest } from '../../length/length';
import type { Part } from '../carcass/part';
import type { PieceName } from '../carcass/part-name';
import { piecesToCut } from '../setups/part-pieces';
import { type RoughAt, roughOf } from './rough';
import type { Rect } from './tree';

/** How a piece may lie: its length along the face grain, across it, or either way. */
export type Lies = 'along' | 'across' | 'free';

/** What is said of a part for laying it out. */
export type LayNotes = {
  readonly lies?: Lies | undefined;
  /** `anywhere`: its mates need not lie on the same sheet; a letter: with all of that letter. */
  readonly share?: string | undefined;
};

/** One piece to be cut out of a sheet or stick: finished size at the tape, and rough. Inches. */
export type RoughPiece = {
  /** `part/copy`, as in the ids of its cuts. */
  readonly id: string;
  readonly part: string;
  readonly copy: string;
  readonly name: PieceName;
  readonly stuff: string | undefined;
  readonly thickness: Length | undefined;
  readonly finished: Rect;
  readonly long: Length;
  readonly wide: Length;
  readonly lies: Lies;
  /** Pieces with the same word must lie on one sheet. */
  readonly together?: string;
};

type PiecesAt = RoughAt & {
  readonly notes: (part: string) => LayNotes;
  readonly recuts: (part: string) => Readonly<Record<string, number>>;
};

/**
 * Every piece that must come out of a sheet or stick, in the order of the parts: each copy once, a spoiled one as its
 * recut. Fronts cut out of a blank are in the blank. Rough sizes are those of `roughOf`.
 *
 * @param parts of the job; those with no length or no width have no piece
 * @example roughPieces([side], at)[0].wide // 17 3/4 for a side 17 1/2 wide
 */
export function roughPieces(parts: readonly Part[], at: PiecesAt): readonly RoughPiece[] {
  const ids = new Set(parts.map((part) => part.id));
  return parts
    .filter((part) => part.outOf === undefined || !ids.has(part.outOf))
    .filter((part) => isPositive(part.length.mark.value) && isPositive(part.width.mark.value))
    .flatMap((part) => piecesFrom(part, at));
}

function piecesFrom(part: Part, at: PiecesAt): readonly RoughPiece[] {
  const rough = roughOf(part, at);
  const stick = part.stuff !== undefined && at.stick(part.stuff);
  const { lies = 'along', share } = at.notes(part.id);
  const together = togetherOf(part, share);
  return piecesToCut(part, at.recuts(part.id)).map((piece) => ({
    id: `${part.id}/${piece.id}`,
    part: part.id,
    copy: piece.id,
    name: piece.name,
    stuff: part.stuff,
    thickness: part.thickness,
    ...rough,
    lies,
    ...(together !== undefined && !stick ? { together } : {}),
  }));
}

/** What a final cut needs at least. Common practice, no source. Inches. */
export const leastOver = inches(1n, 16n);

/** The least a piece may be cut at: its finished size and a final cut's worth, or its rough size where that is less. */
export const leastRough = ({ finished, long, wide }: RoughPiece): Rect => ({
  long: shortest(long, add(finished.long, leastOver)),
  wide: shortest(wide, add(finished.wide, leastOver)),
});

/**
 * Whether a rectangle, its length along the piece, still gives the piece.
 *
 * @example givesPiece({ long, wide }, piece)
 */
export function givesPiece(own: Rect, piece: RoughPiece): boolean {
  const least = leastRough(piece);
  return atMost(least.long, own.long) && atMost(least.wide, own.wide);
}

/**
 * Left and right, the two of a pair, the fronts of a column: grain and thickness must match, so they share a sheet. It
 * is kept in what a plan rests on, so the spelling never changes.
 */
function togetherOf(part: Part, share: string | undefined): string | undefined {
  if (share === 'anywhere') return undefined;
  if (share) return `as said ${share}`;
  const column = /^(.*~c\d+)d\d+front$/.exec(part.id)?.[1];
  if (column) return `fronts of ${column}`;
  const mates = [part.id, ...part.mates];
  return part.mates.length > 0 && mates.every((id) => id.split('~')[0] === part.id.split('~')[0])
    ? [...new Set(mates)].sort().join(' and ')
    : undefined;
}
