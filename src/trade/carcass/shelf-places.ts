import {
  add,
  compare,
  isPositive,
  type Length,
  less,
  over,
  subtract,
  sum,
  times,
  zero,
} from '../../length/length';
import { grainOf, type Tape } from '../../length/tape';
import { fairRound } from '../fronts/fair';
import type { Inside } from './case';
import type { Sizes } from './sizes';

/** An opening of a bay between what stands fixed in it, from the case bottom. Inches. */
type Opening = { readonly low: Length; readonly high: Length };

const high = ({ low, high: top }: Opening): Length => subtract(top, low);

/**
 * The sizes with a place for every fixed shelf: those with none said stand evenly in the highest opening that those
 * with a place leave in their bay. The openings are rounded together: what is missing goes to the lower ones, what is
 * under a mark stays in the top one.
 *
 * @param tape the openings are rounded to it
 * @returns the same where every shelf has its place, or where there is no room for them
 * @example withShelfPlaces(sizes, '1/32').case.inside[0].at // Example 13 of carcass: 14 3/4
 */
export function withShelfPlaces(sizes: Sizes, tape: Tape): Sizes {
  const { case: c } = sizes;
  const placed = new Map(
    Array.from({ length: c.partitions + 1 }, (_, k) => placesIn(sizes, k + 1, tape)).flat(),
  );
  if (placed.size === 0) return sizes;
  const inside = c.inside.map((i) => {
    const at = placed.get(i.id);
    return at ? { ...i, at } : i;
  });
  return { ...sizes, case: { ...c, inside } };
}

function placesIn(sizes: Sizes, bay: number, tape: Tape): readonly (readonly [string, Length])[] {
  const shelves = sizes.case.inside.filter((i) => i.kind === 'fixed' && i.bay === bay);
  const free = shelves.filter((i) => i.at === undefined);
  const thick = sizes.thick('shelf');
  const widest = openings(sizes, shelves).reduce((a, b) => (less(high(a), high(b)) ? b : a));
  const room = subtract(high(widest), times(thick, BigInt(free.length)));
  if (free.length === 0 || !isPositive(room)) return [];
  const count = free.length + 1;
  const exact = Array.from({ length: count }, () => over(room, BigInt(count)));
  // from the top, as fronts are: what is missing goes to the lower ones
  const { heights } = fairRound(exact, { total: room, grain: grainOf(tape) });
  const upward = [...heights].reverse();
  return free.map((i, k) => {
    const below = sum(upward.slice(0, k + 1));
    return [i.id, sum([widest.low, below, times(thick, BigInt(k))])] as const;
  });
}

/**
 * The openings of a bay between its fixed shelves, as they stand: with the shelves they make the clear height.
 *
 * @returns from the bottom up, inches; what is under a mark is in the top one
 * @example openingsUp(withShelfPlaces(sizes, '1/32'), 1) // 14 3/4, 14 23/32 …: Example 13 of carcass
 */
export const openingsUp = (sizes: Sizes, bay: number): readonly Length[] =>
  openings(
    sizes,
    sizes.case.inside.filter((i) => i.kind === 'fixed' && i.bay === bay),
  ).map(high);

/** What the shelves with a place leave of a bay, from the bottom up. */
function openings({ thick, clearHeight }: Sizes, shelves: readonly Inside[]): readonly Opening[] {
  const said = shelves.flatMap((i) => (i.at ? [i.at] : [])).sort(compare);
  const floors = [zero, ...said.map((at) => add(at, thick('shelf')))];
  const tops = [...said, clearHeight.value];
  return floors.map((low, k) => ({ low, high: tops[k] ?? low }));
}
