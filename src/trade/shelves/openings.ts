import { add, type Length, zero } from '../../length/length';
import type { Sizes } from '../carcass/sizes';

/** What is open between the fixed shelves of a bay, from the upper face of the bottom. Inches. */
type Opening = { readonly low: Length; readonly high: Length };

/**
 * What the fixed shelves of a bay leave between bottom and top.
 *
 * @param sizes every fixed shelf at its place
 * @returns from the bottom up, inches; the clear height where there is none
 * @example openingsIn(sizes, 1).length // 2, with one shelf: Example 9 of shelves
 */
export function openingsIn({ case: c, thick, clearHeight }: Sizes, bay: number): readonly Opening[] {
  const fixed = c.inside
    .filter((i) => i.kind === 'fixed' && i.bay === bay)
    .map((i) => i.at ?? zero)
    .sort((a, b) => a.compare(b));
  const lows = [zero, ...fixed.map((at) => add(at, thick('shelf')))];
  const highs = [...fixed, clearHeight.value];
  return lows.map((low, k) => ({ low, high: highs[k] ?? low }));
}
