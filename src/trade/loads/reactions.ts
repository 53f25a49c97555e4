import {
  howMany,
  isNegative,
  isPositive,
  type Length,
  less,
  type Ratio,
  ratio,
  subtract,
} from '../../length/length';
import { err, ok, type Result } from '../../length/result';
import { isMore, product, total } from './ratios';

/** A load on a shelf, so far from its left end. Pounds, inches. */
type PlacedLoad = { readonly pounds: Ratio; readonly at: Length };

export type Ends = { readonly left: Ratio; readonly right: Ratio };

/** `load` counts from 1; `by`: how far beyond the nearer end it stands. */
type EndsError =
  | { readonly code: 'span-not-positive' }
  | { readonly code: 'no-load' }
  | { readonly code: 'load-not-positive'; readonly load: number }
  | { readonly code: 'beyond'; readonly load: number; readonly end: 'left' | 'right'; readonly by: Length };

/**
 * What each end of a shelf, or each cleat, carries: left = Σ P (L - x) / L, right = Σ P x / L. What a fixing holds is
 * not reckoned: that is for its maker and for whoever answers for the building.
 *
 * Source: the balance of moments, any text on statics.
 *
 * @param span inches, > 0; @param loads pounds, > 0, each within the span
 * @returns pounds
 * @example endsCarry(span, [{ pounds: ratio(50n), at: inches(6n) }]) // 33.4 and 16.6: Example 7 of loads
 */
export function endsCarry(span: Length, loads: readonly PlacedLoad[]): Result<Ends, EndsError> {
  if (!isPositive(span)) return err({ code: 'span-not-positive' });
  if (loads.length === 0) return err({ code: 'no-load' });
  for (const [k, { pounds, at }] of loads.entries()) {
    const load = k + 1;
    if (!isMore(pounds)) return err({ code: 'load-not-positive', load });
    if (isNegative(at)) return err({ code: 'beyond', load, end: 'left', by: at.neg() as Length });
    if (less(span, at)) return err({ code: 'beyond', load, end: 'right', by: subtract(at, span) });
  }
  const right = total(loads.map(({ pounds, at }) => product(pounds, howMany(at, span))));
  const all = total(loads.map(({ pounds }) => pounds));
  return ok({ left: total([all, product(right, ratio(-1n))]), right });
}
