import {
  add,
  half,
  isPositive,
  type Length,
  less,
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

export type PullsError =
  | { readonly code: 'centres-too-wide'; readonly by: Length }
  | { readonly code: 'off-the-front'; readonly by: Length }
  /** Two pulls run into each other. */
  | { readonly code: 'pulls-meet'; readonly by: Length };

/**
 * C7.8: holes for the pulls of a front, from the left.
 *
 * @example pullHoles({ width: inches(271n, 16n), height, pulls: 1, centres: inches(15n, 4n) }).value // 6 19/32, 10 11/32
 */
export function pullHoles(plan: PullPlan): Result<readonly Hole[], PullsError> {
  const reach = half(plan.centres ?? zero);
  const u = plan.fromEnd ?? over(plan.width, 4n);
  const middles = plan.pulls === 1 ? [half(plan.width)] : [u, subtract(plan.width, u)];
  const y = plan.fromTop ?? half(plan.height);
  const [first = zero] = middles;
  const edge = subtract(first, reach);
  if (!isPositive(edge)) return err({ code: 'centres-too-wide', by: negate(edge) });
  if (!isPositive(y)) return err({ code: 'off-the-front', by: negate(y) });
  if (!less(y, plan.height)) return err({ code: 'off-the-front', by: subtract(y, plan.height) });
  const last = middles[1];
  const between = last && subtract(subtract(last, first), times(reach, 2n));
  if (between && !isPositive(between)) return err({ code: 'pulls-meet', by: negate(between) });
  const xs = middles.flatMap((x) => (isPositive(reach) ? [subtract(x, reach), add(x, reach)] : [x]));
  return ok(xs.map((x) => ({ x, y })));
}

/**
 * What the outer holes must come apart when a jig with an end stop is used from both ends: w - 2x. What the jig is off
 * shows doubled.
 *
 * @example jigCheck(inches(17n), inches(6n)) // 5
 */
export const jigCheck = (width: Length, x: Length): Length => subtract(width, times(x, 2n));
