import { isNegative, type Length, less, negate, subtract } from '../../length/length';
import { err, ok, type Result } from '../../length/result';
import { type AtSpot, greatestOf, leastOf, type Spot, spotOf } from './spot';

/** An edge scribed to a wall. Inches. */
export type Scribe = {
  /** The compass is set at the widest gap. */
  readonly compass: Length;
  /** What comes off at every spot: compass less gap, 0 at the widest. */
  readonly off: readonly AtSpot[];
  /** The most that comes off: greatest less least gap. */
  readonly need: Length;
};

export type ScribeError =
  | { readonly code: 'no-readings' }
  /** Nothing stands inside the wall: a gap cannot be less than nothing. */
  | { readonly code: 'negative-gap'; readonly spot: Spot; readonly by: Length }
  | { readonly code: 'negative-overhang'; readonly by: Length }
  /** More would come off than hangs over. */
  | { readonly code: 'overhang'; readonly need: Length; readonly by: Length };

/**
 * What comes off an edge that stands plumb before a wall, so that it closes to the wall everywhere when it is pushed up
 * by the compass.
 *
 * @param gaps from edge to wall, case plumb and level, inches, >= 0
 * @param overhang what may come off, inches, >= 0
 * @returns inches
 * @example scribe(gaps, inches(1n, 4n)).value.compass // Example 3 of room: 9/32
 */
export function scribe(gaps: readonly AtSpot[], overhang: Length): Result<Scribe, ScribeError> {
  if (isNegative(overhang)) return err({ code: 'negative-overhang', by: negate(overhang) });
  const inside = gaps.find(({ value }) => isNegative(value));
  if (inside) return err({ code: 'negative-gap', spot: spotOf(inside), by: negate(inside.value) });
  const [least, greatest] = [leastOf(gaps), greatestOf(gaps)];
  if (!least || !greatest) return err({ code: 'no-readings' });
  const compass = greatest.value;
  const need = subtract(compass, least.value);
  if (less(overhang, need)) return err({ code: 'overhang', need, by: subtract(need, overhang) });
  return ok({ compass, need, off: gaps.map((gap) => ({ ...gap, value: subtract(compass, gap.value) })) });
}
