import { add, type Length, negate, subtract, sum, zero } from '../../length/length';
import { backHow, nailersIn } from '../../trade/carcass/back-how';
import { overSides } from '../../trade/carcass/ends';
import { reachOf } from '../../trade/carcass/meetings';
import { behindMitred } from '../../trade/carcass/mitres';
import { nailerPlaces } from '../../trade/carcass/nailer-places';
import type { Sizes } from '../../trade/carcass/sizes';
import { usualOf } from '../../trade/carcass/usual';

/** Where a back is cut through, from the front edge of the sides and from the floor. Inches. */
type BackAt = { readonly x: Length; readonly y: Length; readonly w: Length; readonly h: Length };

/** Where the back stands in a case cut through: behind the bottom and the top, in their grooves, or on their edges. */
export function backAt(sizes: Sizes): BackAt | undefined {
  const { case: c, thick, height, inner, joints, datum, clearHeight } = sizes;
  const y = c.feet ?? zero;
  const x = inner.value;
  switch (backHow(c)) {
    case undefined:
      return undefined;
    case 'rabbet': {
      const low = sum([y, overSides(sizes, 'bottom'), behindMitred(sizes, 'bottom') ?? zero]);
      const top = add(overSides(sizes, 'top'), behindMitred(sizes, 'top') ?? zero);
      const high = subtract(height.value, top);
      return { x, y: low, w: joints.backWide, h: subtract(high, low) };
    }
    case 'groove': {
      const deep = reachOf(sizes, 'back');
      const h = sum([clearHeight.value, deep, c.hasTop ? deep : zero]);
      return { x, y: add(datum.value, negate(deep)), w: joints.backGrooveWide, h };
    }
    case 'applied': {
      const { backInset: inset } = joints;
      const h = sum([height.value, negate(y), negate(inset), negate(inset)]);
      return { x, y: add(y, inset), w: thick('back'), h };
    }
  }
}

/** Where the nailers are cut through: against the back edges, or before the back. */
export function nailersAt(sizes: Sizes): readonly BackAt[] {
  const { case: c, thick, joints, depth, inner, datum } = sizes;
  const own = thick('nailer');
  const x = nailersIn(c, joints, own) === 'behind' ? subtract(depth.value, own) : inner.value;
  const h = c.nailerWide ?? usualOf(c).nailerWide;
  return nailerPlaces(sizes).map((near) => ({ x, y: add(datum.value, near), w: own, h }));
}
