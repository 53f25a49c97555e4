import { add, half, type Length, negate, subtract, times, zero } from '../../length/length';
import type { Inside } from '../carcass/case';
import type { Sizes } from '../carcass/sizes';
import { type Across, holeRow } from './hole-row';

/**
 * What is cut across both walls of a bay, from the upper face of the bottom: the joints of bottom and top, dadoes of
 * fixed shelves, grooves of trays. Inches.
 */
export function acrossBay(sizes: Sizes, bay: number): readonly Across[] {
  const { thick, clearHeight, case: c } = sizes;
  const bottom = { near: negate(thick('bottom')), far: zero };
  const top = { near: clearHeight.value, far: add(clearHeight.value, thick('top')) };
  const own = c.inside.filter((i) => i.bay === bay).flatMap((i) => grooves(sizes, i));
  return [bottom, ...own, ...(c.hasTop ? [top] : [])];
}

function grooves(sizes: Sizes, i: Inside): readonly Across[] {
  if (i.kind === 'trays') return trayGrooves(i, sizes.clearHeight.value);
  if (i.kind !== 'fixed' || !i.at) return [];
  const room = half(sizes.joints.fit);
  return [{ near: subtract(i.at, room), far: add(add(i.at, sizes.thick('shelf')), room) }];
}

function trayGrooves(
  { first, pitch, width, endRoom = zero, count }: Inside,
  span: Length,
): readonly Across[] {
  if (!first || !pitch || !width) return [];
  const fits = holeRow({ span, first, pitch, top: add(endRoom, width) }).count;
  return Array.from({ length: count ?? fits }, (_, k) => {
    const near = add(first, times(pitch, BigInt(k)));
    return { near, far: add(near, width) };
  });
}
