import { ceilDiv } from './one-d/bounds';

/**
 * What part of a whole costs, up to a whole number: cost · part / whole, with no error however large.
 *
 * @param cost whole, >= 0; @param of `part` and `whole`: whole numbers in one unit, part >= 0, whole > 0
 * @returns whole, exact while it is below 2^53
 * @example shareUp(26, { part: 3, whole: 5 }) // 16, from 15.6
 */
export function shareUp(
  cost: number,
  { part, whole }: { readonly part: number; readonly whole: number },
): number {
  const product = cost * part;
  if (Number.isSafeInteger(product)) return ceilDiv(product, whole);
  return Number((BigInt(cost) * BigInt(part) + BigInt(whole) - 1n) / BigInt(whole));
}

/** A stick or sheet by what it holds and what it costs, whole numbers > 0. */
type Priced = { readonly holds: number; readonly cost: number };

/**
 * Which of two costs less for what it holds, by whole numbers alone: below 0 the first, above 0 the second.
 *
 * @example perHold({ holds: 5, cost: 10 }, { holds: 4, cost: 9 }) < 0 // true: 2 against 2 1/4
 */
export function perHold(a: Priced, b: Priced): number {
  const [x, y] = [a.cost * b.holds, b.cost * a.holds];
  if (Number.isSafeInteger(x) && Number.isSafeInteger(y)) return x - y;
  const [p, q] = [BigInt(a.cost) * BigInt(b.holds), BigInt(b.cost) * BigInt(a.holds)];
  return p < q ? -1 : p > q ? 1 : 0;
}
