import { inches, type Length, numerator } from '../../length/length';
import { err, ok, type Result } from '../../length/result';
import { largerFirst, type Piece } from './pieces';

/** One thickness the pieces can make, and the best way to make it. */
export type Sum = {
  readonly total: Length;
  readonly pieces: number;
  readonly shims: number;
  /** Larger first, each with a count of at least 1. */
  readonly chosen: readonly Piece[];
};

/** More thicknesses than a box of real pieces makes: the search is refused rather than cut short. */
export type TooManyWays = { readonly code: 'too-many-ways' };
const mostSums = 200_000;

/** The least and the greatest thickness looked for, inches, both included. */
type Range = { readonly from: Length; readonly to: Length };

/** A way to make a sum: how many of each kind, larger kinds first. */
type Way = { readonly pieces: number; readonly shims: number; readonly counts: readonly number[] };
type Ways = ReadonlyMap<bigint, Way>;
type Kind = { readonly size: bigint; readonly piece: Piece };

/**
 * Every thickness within a range that the pieces can make, each by the fewest pieces, then the fewest shims, then the
 * larger pieces first.
 *
 * The search is whole: kinds are taken one after another, and of two ways to the same sum the better stays the better
 * whatever is added to both, so the other is let go. A sum is dropped only where all that is still to come cannot
 * bring it into the range.
 *
 * @param pieces sizes > 0, counts whole and >= 0
 * @returns in no order; nothing at all counts as a thickness of 0
 * @example sumsOf(pieces, { from: inches(9n, 1000n), to: inches(9n, 1000n) }) // .005 + .004
 */
export function sumsOf(pieces: readonly Piece[], { from, to }: Range): Result<readonly Sum[], TooManyWays> {
  const list = largerFirst(pieces).filter((p) => p.count > 0);
  const unit = commonDenominator([from, to, ...list.map((p) => p.size)]);
  const inUnits = (x: Length): bigint => numerator(x) * (unit / x.d);
  const kinds = list.map((piece): Kind => ({ piece, size: inUnits(piece.size) }));
  const [low, high] = [inUnits(from), inUnits(to)];
  let toCome = kinds.reduce((total, k) => total + allOf(k), 0n);
  let ways: Ways = new Map([[0n, { pieces: 0, shims: 0, counts: [] }]]);
  for (const kind of kinds) {
    toCome -= allOf(kind);
    ways = withKind(ways, kind, { low: low - toCome, high });
    if (ways.size > mostSums) return err({ code: 'too-many-ways' });
  }
  const within = [...ways].filter(([total]) => low <= total && total <= high);
  return ok(within.map(([total, way]) => toSum(inches(total, unit), way, list)));
}

const allOf = ({ piece, size }: Kind): bigint => size * BigInt(piece.count);

/** All the ways so far, each with none, one, two … of one more kind. */
function withKind(ways: Ways, { piece, size }: Kind, { low, high }: { low: bigint; high: bigint }): Ways {
  const next = new Map<bigint, Way>();
  const shim = piece.kind === 'shim' ? 1 : 0;
  for (const [total, way] of ways) {
    for (let k = 0; k <= piece.count; k += 1) {
      const reached = total + size * BigInt(k);
      if (reached > high || next.size > mostSums) break;
      if (reached < low) continue;
      const found = { pieces: way.pieces + k, shims: way.shims + k * shim, counts: [...way.counts, k] };
      const known = next.get(reached);
      if (!known || isBetter(found, known)) next.set(reached, found);
    }
  }
  return next;
}

function isBetter(a: Way, b: Way): boolean {
  if (a.pieces !== b.pieces) return a.pieces < b.pieces;
  if (a.shims !== b.shims) return a.shims < b.shims;
  const at = a.counts.findIndex((count, k) => count !== b.counts[k]);
  return (a.counts[at] ?? 0) > (b.counts[at] ?? 0);
}

function toSum(total: Length, { pieces, shims, counts }: Way, list: readonly Piece[]): Sum {
  const chosen = list.map((piece, k) => ({ ...piece, count: counts[k] ?? 0 })).filter((p) => p.count > 0);
  return { total, pieces, shims, chosen };
}

function commonDenominator(lengths: readonly Length[]): bigint {
  return lengths.reduce((d, x) => (d / greatestCommon(d, x.d)) * x.d, 1n);
}

function greatestCommon(a: bigint, b: bigint): bigint {
  return b === 0n ? a : greatestCommon(b, a % b);
}
