import { compare, isNegative, type Length, less, longest, subtract, zero } from '../../length/length';
import { err, ok, type Result } from '../../length/result';
import { faultIn, type Piece, type PieceError } from './pieces';
import { type Sum, sumsOf, type TooManyWays } from './sums';

/** Shims of one size: inches, > 0; count whole, >= 0. */
export type Shim = Pick<Piece, 'size' | 'count'>;

export type Pile = {
  /** Larger first, each with a count of at least 1; empty when none is wanted, or all are too thick. */
  readonly chosen: readonly Shim[];
  readonly height: Length;
  /** gap - height, inches, never below 0. */
  readonly short: Length;
  readonly pieces: number;
  /** Whether `short` is within the tolerance. */
  readonly within: boolean;
};

export type PileError =
  | PieceError
  | TooManyWays
  | { readonly code: 'gap-negative'; readonly by: Length }
  | { readonly code: 'tolerance-negative' };

/**
 * The pile of shims for a gap: never over. Within the tolerance: fewest, then closest; none within: the closest.
 *
 * @param gap inches, >= 0; @param shims at hand; @param tol how much short is good enough, inches, >= 0
 * @returns lengths in inches, or what is wrong with the figures given
 * @example pileFor(inches(19n, 64n), shims, inches(20n, 1000n)) // short by 1/64: Example 4 of stacks
 */
export function pileFor(gap: Length, shims: readonly Shim[], tol: Length): Result<Pile, PileError> {
  if (isNegative(gap)) return err({ code: 'gap-negative', by: subtract(zero, gap) });
  if (isNegative(tol)) return err({ code: 'tolerance-negative' });
  const pieces = shims.map(({ size, count }): Piece => ({ size, count, kind: 'shim' }));
  const fault = faultIn(pieces);
  if (fault) return err(fault);
  const least = longest(zero, subtract(gap, tol));
  const within = sumsOf(pieces, { from: least, to: gap });
  if (!within.ok) return within;
  if (within.value.length > 0) return ok(toPile(within.value.reduce(fewerThenTaller), gap, true));
  const under = sumsOf(pieces, { from: zero, to: gap });
  return under.ok ? ok(toPile(under.value.reduce(taller), gap, false)) : under;
}

const taller = (a: Sum, b: Sum): Sum => (less(a.total, b.total) ? b : a);
const fewerThenTaller = (a: Sum, b: Sum): Sum =>
  (a.pieces - b.pieces || compare(b.total, a.total)) > 0 ? b : a;

function toPile({ total, chosen, pieces }: Sum, gap: Length, within: boolean): Pile {
  return {
    chosen: chosen.map(({ size, count }) => ({ size, count })),
    height: total,
    short: subtract(gap, total),
    pieces,
    within,
  };
}
