import {
  inches,
  isNegative,
  isPositive,
  type Length,
  less,
  negate,
  subtract,
  sum,
} from '../../length/length';
import { figureIn } from '../../length/metric-figures';
import { err, ok, type Result } from '../../length/result';
import type { Rounded } from '../../length/round';
import { markAt, type Tape, unitsOf } from '../../length/tape';
import type { Units } from '../../length/units';

/** A tray resting on less than this may drop out. Common practice, no source. */
const leastBearing = inches(1n, 8n);
/** In the unit system of the job. */
export const leastBearingIn = (units: Units | undefined): Length => figureIn(units, leastBearing);

export type Tray = {
  /** Exact width, and the same rounded down: a tray must enter. */
  readonly width: Length;
  readonly cut: Rounded;
  /** What still sits in a groove with the tray shoved to one side and the sides bowed out. */
  readonly bearing: Length;
  readonly thinBearing: boolean;
};

export type TrayError =
  | { readonly code: 'no-width'; readonly by: Length }
  | { readonly code: 'not-positive'; readonly what: 'opening' | 'depth' }
  | { readonly code: 'slack-negative' | 'bow-negative'; readonly by: Length };

/**
 * A loose tray between facing grooves: width = opening + 2 depth - slack; least bearing = depth - slack - bow.
 *
 * @param opening clear between the sides, inches, > 0; @param depth of the grooves, inches, > 0
 * @param play slack, and bow: the extra opening at the worst place, both sides together, inches, >= 0
 * @example trayFor(inches(1159n, 64n), inches(3n, 16n), { slack, bow, tape: '1/32' }) // 18 7/16: Example 17 of grooves
 */
export function trayFor(
  opening: Length,
  depth: Length,
  play: { readonly slack: Length; readonly bow: Length; readonly tape: Tape },
): Result<Tray, TrayError> {
  if (!isPositive(opening)) return err({ code: 'not-positive', what: 'opening' });
  if (!isPositive(depth)) return err({ code: 'not-positive', what: 'depth' });
  if (isNegative(play.slack)) return err({ code: 'slack-negative', by: negate(play.slack) });
  if (isNegative(play.bow)) return err({ code: 'bow-negative', by: negate(play.bow) });
  const width = subtract(sum([opening, depth, depth]), play.slack);
  if (!isPositive(width)) return err({ code: 'no-width', by: negate(width) });
  const bearing = subtract(subtract(depth, play.slack), play.bow);
  return ok({
    width,
    cut: markAt(width, play.tape, 'floor'),
    bearing,
    thinBearing: less(bearing, leastBearingIn(unitsOf(play.tape))),
  });
}
