import { type Ratio, ratio } from '../../length/length';

/** All of them multiplied; none is 1. @example product(ratio(2n), ratio(3n)) // 6 */
export const product = (...factors: readonly Ratio[]): Ratio =>
  factors.reduce((so, k) => so.mul(k) as Ratio, ratio(1n));

/** All of them added; none is 0. @example total([ratio(2n), ratio(3n)]) // 5 */
export const total = (numbers: readonly Ratio[]): Ratio =>
  numbers.reduce((so, k) => so.add(k) as Ratio, ratio(0n));

/** a - b. @example minus(ratio(3n), ratio(2n)) // 1 */
export const minus = (a: Ratio, b: Ratio): Ratio => a.sub(b) as Ratio;

/** a / b. @throws RangeError if b is 0: a mistake in the program. @example shareOf(ratio(3n), ratio(2n)) // 3/2 */
export function shareOf(a: Ratio, b: Ratio): Ratio {
  if (b.n === 0n) throw new RangeError('shareOf: by nothing');
  return a.div(b) as Ratio;
}

/** The lesser. @example lesser(ratio(3n), ratio(2n)) // 2 */
export const lesser = (a: Ratio, b: Ratio): Ratio => (b.lt(a) ? b : a);

/** Above 0. */
export const isMore = (x: Ratio): boolean => x.s > 0n && x.n !== 0n;

/** Below 0. */
export const isLess = (x: Ratio): boolean => x.s < 0n && x.n !== 0n;
