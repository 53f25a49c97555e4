import { add, atMost, compare, type Length, less, subtract } from '../../length/length';

/** A screw through one piece into another. Inches. */
export type ScrewPlan = {
  /** Everything on the head side. */
  readonly through: Length;
  readonly into: Length;
  /** Head below the face; a washer under it counts negative. */
  readonly sunk: Length;
  readonly leastBite: Length;
  /** What must stay in front of the tip. */
  readonly margin: Length;
  /** Lengths on the shelf. */
  readonly lengths: readonly Length[];
  /** Between parts the longest that goes; into walls and floors the shortest. */
  readonly pick?: 'longest' | 'shortest';
};

export type Screw = {
  /** Between these a screw holds and does not come through. */
  readonly least: Length;
  readonly most: Length;
  readonly pick?: Length;
  readonly bite?: Length;
  /** Why none on the shelf does. `no-room`: none could: the bite and the margin together are more than the wood. */
  readonly fails?: 'too-short' | 'too-long' | 'no-room' | 'none-between';
};

/**
 * C10.3: tip = L + sunk, bite = tip - through; least bite <= bite <= into - margin.
 *
 * @example screwFor(plan).pick // H.9: 1
 */
export function screwFor(plan: ScrewPlan): Screw {
  const { through, into, sunk, leastBite, margin, lengths } = plan;
  const least = subtract(add(through, leastBite), sunk);
  const most = subtract(subtract(add(through, into), margin), sunk);
  if (less(most, least)) return { least, most, fails: 'no-room' };
  const fit = lengths.filter((x) => atMost(least, x) && atMost(x, most)).sort(compare);
  const pick = plan.pick === 'shortest' ? fit[0] : fit[fit.length - 1];
  if (pick) return { least, most, pick, bite: subtract(add(pick, sunk), through) };
  const allShort = lengths.every((x) => less(x, least));
  const allLong = lengths.every((x) => less(most, x));
  return { least, most, fails: allShort ? 'too-short' : allLong ? 'too-long' : 'none-between' };
}
