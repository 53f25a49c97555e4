import {
  add,
  howMany,
  inches,
  isPositive,
  type Length,
  less,
  type Ratio,
  subtract,
  times,
  zero,
} from './length';
import { toWhole } from './round';

/** The whole number whose square is the largest not above n; n >= 0. @example isqrt(24n) // 4n */
export function isqrt(n: bigint): bigint {
  if (n < 0n) throw new RangeError('isqrt of a negative');
  if (n < 2n) return n;
  let x = 1n << BigInt((n.toString(2).length + 1) >> 1);
  for (;;) {
    const y = (x + n / x) >> 1n;
    if (y >= x) return x;
    x = y;
  }
}

/**
 * Square root of an exact square, to the nearest grain by whole-number roots: no float, so no wrong 64th.
 * An exact half goes up.
 *
 * @param square square inches, >= 0
 * @param grain inches, > 0
 * @throws RangeError if the square is negative or the grain not positive: a mistake in the program
 * @example rootTo(ratio(25n), inches(1n, 64n)) // 5
 */
export function rootTo(square: Ratio, grain: Length): Length {
  if (square.s < 0n) throw new RangeError('rootTo: square must be >= 0');
  if (!isPositive(grain)) throw new RangeError('rootTo: grain must be > 0');
  // square / grain² = N; k = isqrt(floor N); up by one when (2k+1)² <= 4N
  const n = square.n * grain.d * grain.d;
  const d = square.d * grain.n * grain.n;
  const k = isqrt(n / d);
  const up = (2n * k + 1n) ** 2n * d <= 4n * n;
  return inches((up ? k + 1n : k) * grain.n, grain.d);
}

/**
 * How much longer a root is than a length, √square - x, in whole grains one way or the other. Settled by squares: no
 * float, so it cannot say that something fits which does not.
 *
 * @param square square inches, >= 0
 * @param x inches, any sign
 * @param at.grain inches, > 0; @param at.mode toward -∞ or +∞
 * @returns inches, negative where the root is shorter
 * @throws RangeError if the square is negative or the grain not positive: a mistake in the program
 * @example rootLess(ratio(4212n), inches(257n, 4n), { grain: inches(1n, 16n), mode: 'floor' }) // 5/8
 */
export function rootLess(
  square: Ratio,
  x: Length,
  at: { readonly grain: Length; readonly mode: 'floor' | 'ceil' },
): Length {
  const { grain } = at;
  if (square.s < 0n) throw new RangeError('rootLess: square must be >= 0');
  if (!isPositive(grain)) throw new RangeError('rootLess: grain must be > 0');
  const grains = isqrt((square.n * grain.d * grain.d) / (square.d * grain.n * grain.n));
  const below = times(grain, toWhole(howMany(subtract(times(grain, grains), x), grain), 'floor'));
  const next = add(below, grain);
  // the root lies less than a grain above so many grains, so only these two can be the last not above it
  const down = less(zero, add(x, next)) && rootSide(square, add(x, next)) < 0 ? below : next;
  const exact = !less(add(x, down), zero) && rootSide(square, add(x, down)) === 0;
  return at.mode === 'floor' || exact ? down : add(down, grain);
}

/** W² + H², exactly, square inches. */
export const squareOf = (w: Length, h: Length): Ratio => w.mul(w).add(h.mul(h)) as Ratio;

/**
 * Which side of a mark the true root falls: > 0 strong, < 0 scant, 0 on it.
 *
 * @example rootSide(squareOf(w, h), mark)
 */
export const rootSide = (square: Ratio, mark: Length): number => square.compare(mark.mul(mark));

/**
 * Diagonal of a rectangle to the nearest grain.
 *
 * @param w, h inches, > 0; @param grain inches, > 0
 * @throws RangeError if a side is not positive
 * @example diagonal(inches(3n), inches(4n), inches(1n, 32n)) // 5
 */
export function diagonal(w: Length, h: Length, grain: Length): Length {
  if (!isPositive(w) || !isPositive(h)) throw new RangeError('diagonal: both sides must be > 0');
  return rootTo(squareOf(w, h), grain);
}
