import { add, atMost, compare, isPositive, type Length, less, subtract } from '../../length/length';

/** A screw through one piece into another. Inches. */
export type ScrewPlan = {
  /** Everything on the head side. */
  readonly through: Length;
  /** How thick what the tip goes into is. */
  readonly into: Length;
  /** Head below the face; a washer under it counts negative. */
  readonly sunk: Length;
  /** In the face of sheet 3/8, in an edge or solid 1, in a stud 1 1/4. Common practice, no source. */
  readonly leastBite: Length;
  /** What must stay in front of the tip: 1/8. Common practice, no source. */
  readonly margin: Length;
  /** Lengths on the shelf, in any order. */
  readonly lengths: readonly Length[];
  /** Between parts the longest that goes; into walls and floors the shortest. */
  readonly pick?: 'longest' | 'shortest';
};

export type Screw = {
  /** Between these a screw holds and does not come through. */
  readonly least: Length;
  readonly most: Length;
  readonly pick?: Length;
  /** What the screw picked holds in. */
  readonly bite?: Length;
  /**
   * Why none on the shelf does. `no-room`: none could: the bite and the margin together are more than the wood.
   * `no-list`: nobody said what is on the shelf. `no-wood`: a thickness, the
   * bite or the margin is nothing or less.
   */
  readonly fails?: 'no-wood' | 'too-short' | 'too-long' | 'no-room' | 'none-between' | 'no-list';
};

/**
 * The screw that holds and does not come through: tip = length + sunk, bite = tip - through, and
 * least bite <= bite <= into - margin. Its length alone never says: a washer or a countersink moves the tip. Driven
 * square to the face.
 *
 * @param plan inches; all > 0 but `sunk`
 * @returns inches; `pick` or `fails`, never both
 * @example screwFor(plan).pick // 1: Example 3 of install
 */
export function screwFor(plan: ScrewPlan): Screw {
  const { through, into, sunk, leastBite, margin, lengths } = plan;
  const least = subtract(add(through, leastBite), sunk);
  const most = subtract(subtract(add(through, into), margin), sunk);
  if (![through, into, leastBite, margin].every(isPositive)) return { least, most, fails: 'no-wood' };
  if (less(most, least)) return { least, most, fails: 'no-room' };
  if (lengths.length === 0) return { least, most, fails: 'no-list' };
  const fit = lengths.filter((x) => atMost(least, x) && atMost(x, most)).sort(compare);
  const pick = plan.pick === 'shortest' ? fit[0] : fit[fit.length - 1];
  if (pick) return { least, most, pick, bite: subtract(add(pick, sunk), through) };
  const allShort = lengths.every((x) => less(x, least));
  const allLong = lengths.every((x) => less(most, x));
  return { least, most, fails: allShort ? 'too-short' : allLong ? 'too-long' : 'none-between' };
}
