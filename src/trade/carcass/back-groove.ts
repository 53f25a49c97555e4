import { isPositive, type Length, less, subtract, sum, zero } from '../../length/length';
import { cutsFor, type Met } from '../joints/joint';
import { rabbet } from '../joints/joints';
import { backHow } from './back-how';
import { sideDatum } from './ends';
import { endAt, type Flat, type Hand, jointAt, meetingAt, pastTop, reachOf } from './meetings';
import { isMitred } from './mitres';
import type { Rabbet } from './part';
import { type Sizes, stockOf } from './sizes';

/** The groove a back stands in, in a side, bottom or top: all along the part, or stopped where its end would show. */
export function backGroove(sizes: Sizes, role: Hand | Flat): readonly Met[] {
  const { case: c, joints } = sizes;
  if (backHow(c) !== 'groove') return [];
  const seat = {
    id: 'back',
    called: 'back',
    fits: stockOf(c, 'back'),
    flush: { at: 'edge', named: 'back' },
    near: joints.backLand,
    thick: joints.backGrooveWide,
    depth: joints.backGroove,
    ...(role === 'left' || role === 'right' ? stopsUp(sizes, role) : stopsAcross(sizes, role)),
  } as const;
  return [{ joint: meetingAt(c, 'back').joint, seat }];
}

type Stops = { readonly from: Length; readonly to: Length };

/** In what lies over the ends of the sides it ends where theirs are as deep: past that nothing would cover it. */
function stopsAcross(sizes: Sizes, flat: Flat): Stops | undefined {
  if (jointAt(sizes.case, flat) !== 'over') return undefined;
  const { backGroove: deep } = sizes.joints;
  const reach = reachOf(sizes, flat);
  return { from: subtract(reach, deep), to: sum([reach, sizes.clearWidth.value, deep]) };
}

/** In a side it ends as high as that of the top is deep, where its end would lie open beside the top. */
const stopsUp = (sizes: Sizes, hand: Hand): Stops | undefined =>
  isOpen(sizes, hand)
    ? { from: zero, to: sum([sideDatum(sizes), sizes.clearHeight.value, sizes.joints.backGroove]) }
    : undefined;

/**
 * Whether a groove up a side would be seen at its upper end: where the side runs past the top; else not under what
 * lies over it, nor in a rabbet as deep; with no top it stays open, for the back to slide in.
 */
function isOpen({ case: c, joints }: Sizes, hand: Hand): boolean {
  if (isPositive(pastTop(c))) return true;
  if (!c.hasTop || c.hasLooseTop) return false;
  switch (jointAt(c, endAt('top', hand))) {
    case 'over':
    case 'mitre':
      return false;
    case 'rabbet':
      return less(joints.topRabbet, joints.backGroove);
    case 'dado':
      return less(joints.dado, joints.backGroove);
    default:
      return true;
  }
}

/**
 * The rabbet for the back in a mitred bottom or top: as the sides have it, so that the two meet in the mitre and
 * nothing of either runs out.
 */
export function rabbetInMitred(sizes: Sizes, flat: Flat): readonly Rabbet[] {
  const { case: c, joints } = sizes;
  if (!isMitred(c, flat) || backHow(c) !== 'rabbet') return [];
  const seat = {
    id: 'back',
    called: 'back',
    fits: stockOf(c, 'back'),
    flush: { at: 'edge', named: 'back' },
    thick: joints.backWide,
    depth: joints.backDeep,
  } as const;
  return cutsFor([{ joint: rabbet, seat }]).rabbets;
}
