import { type Length, type Ratio, times } from '../../length/length';
import { slabWeight } from '../loads/stuff';
import type { Drawer } from './drawers';

/**
 * What a box and its front weigh, pounds: every piece as sheet. An estimate, common practice, no source.
 *
 * @param front how wide and how thick it is, inches
 */
export function drawerWeight(
  { box, plan, front: high, own }: Drawer,
  front: { readonly wide: Length; readonly thick: Length },
): Ratio {
  const pieces = [
    { long: times(box.side.value, 2n), wide: plan.height, thick: plan.side },
    ...(own ? [] : [{ long: box.front.value, wide: plan.height, thick: plan.front }]),
    { long: box.back.value, wide: plan.height, thick: plan.back },
    { long: box.bottomWide.value, wide: box.bottomDeep.value, thick: plan.bottom },
    { long: front.wide, wide: high, thick: front.thick },
  ];
  return pieces.map(slabWeight).reduce((a, b) => a.add(b) as Ratio);
}
