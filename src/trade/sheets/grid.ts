import { howMany, inches, type Length, times } from '../../length/length';
import { toWhole } from '../../length/round';

/**
 * A step all lengths of a layout are whole numbers of, so that the search can count. Inches. Exact while the lengths
 * have a common step that is not too fine; else pieces go up and sheets down to the step, and no piece comes out
 * short.
 */
export type Grid = { readonly step: Length; readonly exact: boolean };

const gcd = (a: bigint, b: bigint): bigint => (b === 0n ? a : gcd(b, a % b));
const lcm = (a: bigint, b: bigint): bigint => (a / gcd(a, b)) * b;

/** The side of a sheet in steps stays under this, so that areas and their sums stay exact whole numbers. */
const mostSteps = 1n << 24n;

/** For lengths without a common step: 1/4096 of an inch. */
const fine = inches(1n, 4096n);

/**
 * The largest common step of some lengths.
 *
 * @param lengths of everything laid out, inches, not empty; @param longest of them
 * @example gridOf([inches(191n, 12n), inches(1n, 8n)], inches(96n)).step // 1/24
 */
export function gridOf(lengths: readonly Length[], longest: Length): Grid {
  let common = 1n;
  for (const { d } of lengths) {
    common = lcm(common, d);
    if (common > mostSteps) return { step: fine, exact: false };
  }
  const exact = toWhole(howMany(longest, inches(1n, common)), 'ceil') < mostSteps;
  return exact ? { step: inches(1n, common), exact } : { step: fine, exact };
}

/** In steps, up: for a piece. */
export const stepsUp = (x: Length, { step }: Grid): number => Number(toWhole(howMany(x, step), 'ceil'));

/** In steps, down: for a sheet. */
export const stepsDown = (x: Length, { step }: Grid): number => Number(toWhole(howMany(x, step), 'floor'));

/** Back to inches. @example fromSteps(48, { step: inches(1n, 2n), exact: true }) // 24 */
export const fromSteps = (n: number, { step }: Grid): Length => times(step, BigInt(n));
