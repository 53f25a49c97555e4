import {
  inches,
  isPositive,
  type Length,
  less,
  over,
  type Ratio,
  subtract,
  times,
} from '../../length/length';
import { figureIn } from '../../length/metric-figures';
import { err, ok, type Result } from '../../length/result';
import { roundTo } from '../../length/round';
import type { Units } from '../../length/units';
import { faultOf, isBeyond, type Season, type SeasonError } from './season';

/** Solid wood fixed at both ends of a length across its grain to what does not move with it. Inches. */
type CrossPlan = {
  /** Across the grain, between the fixings furthest apart. */
  readonly length: Length;
  readonly season: Season;
  readonly coefficient: Ratio;
  readonly grain: Length;
  /** Of the job: in millimetres .8 is borne. */
  readonly units?: Units | undefined;
};

export type Cross = {
  /** What has to go somewhere from the driest to the dampest. */
  readonly difference: Length;
  /** How much over 1/32; none where it is not. Slot it, fix one end only, or use sheet. */
  readonly over?: Length;
  /** The longest, to the mark, that is not over. */
  readonly longest?: Length;
  readonly beyond: boolean;
};

type CrossError = SeasonError | { readonly code: 'not-positive'; readonly what: 'length' | 'grain' };

/** Common practice, no source. */
const bears = inches(1n, 32n);

/**
 * What cross-grain wood fixed at both ends has to take in a year: y·C·(high - low). Over 1/32 it splits, or lets go.
 *
 * Source: Wood Handbook, FPL-GTR-190, 2010, equation 13-2; the 1/32, common practice.
 *
 * @param plan inches, > 0; moistures percent
 * @returns inches
 * @example crossGrain(plan) // .354: Example 6 of movement
 */
export function crossGrain(plan: CrossPlan): Result<Cross, CrossError> {
  const blank = (['length', 'grain'] as const).find((what) => !isPositive(plan[what]));
  if (blank) return err({ code: 'not-positive', what: blank });
  const { season, coefficient } = plan;
  const fault = faultOf(season, coefficient);
  if (fault) return err(fault);
  const { low, now, high } = season;
  const share = coefficient.mul(high.sub(low)) as Ratio;
  const difference = times(plan.length, share);
  const most = figureIn(plan.units, bears);
  if (!less(most, difference)) return ok({ difference, beyond: isBeyond(low, now, high) });
  return ok({
    difference,
    over: subtract(difference, most),
    longest: roundTo(over(most, share), plan.grain, 'floor').value,
    beyond: isBeyond(low, now, high),
  });
}
