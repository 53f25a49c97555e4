import { add, type Length, longest, over, subtract, times, zero } from '../../length/length';
import type { Met } from '../joints/joint';
import { notch } from '../joints/joints';
import { backHow } from './back-how';
import { reachOf } from './meetings';
import { type Sizes, stockOf } from './sizes';
import { usualOf } from './usual';

/** Where cleats lie, from the datum up: right under the top and, from two on, evenly down to the bottom. */
export function cleatPlaces({ case: c, joints, clearHeight }: Sizes) {
  const long = add(c.cleatWide ?? usualOf(c).cleatWide, joints.ease);
  const highest = longest(zero, subtract(clearHeight.value, long));
  return Array.from({ length: c.cleats }, (_, k) => ({
    near: c.cleats === 1 ? highest : subtract(highest, share(highest, k, c.cleats - 1)),
    long,
  }));
}

/**
 * The lower edge of the highest cleat over the lower end of the case: its room lies over it. Inches; nothing where the
 * case has no cleat.
 *
 * @example topCleat(sizes) // 60 23/32: Example 10 of carcass
 */
export function topCleat(sizes: Sizes): Length | undefined {
  const [highest] = cleatPlaces(sizes);
  return highest && add(sizes.datum.value, highest.near);
}

/**
 * All partitions are notched clamped as one; what is housed in the bottom stands below the datum. Before a back in a
 * groove they end short of the cleats.
 */
export function cleatsIn(sizes: Sizes): readonly Met[] {
  const { case: c, thick } = sizes;
  if (backHow(c) === 'groove') return [];
  return cleatPlaces(sizes).map(({ near, long }, k) => ({
    joint: notch,
    seat: {
      id: `cleat${k + 1}`,
      called: 'cleat',
      near: add(near, reachOf(sizes, 'partition')),
      thick: long,
      depth: c.notchDeep ?? thick('cleat'),
      fits: stockOf(c, 'cleat'),
    },
  }));
}

const share = (room: Length, k: number, of: number): Length => times(over(room, BigInt(of)), BigInt(k));
