import {
  add,
  half,
  isNegative,
  isPositive,
  type Length,
  longest,
  negate,
  over,
  subtract,
  times,
  zero,
} from '../../length/length';
import { err, ok, type Result } from '../../length/result';

/** Pulls on one front. Inches. */
export type PullPlan = {
  readonly width: Length;
  readonly height: Length;
  readonly pulls: 1 | 2;
  /** Between the screws of a pull; a knob has one screw and none. */
  readonly centres?: Length;
  /** Two pulls: their middles in from the ends; a quarter of the width when not said. */
  readonly fromEnd?: Length;
  /** Down from the top edge, fixed for the whole bank; the middle when not said. */
  readonly fromTop?: Length;
};

/** A hole: from the left end as you face it, and down from the top edge. Inches. */
export type Hole = { readonly x: Length; readonly y: Length };

/** `by`, inches, >= 0: how far a hole lies past an edge; 0: on it. */
export type PullsError =
  | { readonly code: 'centres-negative'; readonly by: Length }
  /** Wherever the pulls stand: past each end by so much at best. */
  | { readonly code: 'centres-too-wide'; readonly by: Length }
  /** Where they were said to stand. */
  | { readonly code: 'off-the-front'; readonly by: Length }
  /** Two pulls run into each other, by so much. */
  | { readonly code: 'pulls-meet'; readonly by: Length };

/**
 * C7.8: holes for the pulls of a front, from the left.
 *
 * @param plan inches; width and height > 0, centres >= 0
 * @returns one hole a knob, two a pull, inches
 * @example pullHoles({ width: inches(271n, 16n), height, pulls: 1, centres: inches(15n, 4n) }).value // EX 7d: 6 19/32, 10 11/32
 */
export function pullHoles(plan: PullPlan): Result<readonly Hole[], PullsError> {
  const centres = plan.centres ?? zero;
  if (isNegative(centres)) return err({ code: 'centres-negative', by: negate(centres) });
  const reach = half(centres);
  const middles = middlesOf(plan);
  const xs = middles.flatMap((x) => (isPositive(reach) ? [subtract(x, reach), add(x, reach)] : [x]));
  const y = plan.fromTop ?? half(plan.height);
  const fault = wideIn(plan, reach) ?? offIn(plan, xs, y) ?? meetIn(middles, reach);
  return fault ? err(fault) : ok(xs.map((x) => ({ x, y })));
}

function middlesOf({ width, pulls, fromEnd = over(width, 4n) }: PullPlan): readonly Length[] {
  return pulls === 1 ? [half(width)] : [fromEnd, subtract(width, fromEnd)];
}

/** Each pull has its share of the width, and no more. */
function wideIn({ width, pulls }: PullPlan, reach: Length): PullsError | undefined {
  const past = subtract(reach, over(width, BigInt(2 * pulls)));
  return isNegative(past) ? undefined : { code: 'centres-too-wide', by: past };
}

/** Holes are alike from both ends: what lies off the one lies off the other as far. */
function offIn({ height }: PullPlan, xs: readonly Length[], y: Length): PullsError | undefined {
  const past = longest(negate(y), subtract(y, height), ...xs.map(negate));
  return isNegative(past) ? undefined : { code: 'off-the-front', by: past };
}

function meetIn([first, last]: readonly Length[], reach: Length): PullsError | undefined {
  if (!first || !last) return undefined;
  const between = subtract(subtract(last, first), times(reach, 2n));
  return isPositive(between) ? undefined : { code: 'pulls-meet', by: negate(between) };
}

/**
 * What the outer holes must come apart when a jig with an end stop is used from both ends: w - 2x. What the jig is off
 * shows doubled.
 *
 * @param width of the front, inches, > 0; @param x where the jig's outer hole stands from its stop, as set, inches
 * @returns inches; negative when the jig reaches past the middle, and the holes have crossed
 * @example jigCheck(inches(17n), inches(6n)) // 5
 */
export const jigCheck = (width: Length, x: Length): Length => subtract(width, times(x, 2n));
