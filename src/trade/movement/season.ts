import { type Ratio, ratio } from '../../length/length';

/** Moisture of the wood, percent: as it is cut, and the least and greatest of its year. */
export type Season = { readonly low: Ratio; readonly now: Ratio; readonly high: Ratio };

/** Where nobody knows the room: heated in winter, 6 to 12. Common practice, no source. */
export const usualYear = { low: ratio(6n), high: ratio(12n) };

export type SeasonError =
  /** The wood is drier than its least, or damper than its greatest, by so many percent: ask again. */
  | { readonly code: 'below-low' | 'above-high'; readonly by: Ratio }
  | { readonly code: 'moisture-negative' }
  /** A share of the size for 1 % is over 0 and under .01. */
  | { readonly code: 'coefficient'; readonly most: Ratio };

const one = ratio(1n);
const mostCoefficient = ratio(1n, 100n);

/** What is wrong with a coefficient or the moistures of a year; nothing where all is well. */
export function faultOf({ low, now, high }: Season, coefficient: Ratio): SeasonError | undefined {
  if (coefficient.s <= 0n || coefficient.n === 0n || mostCoefficient.lte(coefficient))
    return { code: 'coefficient', most: mostCoefficient };
  if ([low, now, high].some((m) => m.s < 0n && m.n !== 0n)) return { code: 'moisture-negative' };
  if (now.lt(low)) return { code: 'below-low', by: low.sub(now) as Ratio };
  return high.lt(now) ? { code: 'above-high', by: now.sub(high) as Ratio } : undefined;
}

/** The range the table is for. Source: Wood Handbook, FPL-GTR-190, 2010, p. 13-15. */
const [tableLow, tableHigh] = [ratio(6n), ratio(14n)];

/** Whether any of them lies outside the range the table is for: the answer is shown, and marked. */
export const isBeyond = (...moistures: readonly Ratio[]): boolean =>
  moistures.some((m) => m.lt(tableLow) || tableHigh.lt(m));

/** How a size now stands in the dampest and the driest of its year: what it is multiplied by. */
export const factorsOf = (
  { low, now, high }: Season,
  coefficient: Ratio,
): { readonly damp: Ratio; readonly dry: Ratio } => ({
  damp: one.add(coefficient.mul(high.sub(now))) as Ratio,
  dry: one.sub(coefficient.mul(now.sub(low))) as Ratio,
});
