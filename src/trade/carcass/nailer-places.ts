import { inches, isPositive, type Length, less, sum, times, zero } from '../../length/length';
import { anchorStrip } from '../install/anchor-strip';
import type { Met } from '../joints/joint';
import { backHow, nailersIn } from './back-how';
import type { Case } from './case';
import { sideDatum } from './ends';
import { meetingAt } from './meetings';
import type { Line } from './part';
import { type Sizes, stockOf } from './sizes';
import { usualOf } from './usual';

/** How many nailers a case has: as said, else one at the top, one at the bottom, and in a high one another between. */
export function nailerCount({ case: c, height, plinth }: Pick<Sizes, 'case' | 'height' | 'plinth'>): number {
  if (!c.hasNailers) return 0;
  const high = sum([height.value, plinth]);
  return c.nailers ?? (less(anchorStrip(c.units).high, high) ? 3 : 2);
}

/** Whether a case is fixed through nailers. */
export const isNailed = (c: Case): boolean => c.hasNailers && c.nailers !== 0;

/** How wide they are. Inches. */
export const nailerWide = (c: Case): Length => c.nailerWide ?? usualOf(c).nailerWide;

/** How deep they are let into the sides at each end; nothing where they butt against them. Inches. */
export const nailerDeep = (c: Case): Length => c.nailerDeep ?? zero;

/** Whether they are let in: they lie at the back edges, or right before a back that is rabbeted into them. */
export const isLetIn = ({ case: c, joints, thick }: Sizes): boolean =>
  isPositive(nailerDeep(c)) &&
  (backHow(c) !== 'groove' || nailersIn(c, joints, thick('nailer')) === 'behind');

/** How far nailers begin from the upper face of the bottom, the lowest first; evenly from bottom to top. Inches. */
export function nailerPlaces(sizes: Sizes): readonly Length[] {
  const count = nailerCount(sizes);
  const room = sizes.clearHeight.value.sub(nailerWide(sizes.case)) as Length;
  return Array.from({ length: count }, (_, k) =>
    count === 1 ? room : (times(room, BigInt(k)).div(inches(BigInt(count - 1))) as Length),
  );
}

/**
 * The lower edge of the highest nailer over the lower end of the case: the case is fixed through it. Inches; nothing
 * where it has none.
 *
 * @example topNailer(sizes) // 63 9/32: Example 20 of carcass
 */
export function topNailer(sizes: Sizes): Length | undefined {
  const highest = nailerPlaces(sizes).at(-1);
  return highest && sum([sizes.datum.value, highest]);
}

/** Where nailers stand on a side that they butt against: the lower edge of each, from its own lower end. */
export function nailerLines(sizes: Sizes): readonly Line[] {
  if (isLetIn(sizes)) return [];
  const places = nailerPlaces(sizes);
  return places.map((near, k) => ({
    id: `nailer${k + 1}`,
    takes: { part: 'nailer', ...(places.length > 1 ? { no: k + 1 } : {}) },
    near: sum([sideDatum(sizes), near]),
  }));
}

/** What is cut in a side for nailers that are let in, for their own length: as for cleats. */
export function nailersInSide(sizes: Sizes): readonly Met[] {
  if (!isLetIn(sizes)) return [];
  const { case: c, joints, thick } = sizes;
  const datum = sideDatum(sizes);
  return nailerPlaces(sizes).map((near, k, all) => ({
    joint: meetingAt(c, 'cleat').joint,
    seat: {
      id: `nailer${k + 1}`,
      no: all.length === 1 ? undefined : k + 1,
      called: 'nailer',
      fits: stockOf(c, 'nailer'),
      flush: { at: 'edge', named: 'back' },
      thick: thick('nailer'),
      room: backHow(c) === 'rabbet' ? joints.backWide : zero,
      depth: nailerDeep(c),
      from: sum([datum, near]),
      to: sum([datum, near, nailerWide(c)]),
    },
  }));
}
