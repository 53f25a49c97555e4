import {
  half,
  inches,
  isNegative,
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
import { type Rounded, roundTo } from '../../length/round';
import type { Units } from '../../length/units';
import { factorsOf, faultOf, isBeyond, type Season, type SeasonError } from './season';

/** An inset front of solid wood, its grain across its width: its height moves. Inches. */
export type SolidFront = {
  readonly opening: Length;
  /** Above and below it in the dampest of the year, > 0. */
  readonly least: Length;
  readonly season: Season;
  readonly coefficient: Ratio;
  readonly grain: Length;
  /** Of the job: in millimetres the limits are .8 and 4. */
  readonly units?: Units | undefined;
};

export type FrontGaps = {
  readonly high: Rounded;
  /** Each of the two, as cut, in the dampest and in the driest. */
  readonly now: Length;
  readonly summer: Length;
  readonly winter: Length;
  /** What summer lacks of 1/32, and winter is over 5/32; none where it is not. */
  readonly tight?: Length;
  readonly wide?: Length;
  /** The highest opening, to the mark, whose winter gap is not over 5/32. */
  readonly openingMost?: Length;
  readonly beyond: boolean;
};

export type FrontError =
  | SeasonError
  | { readonly code: 'not-positive'; readonly what: 'opening' | 'grain' }
  | { readonly code: 'least-negative' }
  /** The gaps leave no mark of front: by how much they are over the opening. */
  | { readonly code: 'no-front'; readonly by: Length };

/** The least gap that never binds, and the greatest that is not seen: 1/32 and 5/32. Common practice, no source. */
export const frontLimits = (units: Units | undefined): { readonly least: Length; readonly most: Length } => ({
  least: figureIn(units, inches(1n, 32n)),
  most: figureIn(units, inches(5n, 32n)),
});

/**
 * How high an inset solid front is cut, rounded down, so that it never binds in the dampest of the year, and what its
 * gaps come to.
 *
 * Source: Wood Handbook, FPL-GTR-190, 2010, equation 13-2.
 *
 * @param front inches, > 0; least >= 0; moistures percent
 * @returns inches
 * @example solidFront(front) // 9, gaps .042 to .142: Example 5 of movement
 */
export function solidFront(front: SolidFront): Result<FrontGaps, FrontError> {
  const fault = frontFault(front);
  if (fault) return err(fault);
  const { low, now, high } = front.season;
  const own = gapsOf(front);
  const { least: tightest, most: widest } = frontLimits(front.units);
  if (!isPositive(own.high.value))
    return err({ code: 'no-front', by: subtract(times(front.least, 2n), front.opening) });
  const isWide = less(widest, own.winter);
  const openingMost = isWide ? lowerOpening(front) : undefined;
  return ok({
    ...own,
    ...(less(own.summer, tightest) ? { tight: subtract(tightest, own.summer) } : {}),
    ...(isWide ? { wide: subtract(own.winter, widest) } : {}),
    ...(openingMost ? { openingMost } : {}),
    beyond: isBeyond(low, now, high),
  });
}

function frontFault(front: SolidFront): FrontError | undefined {
  const blank = (['opening', 'grain'] as const).find((what) => !isPositive(front[what]));
  if (blank) return { code: 'not-positive', what: blank };
  if (isNegative(front.least)) return { code: 'least-negative' };
  return faultOf(front.season, front.coefficient);
}

function gapsOf({ opening, least, season, coefficient, grain }: SolidFront) {
  const { damp, dry } = factorsOf(season, coefficient);
  const high = roundTo(over(subtract(opening, times(least, 2n)), damp), grain, 'floor');
  const gap = (of: Length): Length => half(subtract(opening, of));
  return {
    high,
    now: gap(high.value),
    summer: gap(times(high.value, damp)),
    winter: gap(times(high.value, dry)),
  };
}

/** With k = dry/damp, winter is 5/32 at an opening of (5/16 - 2 k least)/(1 - k); from there down, mark by mark. */
function lowerOpening(front: SolidFront): Length | undefined {
  const { season, coefficient, least, grain } = front;
  const { most: widest } = frontLimits(front.units);
  const { damp, dry } = factorsOf(season, coefficient);
  const k = dry.div(damp) as Ratio;
  const room = subtract(times(widest, 2n), times(times(least, 2n), k));
  if (!isPositive(room)) return undefined;
  // winter over 5/32 in all year's stillness comes of the least gap and rounding, not of the opening
  const one = k.equals(1n);
  if (one) return undefined;
  const start = roundTo(over(room, k.neg().add(1n) as Ratio), grain, 'floor').value;
  const goes = (opening: Length): boolean => {
    const { high, winter } = gapsOf({ ...front, opening });
    return isPositive(high.value) && !less(widest, winter);
  };
  for (let n = 0n; n < 400n; n += 1n) {
    const opening = subtract(start, times(grain, n));
    if (!isPositive(opening)) return undefined;
    if (goes(opening)) return opening;
  }
  return undefined;
}
