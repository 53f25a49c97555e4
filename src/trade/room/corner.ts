import { absolute, add, isPositive, type Length, less, subtract } from '../../length/length';
import { err, ok, type Result } from '../../length/result';

/** A corner measured by legs: along the back wall, along the side wall, and across from end to end. Inches, > 0. */
type Legs = { readonly back: Length; readonly side: Length; readonly across: Length };

export type Corner = {
  /** How far the side wall comes in at the end of its leg: above 0 the corner closes, below it opens. Exact. */
  readonly inAt: Length;
  readonly legs: Legs;
};

export type CornerError =
  | { readonly code: 'not-positive'; readonly what: keyof Legs }
  /** Three such lines make no triangle: `across` must lie between. */
  | { readonly code: 'cannot-be'; readonly least: Length; readonly most: Length; readonly by: Length };

/**
 * How far a corner is off square. By the rule of cosines, back² + side² - across² = 2 back side cos, and side cos is
 * how far the end of the side leg lies in over the back leg.
 *
 * @param legs inches, > 0
 * @returns inches; `CornerError` where three such lines make no triangle
 * @example cornerOf({ back: inches(40n), side: inches(30n), across: inches(50n) }).value.inAt // 0
 */
export function cornerOf(legs: Legs): Result<Corner, CornerError> {
  for (const what of ['back', 'side', 'across'] as const)
    if (!isPositive(legs[what])) return err({ code: 'not-positive', what });
  const { back, side, across } = legs;
  const [least, most] = [absolute(subtract(back, side)), add(back, side)];
  if (!less(least, across)) return err({ code: 'cannot-be', least, most, by: subtract(least, across) });
  if (!less(across, most)) return err({ code: 'cannot-be', least, most, by: subtract(across, most) });
  const square = back.mul(back).add(side.mul(side)).sub(across.mul(across));
  return ok({ inAt: square.div(back.mul(2n)) as Length, legs });
}

/**
 * How far the side wall comes in over a depth along it.
 *
 * @param depth inches, >= 0
 * @returns inches, exact; above 0 the corner closes, below it opens
 * @example cornerOver(corner, inches(16n)) // Example 6 of room: an eighth strong, opening
 */
export const cornerOver = ({ inAt, legs }: Corner, depth: Length): Length =>
  inAt.mul(depth).div(legs.side) as Length;

/**
 * How far a misreading of the line across moves the end of the side leg: by * across / back. What is left out is by²
 * over twice the back leg.
 *
 * @param by misread, inches, >= 0
 * @returns inches
 * @example cornerMisread(corner, inches(1n, 16n)) // 5/64 on legs of 40, 30 and 50
 */
export const cornerMisread = ({ legs }: Corner, by: Length): Length =>
  by.mul(legs.across).div(legs.back) as Length;
