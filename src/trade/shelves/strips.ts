import { add, inches, isPositive, type Length, subtract, zero } from '../../length/length';
import { figureIn } from '../../length/metric-figures';
import type { Case, Inside } from '../carcass/case';
import type { Sizes } from '../carcass/sizes';
import { openingsIn } from './openings';
import { usualPins } from './pins';

/** Metal strips with slots, let into both walls of a bay. Inches, from the front edge. */
export type Strips = {
  /** Near walls of the two grooves. */
  readonly front: Length;
  readonly rear: Length;
  /** Of a groove. */
  readonly width: Length;
  readonly deep: Length;
  /** How far a strip stands out of its wall; 0 where it lies flush or sunk. */
  readonly proud: Length;
  /** The openings between fixed shelves, from the bottom up, each with strips of its own. */
  readonly pieces: readonly StripPiece[];
};

/** Four strips alike, one up each groove: how far over the bottom they stand, and the longest they may be. Inches. */
export type StripPiece = { readonly low: Length; readonly long: Length };

/** How much wider than the strip its groove is, where nothing is said. Common practice, no source. */
export const usualStripRoom = ({ units }: Pick<Case, 'units'>): Length => figureIn(units, inches(1n, 32n));

/** How far a strip stands out of its wall, inches. @example proudOf(shelves) // 1/64: Example 8 of shelves */
export function proudOf({ stripThick, depth }: Pick<Inside, 'stripThick' | 'depth'>): Length {
  const by = stripThick && depth ? subtract(stripThick, depth) : zero;
  return isPositive(by) ? by : zero;
}

/**
 * The grooves of metal strips, as decided.
 *
 * @returns nothing where no strips hold the shelves, or where strip or depth are not said
 * @example stripsOf(sizes, shelves)?.width // 21/32: Example 8 of shelves
 */
export function stripsOf(sizes: Sizes, i: Inside): Strips | undefined {
  if (i.kind !== 'loose' || i.heldBy !== 'strips' || !i.width || !i.stripThick || !i.depth) return undefined;
  const { inner, case: c } = sizes;
  const stands = usualPins(c, i);
  const width = add(i.width, i.stripRoom ?? usualStripRoom(c));
  return {
    front: i.front ?? stands.front,
    rear: subtract(subtract(inner.value, i.behind ?? stands.behind), width),
    width,
    deep: i.depth,
    proud: proudOf(i),
    pieces: openingsIn(sizes, i.bay).map(({ low, high }) => ({
      low,
      long: subtract(subtract(high, low), i.endRoom ?? zero),
    })),
  };
}
