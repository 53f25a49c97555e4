import {
  add,
  half,
  inches,
  isNegative,
  isPositive,
  type Length,
  less,
  over,
  type Ratio,
  subtract,
  sum,
  times,
} from '../../length/length';
import { figureIn } from '../../length/metric-figures';
import { err, ok, type Result } from '../../length/result';
import { type Rounded, roundTo } from '../../length/round';
import type { Units } from '../../length/units';
import { factorsOf, faultOf, isBeyond, type Season, type SeasonError } from './season';

/** A panel of solid wood in grooves, in the width its wood moves in. Inches. */
export type PanelPlan = {
  /** Between the edges the grooves are in. */
  readonly opening: Length;
  /** How deep each of the two grooves is. */
  readonly groove: Length;
  /** Left at the floor of each groove when the panel is widest; 1/32. Common practice, no source. */
  readonly tip: Length;
  readonly season: Season;
  readonly coefficient: Ratio;
  /** The mark it is cut to. */
  readonly grain: Length;
  /** Of the job: in millimetres 3 must stay in a groove. */
  readonly units?: Units | undefined;
};

export type Panel = {
  readonly cut: Rounded;
  readonly widest: Length;
  readonly least: Length;
  /** What is still in one groove when it is driest and pushed over into the other; below 0 it is out. */
  readonly pushed: Length;
  /** The same pinned at the middle, in each. */
  readonly pinned: Length;
  /** What either lacks of 1/8; none where it does not. */
  readonly pushedShort?: Length;
  readonly pinnedShort?: Length;
  /** The least groove, to the mark, that leaves 1/8 pushed over; none up to four times as deep. */
  readonly deeper?: Length;
  readonly beyond: boolean;
};

export type PanelError =
  | SeasonError
  | { readonly code: 'not-positive'; readonly what: 'opening' | 'groove' | 'grain' }
  | { readonly code: 'tip-negative' }
  /** The tips fill the grooves: by how much they are over. */
  | { readonly code: 'tip-over-groove'; readonly by: Length };

/** Still in its groove when driest. Common practice, no source. */
const leastBearing = inches(1n, 8n);

/**
 * How wide a panel is cut so that it fills its grooves, less the tips, in the dampest of the year, rounded down; and
 * how much of it stays in them in the driest, pushed over to one side or pinned at the middle.
 *
 * Source: Wood Handbook, FPL-GTR-190, 2010, equation 13-2.
 *
 * @param plan inches, > 0; tip >= 0; moistures percent
 * @returns inches
 * @example panelOf(plan) // 11 1/8: Example 3 of movement
 */
export function panelOf(plan: PanelPlan): Result<Panel, PanelError> {
  const fault = panelFault(plan);
  if (fault) return err(fault);
  const { low, now, high } = plan.season;
  const own = sizesOf(plan);
  const bearing = figureIn(plan.units, leastBearing);
  const short = (name: 'pushedShort' | 'pinnedShort', is: Length) =>
    less(is, bearing) ? { [name]: subtract(bearing, is) } : {};
  const deeper = less(own.pushed, bearing) ? deeperGroove(plan, bearing) : undefined;
  return ok({
    ...own,
    ...short('pushedShort', own.pushed),
    ...short('pinnedShort', own.pinned),
    ...(deeper ? { deeper } : {}),
    beyond: isBeyond(low, now, high),
  });
}

function panelFault(plan: PanelPlan): PanelError | undefined {
  const blank = (['opening', 'groove', 'grain'] as const).find((what) => !isPositive(plan[what]));
  if (blank) return { code: 'not-positive', what: blank };
  if (isNegative(plan.tip)) return { code: 'tip-negative' };
  if (!less(plan.tip, plan.groove)) return { code: 'tip-over-groove', by: subtract(plan.tip, plan.groove) };
  return faultOf(plan.season, plan.coefficient);
}

function sizesOf({ opening, groove, tip, season, coefficient, grain }: PanelPlan) {
  const { damp, dry } = factorsOf(season, coefficient);
  const full = subtract(add(opening, times(groove, 2n)), times(tip, 2n));
  const cut = roundTo(over(full, damp), grain, 'floor');
  const widest = times(cut.value, damp);
  const least = times(cut.value, dry);
  return {
    cut,
    widest,
    least,
    pushed: subtract(least, sum([opening, groove])),
    pinned: half(subtract(least, opening)),
  };
}

/** Mark by mark, each tried with its own rounded panel. */
function deeperGroove(plan: PanelPlan, bearing: Length): Length | undefined {
  const most = times(plan.groove, 4n);
  const start = roundTo(plan.groove, plan.grain, 'floor').value;
  for (let groove = add(start, plan.grain); !less(most, groove); groove = add(groove, plan.grain))
    if (!less(sizesOf({ ...plan, groove }).pushed, bearing)) return groove;
  return undefined;
}
