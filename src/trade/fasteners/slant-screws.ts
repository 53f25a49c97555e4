import {
  add,
  atMost,
  compare,
  half,
  inches,
  isNegative,
  isPositive,
  type Length,
  less,
  over,
  ratio,
  subtract,
  times,
} from '../../length/length';
import { figureIn } from '../../length/metric-figures';
import { err, ok, type Result } from '../../length/result';
import type { Units } from '../../length/units';

/**
 * Sine, cosine and tangent of the angle a slant screw is driven at, to four places, exact from there on. Source: any
 * table; 15 degrees is common practice.
 */
const at15 = { sin: ratio(2588n, 10_000n), cos: ratio(9659n, 10_000n), tan: ratio(2679n, 10_000n) };

/**
 * A screw slanted through the end of a part into another: its head bears on a seat bored from the part's face. Inches.
 */
type SlantPlan = {
  readonly part: Length;
  readonly mate: Length;
  /** Both lie in one plane, as in a frame: the tip must not come out of the face. */
  readonly inPlane: boolean;
  /** How far from the bored face the screw leaves the end of the part; half its thickness where left out. */
  readonly leaves?: Length;
  /** From the joint back to the seat, along the screw. */
  readonly seat: Length;
  /** How wide the head is. */
  readonly head: Length;
  readonly lengths: readonly Length[];
  /** Of the job: least bite and what stays in front of the tip are round in them. */
  readonly units?: Units | undefined;
};

export type SlantScrew = Pick<SlantPlan, 'seat' | 'head'> & {
  readonly long: Length;
  /** How far from the bored face it leaves the end of the part. */
  readonly leaves: Length;
  /** Square to the joint. */
  readonly bite: Length;
  /** How far its tip comes off square in the other part. */
  readonly drift: Length;
  /** Where the screw's line meets the bored face, back from the joint. */
  readonly meets: Length;
  /** How far the seat lies back from the joint, square to it. */
  readonly seatBack: Length;
  /** How far the head lies under the face; negative: it stands out. */
  readonly covered: Length;
  /** The seat at which the head is just covered, where it is not. */
  readonly coveredAt?: Length;
};

/** Why a screw of the shelf does not do: it bites too little, or its tip comes too near, by so much. Inches. */
export type SlantMiss = {
  readonly long: Length;
  readonly misses: 'bite' | 'mate' | 'face';
  readonly by: Length;
};

export type SlantError =
  | { readonly code: 'no-wood'; readonly what: 'part' | 'mate' | 'seat' | 'head' }
  | { readonly code: 'no-list' }
  | { readonly code: 'none-fits'; readonly misses: readonly SlantMiss[] };

/** Least bite square to the joint, and what stays in front of a tip. Common practice, no source. */
const usualBite = inches(3n, 8n);
const usualMargin = inches(1n, 8n);

/**
 * The longest slant screw of the shelf that bites enough and comes out nowhere.
 *
 * @param plan inches, all > 0
 * @returns inches, or what each screw of the shelf misses
 * @example slantScrewFor(plan).value.long // 1 1/2: Example 3 of fasteners
 */
export function slantScrewFor(plan: SlantPlan): Result<SlantScrew, SlantError> {
  const none = (['part', 'mate', 'seat', 'head'] as const).find((what) => !isPositive(plan[what]));
  if (none) return err({ code: 'no-wood', what: none });
  if (plan.lengths.length === 0) return err({ code: 'no-list' });
  const tried = [...plan.lengths]
    .sort((a, b) => compare(b, a))
    .map((long) => ({ long, miss: missOf(plan, long) }));
  const found = tried.find(({ miss }) => !miss);
  if (!found) return err({ code: 'none-fits', misses: tried.flatMap(({ miss }) => miss ?? []) });
  const { leaves = half(plan.part), seat, head } = plan;
  const cover = (at: Length): Length =>
    subtract(subtract(leaves, times(at, at15.sin)), times(half(head), at15.cos));
  const covered = cover(seat);
  const deepest = over(subtract(leaves, times(half(head), at15.cos)), at15.sin);
  return ok({
    long: found.long,
    seat,
    head,
    leaves,
    bite: biteOf(plan, found.long),
    drift: times(subtract(found.long, seat), at15.sin),
    meets: over(leaves, at15.tan),
    seatBack: times(seat, at15.cos),
    covered,
    ...(isNegative(covered) && isPositive(deepest) ? { coveredAt: deepest } : {}),
  });
}

const biteOf = ({ seat }: SlantPlan, long: Length): Length => times(subtract(long, seat), at15.cos);

function missOf(plan: SlantPlan, long: Length): SlantMiss | undefined {
  const { part, mate, inPlane, leaves = half(part), units } = plan;
  const [leastBite, margin] = [figureIn(units, usualBite), figureIn(units, usualMargin)];
  const bite = biteOf(plan, long);
  if (less(bite, leastBite)) return { long, misses: 'bite', by: subtract(leastBite, bite) };
  const most = subtract(mate, margin);
  if (!atMost(bite, most)) return { long, misses: 'mate', by: subtract(bite, most) };
  const drift = add(leaves, times(subtract(long, plan.seat), at15.sin));
  const face = subtract(part, margin);
  return inPlane && !atMost(drift, face) ? { long, misses: 'face', by: subtract(drift, face) } : undefined;
}
