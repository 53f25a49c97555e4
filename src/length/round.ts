import { howMany, isPositive, type Length, numerator, type Ratio, ratio, subtract, times } from './length';

/**
 * `halfExpand`: nearest, an exact half away from zero; `floor`/`ceil`: toward -∞/+∞. Names from ECMA-402
 * `roundingMode`.
 */
export type Rounding = 'halfExpand' | 'floor' | 'ceil';

/** A mark and what rounding left: rest = exact - value, > 0 strong, < 0 scant. */
export type Rounded = { readonly value: Length; readonly rest: Length };

/**
 * Rounds to a whole number of grains: the one operation on lengths that loses anything.
 *
 * @param x length, inches, any sign
 * @param grain smallest step wanted, inches, > 0
 * @param mode which way
 * @returns `value`, and `rest` = x - value, inches, so nobody can lose the difference
 * @throws RangeError if grain <= 0: a mistake in the program, never in what was typed
 * @example roundTo(inches(3n, 64n), inches(1n, 32n), 'floor').value // 1/32
 */
export function roundTo(x: Length, grain: Length, mode: Rounding): Rounded {
  if (!isPositive(grain)) throw new RangeError('roundTo: grain must be > 0');
  const value = times(grain, toWhole(howMany(x, grain), mode));
  return { value, rest: subtract(x, value) };
}

/**
 * A ratio to a whole number.
 *
 * @example toWhole(ratio(-5n, 2n), 'halfExpand') // -3n
 */
export function toWhole(x: Ratio, mode: Rounding): bigint {
  const n = numerator(x);
  const down = floorDivide(n, x.d);
  if (mode === 'floor') return down;
  if (mode === 'ceil') return -floorDivide(-n, x.d);
  const twice = 2n * (n - down * x.d);
  if (twice === x.d) return n < 0n ? down : down + 1n;
  return twice > x.d ? down + 1n : down;
}

/** The largest whole number not above x. @example wholePart(ratio(7n, 2n)) // 3n */
export const wholePart = (x: Ratio): bigint => toWhole(x, 'floor');

/** n/d rounded toward -∞; d > 0. */
function floorDivide(n: bigint, d: bigint): bigint {
  const q = n / d;
  return n % d < 0n ? q - 1n : q;
}

/** A whole number as a ratio. */
export const whole = (n: number): Ratio => ratio(BigInt(n));
