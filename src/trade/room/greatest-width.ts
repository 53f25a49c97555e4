import { isNegative, isPositive, type Length, negate, subtract } from '../../length/length';
import { err, ok, type Result } from '../../length/result';
import { type Rounded, roundTo } from '../../length/round';

/** What is left free at either side for the scribe. Inches, >= 0. */
export type Allowances = { readonly left: Length; readonly right: Length };

export type WidthError =
  | { readonly code: 'negative-allowance'; readonly side: 'left' | 'right'; readonly by: Length }
  /** The allowances take all there is: by so much too little (0: just nothing is left). */
  | { readonly code: 'no-room'; readonly by: Length };

/**
 * The widest case that goes in with its allowances, cut DOWN to the mark. With no plumb lines the least width stands
 * in for the plumb one: any lean still comes off it.
 *
 * @param width plumb width, inches, > 0
 * @param allow inches, >= 0; @param grain of the tape, inches, > 0
 * @returns the mark, and what rounding left, >= 0
 * @example greatestWidth(inches(47n), { left: inches(1n, 2n), right: inches(1n, 2n) }, inches(1n, 32n)) // Example 2 of room: 46
 */
export function greatestWidth(width: Length, allow: Allowances, grain: Length): Result<Rounded, WidthError> {
  for (const side of ['left', 'right'] as const)
    if (isNegative(allow[side])) return err({ code: 'negative-allowance', side, by: negate(allow[side]) });
  const exact = subtract(subtract(width, allow.left), allow.right);
  const cut = roundTo(exact, grain, 'floor');
  return isPositive(cut.value) ? ok(cut) : err({ code: 'no-room', by: negate(exact) });
}
