import { compare, equals, inches, isPositive, type Length, shortest, subtract } from '../../length/length';

/** Pieces of one size that lie in the box: a size of 1/8, four of them. Size in inches, > 0; count whole, >= 0. */
export type Piece = {
  readonly size: Length;
  readonly count: number;
  readonly kind: 'chipper' | 'shim';
};

/** A dado stack as it lies in its box. Inches. */
export type StackStock = {
  /** What one outer blade cuts; two are used. */
  readonly outer: Length;
  readonly pieces: readonly Piece[];
  /** The most the arbor carries; no limit when not said. */
  readonly arbor?: Length;
  /** What this set cuts over its nominal sum, learned from test cuts; may be negative. */
  readonly correction?: Length;
};

/** How far under and over what is wanted a stack may cut. Inches, both >= 0. */
export type Margin = { readonly under: Length; readonly over: Length };

/** .001 under to .002 over. Common practice, no source. */
export const usualMargin: Margin = { under: inches(1n, 1000n), over: inches(2n, 1000n) };

const two = (thousandths: bigint): Piece => ({ size: inches(thousandths, 1000n), count: 2, kind: 'shim' });

/** A stack as commonly sold, on an arbor that carries 13/16. Common practice, no source. */
export const usualStack: StackStock = {
  outer: inches(1n, 8n),
  pieces: [
    { size: inches(1n, 8n), count: 4, kind: 'chipper' },
    { size: inches(1n, 16n), count: 1, kind: 'chipper' },
    two(4n),
    two(5n),
    two(10n),
    two(12n),
    two(20n),
  ],
  arbor: inches(13n, 16n),
};

/**
 * The pieces larger first, a chipper before a shim of its size, like pieces under one count.
 *
 * @example largerFirst(two shims .005, one more .005, one 1/8) // 1/8 one, .005 three
 */
export function largerFirst(pieces: readonly Piece[]): readonly Piece[] {
  const rank = (p: Piece): number => (p.kind === 'chipper' ? 0 : 1);
  const list: Piece[] = [];
  for (const piece of [...pieces].sort((a, b) => compare(b.size, a.size) || rank(a) - rank(b))) {
    const last = list.at(-1);
    if (last && last.kind === piece.kind && equals(last.size, piece.size))
      list[list.length - 1] = { ...last, count: last.count + piece.count };
    else list.push(piece);
  }
  return list;
}

/**
 * The least one shim can change a stack by: put in, or changed for one of another size. Without shims, one chipper.
 *
 * @param pieces sizes > 0; those with a count of 0 are not at hand
 * @returns inches; nothing when no piece is at hand
 * @example finestStep(usualStack.pieces) // .001: a .005 for a .004
 */
export function finestStep(pieces: readonly Piece[]): Length | undefined {
  const atHand = largerFirst(pieces.filter((p) => p.count > 0));
  const shims = atHand.filter((p) => p.kind === 'shim');
  const sizes = (shims.length > 0 ? shims : atHand).map((p) => p.size);
  const thinnest = sizes[sizes.length - 1];
  if (!thinnest) return undefined;
  const changes = sizes.flatMap((size, k) => {
    const next = sizes[k + 1];
    return next && !equals(size, next) ? [subtract(size, next)] : [];
  });
  return shortest(thinnest, ...changes);
}

/** Where a list of pieces cannot be reckoned with: a size that is nothing, or a count that is not whole. */
export type PieceError =
  | { readonly code: 'no-pieces' }
  | { readonly code: 'piece-not-positive'; readonly at: number }
  | { readonly code: 'not-a-count'; readonly at: number };

/**
 * What is wrong with a list of pieces, if anything.
 *
 * @returns the first fault, `at` its place in the list from 0
 * @example faultIn([]) // no-pieces
 */
export function faultIn(pieces: readonly Piece[]): PieceError | undefined {
  const size = pieces.findIndex((p) => !isPositive(p.size));
  if (size >= 0) return { code: 'piece-not-positive', at: size };
  const count = pieces.findIndex((p) => !Number.isSafeInteger(p.count) || p.count < 0);
  if (count >= 0) return { code: 'not-a-count', at: count };
  return pieces.some((p) => p.count > 0) ? undefined : { code: 'no-pieces' };
}
