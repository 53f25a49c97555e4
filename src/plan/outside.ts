import { add, type Length, longest, times, zero } from '../length/length';
import { throughBack } from '../trade/carcass/back-how';
import { pastOf } from '../trade/carcass/meetings';
import type { Worked } from '../trade/carcass/parts';
import { usualOf } from '../trade/carcass/usual';
import type { CaseSize } from '../trade/room/lying';

/** A case from outside. Inches. */
export type Outside = {
  /** As it stands, its loose top on it. */
  readonly stands: CaseSize;
  /** As it is carried in: frame on, loose top and what lies under it off. */
  readonly carried: CaseSize;
};

/**
 * The outside of a case that works out: how far its frame and its top stand past the sides, and what lies on it.
 *
 * @param worked the case with its sizes
 * @returns inches
 */
export function outsideOf({ sizes }: Pick<Worked, 'sizes'>): Outside {
  const { case: c, thick } = sizes;
  const usual = usualOf(c);
  const past = (by: Length): Length => add(sizes.width.value, times(by, 2n));
  const flats = past(longest(pastOf(c, 'bottom'), c.hasTop ? pastOf(c, 'top') : zero));
  const framed = longest(flats, c.hasFrame ? past(c.overhang ?? usual.overhang) : zero);
  const deep = add(throughBack(sizes).value, c.hasFrame ? thick('frame') : zero);
  const carried = { width: framed, height: sizes.height.value, depth: deep };
  const base = add(c.hasBase ? thick('base') : zero, sizes.plinth);
  if (!c.hasLooseTop) return { stands: { ...carried, height: add(carried.height, base) }, carried };
  const top = past(c.looseSide ?? usual.looseOver);
  return {
    stands: {
      width: longest(framed, top),
      height: add(add(carried.height, base), thick('loose')),
      depth: add(deep, c.looseFront ?? usual.looseOver),
    },
    carried,
  };
}
