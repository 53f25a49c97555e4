import {
  absolute,
  add,
  atMost,
  compare,
  inches,
  isNegative,
  isPositive,
  type Length,
  less,
  over,
  ratio,
  shortest,
  subtract,
  times,
  zero,
} from '../../length/length';
import { figureIn } from '../../length/metric-figures';
import type { Units } from '../../length/units';

/**
 * How far a screw reaches square to the face for each inch of it, driven so many degrees off square: the cosine to two
 * places. Source: any table of cosines; the angles, common practice.
 */
const reaches = { 0: ratio(1n), 20: ratio(94n, 100n), 30: ratio(87n, 100n), 45: ratio(71n, 100n) };

/** Degrees off square. */
export type Slant = keyof typeof reaches;

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
  /** Under the head, >= 0; the same as so much less of `sunk`. */
  readonly washer?: Length;
  /** Driven off square: tip and bite are reckoned square to the face all the same. */
  readonly slant?: Slant;
  /** Of the job: how deep pipes and wires run is round in them. */
  readonly units?: Units | undefined;
};

export type Screw = {
  /** Between these a screw bites enough and does not come through. */
  readonly least: Length;
  readonly most: Length;
  /** Into a wall: the longest whose tip goes no deeper than 1 1/2, where it is under `most`. */
  readonly clear?: Length;
  readonly pick?: Length;
  /** How deep the screw picked goes into what is behind. */
  readonly bite?: Length;
  /**
   * Why none on the shelf does. `no-room`: none could: the bite and the margin together are more than the wood.
   * `no-list`: nobody said what is on the shelf. `no-wood`: a thickness, the
   * bite or the margin is nothing or less, or a washer less than nothing.
   */
  readonly fails?: 'no-wood' | 'too-short' | 'too-long' | 'no-room' | 'none-between' | 'no-list';
  /**
   * How far the nearest screw on the shelf is off `least` or `most`; where there is no room, how much more wood bite
   * and margin want.
   */
  readonly by?: Length;
  /** Into a wall or floor: how much deeper than 1 1/2 the tip goes, where pipes and wires run. */
  readonly deep?: Length;
};

/**
 * The least bite by what the tip goes into, and what must stay in front of the tip. Inches. Common practice, no source.
 */
export const usualBites = { face: inches(3n, 8n), edge: inches(1n), solid: inches(1n), stud: inches(5n, 4n) };
export const usualTipMargin = inches(1n, 8n);

/** The same in the unit of a job. */
export const biteIn = (units: Units | undefined, into: keyof typeof usualBites) => ({
  leastBite: figureIn(units, usualBites[into]),
  margin: figureIn(units, usualTipMargin),
});

/** Deeper than this behind the face of a wall's framing it is warned. Common practice, no source. */
const pipes = inches(3n, 2n);
export const pipesIn = (units: Units | undefined): Length => figureIn(units, pipes);

/**
 * The screw that bites enough and does not come through: tip = length × reach + sunk - washer, bite = tip - through,
 * and least bite <= bite <= into - margin. Its length alone never says: a washer, a countersink or a slant moves the
 * tip.
 *
 * @param plan inches; all > 0 but `sunk`, and `washer`, which is >= 0
 * @returns inches; `pick` or `fails`, never both
 * @example screwFor(plan).pick // 1: Example 3 of install
 */
export function screwFor(plan: ScrewPlan): Screw {
  const { through, into, leastBite, margin, lengths, washer = zero } = plan;
  const reach = reaches[plan.slant ?? 0];
  const deepest = pipesIn(plan.units);
  const head = subtract(plan.sunk, washer);
  const least = over(subtract(add(through, leastBite), head), reach);
  const most = over(subtract(subtract(add(through, into), margin), head), reach);
  const clear = over(subtract(add(through, deepest), head), reach);
  const isCleared = plan.pick === 'shortest' && atMost(least, clear) && less(clear, most);
  const range = { least, most, ...(isCleared ? { clear } : {}) };
  const isWood = [through, into, leastBite, margin].every(isPositive) && !isNegative(washer);
  if (!isWood) return { ...range, fails: 'no-wood' };
  const lack = subtract(add(leastBite, margin), into);
  if (isPositive(lack)) return { ...range, fails: 'no-room', by: lack };
  const fit = lengths.filter((x) => atMost(least, x) && atMost(x, most)).sort(compare);
  const pick = plan.pick === 'shortest' ? fit[0] : fit[fit.length - 1];
  if (!pick) return { ...range, ...whyNot(lengths, least, most) };
  const bite = subtract(add(times(pick, reach), head), through);
  const isDeep = plan.pick === 'shortest' && less(deepest, bite);
  return { ...range, pick, bite, ...(isDeep ? { deep: subtract(bite, deepest) } : {}) };
}

/** Which limit the shelf fails, and by how much the nearest on it does. */
function whyNot(lengths: readonly Length[], least: Length, most: Length): Pick<Screw, 'fails' | 'by'> {
  const off = (x: Length): Length => shortest(absolute(subtract(x, least)), absolute(subtract(x, most)));
  const [first, ...rest] = lengths.map(off);
  if (!first) return { fails: 'no-list' };
  const by = shortest(first, ...rest);
  if (lengths.every((x) => less(x, least))) return { fails: 'too-short', by };
  return { fails: lengths.every((x) => less(most, x)) ? 'too-long' : 'none-between', by };
}
