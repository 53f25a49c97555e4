import { add, isNegative, isPositive, type Length, over, subtract, times } from './length';
import { err, ok, type Result } from './result';

type Parts = {
  readonly each: Length;
  /** Near edge of each divider, exact; with no divider thickness, the division lines. */
  readonly nears: readonly Length[];
};

export type PartsError =
  | { readonly code: 'count-not-whole' }
  | { readonly code: 'length-not-positive' }
  | { readonly code: 'divider-negative' }
  /** The dividers take the whole length or more: `over` is by how much. */
  | { readonly code: 'dividers-fill-it'; readonly over: Length; readonly most: number };

const mostParts = 1000;

/**
 * n equal parts with n - 1 dividers between: each = (length - (n-1) divider)/n. Divider 0 is plain division; a kerf
 * as the divider is cutting apart.
 *
 * @param length inches, > 0; @param n whole, 1 to 1000; @param divider inches, >= 0
 * @returns each part, and near edge of divider k = k each + (k-1) divider
 * @example equalParts(inches(591n, 16n), 5, inches(11n, 32n)) // each 7 9/80: Example 4 of length
 */
export function equalParts(length: Length, n: number, divider: Length): Result<Parts, PartsError> {
  if (!Number.isInteger(n) || n < 1 || n > mostParts) return err({ code: 'count-not-whole' });
  if (!isPositive(length)) return err({ code: 'length-not-positive' });
  if (isNegative(divider)) return err({ code: 'divider-negative' });
  const rest = subtract(length, times(divider, BigInt(n - 1)));
  if (!isPositive(rest))
    return err({ code: 'dividers-fill-it', over: times(rest, -1n), most: mostWith(length, divider) });
  const each = over(rest, BigInt(n));
  const step = add(each, divider);
  return ok({ each, nears: Array.from({ length: n - 1 }, (_, k) => add(each, times(step, BigInt(k)))) });
}

/** The most parts whose dividers leave anything: one more than the dividers that fit, strictly. */
function mostWith(length: Length, divider: Length): number {
  if (!isPositive(length) || !isPositive(divider)) return 1;
  const fit = length.div(divider);
  const whole = fit.n / fit.d;
  return Number(fit.d === 1n ? whole - 1n : whole) + 1;
}
