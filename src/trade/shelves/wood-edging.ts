import { isPositive, type Length, subtract } from '../../length/length';
import type { Inside } from '../carcass/case';
import type { Sizes } from '../carcass/sizes';

/** Edging of the stock of a case: how thick on the shelf, and how far it stands past it until it is trimmed. Inches. */
type WoodEdging = { readonly thick: Length; readonly past: Length };

/**
 * Edging of a stock of the job on the front of loose shelves: a strip of it is a part. With no stock said it is bought
 * as band.
 *
 * @returns inches; `past` < 0 where the stock is thinner than the shelves
 * @example woodEdging(sizes, shelves)?.past // 1/32: Example 10 of shelves
 */
export function woodEdging({ case: c, thick }: Sizes, i: Inside): WoodEdging | undefined {
  if (i.kind !== 'loose' || !i.heldBy || !i.band || !isPositive(i.band) || !c.stocks.shelfedge)
    return undefined;
  return { thick: i.band, past: subtract(thick('shelfedge'), thick('shelf')) };
}
