import { rootLess } from '../../length/diagonal';
import {
  add,
  asNumber,
  equals,
  inches,
  isPositive,
  type Length,
  less,
  longest,
  negate,
  type Ratio,
  ratio,
  shortest,
  subtract,
  times,
} from '../../length/length';
import { figureIn } from '../../length/metric-figures';
import { err, ok, type Result } from '../../length/result';
import { roundTo, toWhole } from '../../length/round';
import type { Units } from '../../length/units';
import type { Plan } from './lying';
import { polynomial } from './polynomial';
import { neverBelow } from './sturm';

/** Two level corridors that meet square, wall to wall or rail to rail. Inches, > 0. */
export type Corridors = { readonly a: Length; readonly b: Length };

export type Turn = {
  /** `unturned`: it is slid round without being turned. */
  readonly goes: 'unturned' | 'turning' | 'jams';
  /** The longest case as wide as this one that goes, DOWN to the grain; none where it is too wide for a corridor. */
  readonly longest?: Length;
  /** `longest` less its length, and 0 where it goes past that mark; negative: so much too long. */
  readonly spare?: Length;
  /** The narrower corridor less its width; negative: so much too wide. */
  readonly beside: Length;
  /** It goes, but with less than `want` to spare one way: knuckles. */
  readonly close?: { readonly want: Length; readonly by: Length };
};

export type TurnError = { readonly code: 'not-positive'; readonly what: 'a' | 'b' | 'long' | 'wide' };

/** Less to spare than this is close. Common practice, no source. Inches. */
const wanted = inches(1n);

const unit = { from: ratio(0n), to: ratio(1n) };

/**
 * With the two outer corners on the outer walls and the case at an angle t, the inner corner of the walls stands
 * a sin t + b cos t - L sin t cos t off the outer side, and that must be w or more all the way. With u = tan(t/2), and
 * times (1 + u²)², it is this to be nowhere below 0 for u from 0 to 1.
 */
function turns({ a, b }: Corridors, { long, wide }: Plan): boolean {
  if (equals(a, b)) {
    const needs = add(long, times(wide, 2n));
    return needs.mul(needs).lte(a.mul(a).mul(8n));
  }
  const terms = [
    subtract(b, wide),
    times(subtract(a, long), 2n),
    times(wide, -2n),
    times(add(a, long), 2n),
    negate(add(b, wide)),
  ];
  return neverBelow(polynomial(terms.map(asNumber)), unit);
}

/** Slid round unturned, for a width that both corridors take: its length then lies across the wider. */
const slides = ({ a, b }: Corridors, long: Length): boolean => !less(longest(a, b), long);

/** The longest that goes, for a width that both corridors take: by squares, else by halving between two lengths. */
function longestOf(corridors: Corridors, wide: Length, grain: Length): Length {
  const { a, b } = corridors;
  const unturned = roundTo(longest(a, b), grain, 'floor').value;
  if (equals(a, b)) {
    const square = a.mul(a).mul(8n) as Ratio;
    return longest(unturned, rootLess(square, times(wide, 2n), { grain, mode: 'floor' }));
  }
  // longer than three times the wider corridor none goes: even a line goes only at under √8 times that
  let goes = toWhole(asNumber(unturned).div(asNumber(grain)) as Ratio, 'floor');
  let jams = toWhole(asNumber(longest(a, b)).mul(3n).div(asNumber(grain)) as Ratio, 'ceil');
  while (jams - goes > 1n) {
    const middle = (goes + jams) / 2n;
    if (turns(corridors, { long: times(grain, middle), wide })) goes = middle;
    else jams = middle;
  }
  return times(grain, goes);
}

/**
 * Whether a case goes round a level turn from one corridor into another: slid round unturned, or turned through the
 * corner, settled exactly. Walls straight and plumb, nothing on them, corridors longer than the case.
 *
 * @param corridors inches, > 0; @param plan the case from above, inches, > 0, either first
 * @param grain of the tape, inches, > 0; @param units of the job
 * @returns inches
 * @example roundTurn({ a: inches(36n), b: inches(36n) }, plan, inches(1n, 16n)).value.longest // Example 10 of room: 66 13/16
 */
export function roundTurn(
  corridors: Corridors,
  plan: Plan,
  grain: Length,
  units?: Units,
): Result<Turn, TurnError> {
  for (const what of ['a', 'b'] as const)
    if (!isPositive(corridors[what])) return err({ code: 'not-positive', what });
  for (const what of ['long', 'wide'] as const)
    if (!isPositive(plan[what])) return err({ code: 'not-positive', what });
  const long = longest(plan.long, plan.wide);
  const wide = shortest(plan.long, plan.wide);
  const beside = subtract(shortest(corridors.a, corridors.b), wide);
  if (less(beside, inches(0n))) return ok({ goes: 'jams', beside });
  const most = longestOf(corridors, wide, grain);
  const turning = turns(corridors, { long, wide }) ? 'turning' : 'jams';
  const goes = slides(corridors, long) ? 'unturned' : turning;
  // one that goes may be longer than the last mark that does
  const spare = goes === 'jams' ? subtract(most, long) : longest(inches(0n), subtract(most, long));
  const want = figureIn(units, wanted);
  const least = shortest(spare, beside);
  const close = goes !== 'jams' && less(least, want);
  return ok({
    goes,
    longest: most,
    spare,
    beside,
    ...(close ? { close: { want, by: subtract(want, least) } } : {}),
  });
}
