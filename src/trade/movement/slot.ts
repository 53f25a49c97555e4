import { half, isNegative, isPositive, type Length, type Ratio, sum, times } from '../../length/length';
import { err, ok, type Result } from '../../length/result';
import { type Rounded, roundTo } from '../../length/round';
import { faultOf, isBeyond, type Season, type SeasonError } from './season';

/** A screw through a cleat into a solid top that is held on one line and moves from there. Inches. */
type SlotPlan = {
  /** From the held line to the screw, across the grain of the top. */
  readonly reach: Length;
  readonly shank: Length;
  /** Left at either end of the slot at the extremes of the year, >= 0. */
  readonly margin: Length;
  readonly season: Season;
  readonly coefficient: Ratio;
  readonly grain: Length;
};

export type Slot = {
  /** How far the top carries the screw away from the held line in the dampest, and toward it in the driest. */
  readonly out: Length;
  readonly in: Length;
  /** Long way across the grain of the top. */
  readonly long: Rounded;
  /** Middle of the screw, as set now, from the end of the slot nearer the held line. */
  readonly set: Length;
  readonly beyond: boolean;
};

type SlotError =
  | SeasonError
  | { readonly code: 'not-positive'; readonly what: 'reach' | 'shank' | 'grain' }
  | { readonly code: 'margin-negative' };

/**
 * How long the slot in a cleat is, rounded up, and where in it the screw is set, so that the top can move all year.
 *
 * Source: Wood Handbook, FPL-GTR-190, 2010, equation 13-2.
 *
 * @param plan inches, > 0; margin >= 0; moistures percent
 * @returns inches
 * @example slotOf(plan) // 9/16, the screw .169 from its inner end: Example 4 of movement
 */
export function slotOf(plan: SlotPlan): Result<Slot, SlotError> {
  const blank = (['reach', 'shank', 'grain'] as const).find((what) => !isPositive(plan[what]));
  if (blank) return err({ code: 'not-positive', what: blank });
  if (isNegative(plan.margin)) return err({ code: 'margin-negative' });
  const { reach, shank, margin, season, coefficient, grain } = plan;
  const fault = faultOf(season, coefficient);
  if (fault) return err(fault);
  const { low, now, high } = season;
  const moved = (from: Ratio, to: Ratio): Length => times(times(reach, coefficient), to.sub(from) as Ratio);
  const [out, back] = [moved(now, high), moved(low, now)];
  return ok({
    out,
    in: back,
    long: roundTo(sum([shank, out, back, times(margin, 2n)]), grain, 'ceil'),
    set: sum([margin, back, half(shank)]),
    beyond: isBeyond(low, now, high),
  });
}
