import { add, isNegative, type Length, less, negate, subtract } from '../../length/length';
import { err, ok, type Result } from '../../length/result';
import type { FootPlace, LevelFeet } from './feet';

/** A foot that screws in and out: how long it is at its shortest and at its longest. Inches. */
type Travel = { readonly shortest: Length; readonly longest: Length };

type FootSet = FootPlace & {
  /** How long this foot stands: that on the high point, and its shim more. */
  readonly set: Length;
  /** Longer than it goes (above 0) or shorter (below 0), by so much; none where it is within its travel. */
  readonly past?: Length;
};

export type FeetSet = {
  readonly feet: readonly FootSet[];
  /** How long the foot on the high point may stand so that every foot is within; none where no such length is. */
  readonly between?: { readonly least: Length; readonly most: Length };
  /** How much more the floor falls than the feet travel; none where they do. */
  readonly fallsMore?: Length;
};

export type TravelError =
  | { readonly code: 'negative'; readonly by: Length }
  /** The shortest is longer than the longest. */
  | { readonly code: 'turned-round'; readonly by: Length };

/**
 * Whether every foot can be screwed out to level.
 *
 * @param levelled as `levelFeet` found it
 * @param at.high how long the foot on the high point stands, inches; @param at.travel of one foot, inches, >= 0
 * @returns inches; a foot just at either end is within
 * @example feetSet(levelled, { high: inches(1n), travel }).value.feet // Example 13 of room
 */
export function feetSet(
  levelled: LevelFeet,
  at: { readonly high: Length; readonly travel: Travel },
): Result<FeetSet, TravelError> {
  const { shortest, longest } = at.travel;
  if (isNegative(shortest)) return err({ code: 'negative', by: negate(shortest) });
  if (less(longest, shortest)) return err({ code: 'turned-round', by: subtract(shortest, longest) });
  const feet = levelled.shims.map(({ shim, ...place }): FootSet => {
    const set = add(at.high, shim);
    if (less(longest, set)) return { ...place, set, past: subtract(set, longest) };
    return less(set, shortest) ? { ...place, set, past: subtract(set, shortest) } : { ...place, set };
  });
  const most = subtract(longest, levelled.most);
  if (less(most, shortest)) return ok({ feet, fallsMore: subtract(shortest, most) });
  return ok({ feet, between: { least: shortest, most } });
}
