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

/** A set as far as the shop has said what lies in its box; nothing stands in for what is not said. Inches. */
export type StackBox = Omit<StackStock, 'outer'> & { readonly outer?: Length };

/**
 * What is asked with one tap when a box is first written down: the sizes a width is made of. Common practice, no
 * source.
 */
export const offered = { outer: inches(1n, 8n), chippers: [inches(1n, 8n), inches(1n, 16n)] } as const;

/**
 * The set of a box that has been written down.
 *
 * @returns nothing until the outers are given and one piece is at hand
 * @example setIn({ pieces: [] }) // undefined
 */
export function setIn({ outer, ...box }: StackBox): StackStock | undefined {
  return outer && box.pieces.some((p) => p.count > 0) ? { outer, ...box } : undefined;
}

/**
 * A list of pieces with another count of one size and kind; a count of 0 takes it off, a new one stands last.
 *
 * @param piece size in inches, > 0; count whole, >= 0: all there are of it
 * @example withCount([], { size: inches(1n, 8n), count: 4, kind: 'chipper' }) // four chippers of 1/8
 */
export function withCount(pieces: readonly Piece[], piece: Piece): readonly Piece[] {
  const same = (p: Piece) => p.kind === piece.kind && equals(p.size, piece.size);
  const first = pieces.findIndex(same);
  const kept = pieces.flatMap((p, k) => (same(p) ? (k === first ? [piece] : []) : [p]));
  const all = first < 0 ? [...pieces, piece] : kept;
  return all.filter((p) => !same(p) || p.count > 0);
}

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
 * @example finestStep(two shims .004, two .005) // .001: a .005 for a .004
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
