import { isNegative, isPositive, type Length, less, negate, subtract } from '../../length/length';
import { err, ok, type Result } from '../../length/result';

/** A wedge: how thick at either end, and how long. Inches. */
type Wedge = { readonly thin: Length; readonly thick: Length; readonly long: Length };

export type WedgeError =
  | { readonly code: 'not-positive' }
  | { readonly code: 'negative-thin'; readonly by: Length }
  /** It does not taper: the thick end must be thicker, and is `by` too thin (0: alike). */
  | { readonly code: 'no-taper'; readonly by: Length }
  /** It lifts no more than its thick end: so much too little. */
  | { readonly code: 'too-thin'; readonly by: Length }
  /** Its thin end alone lifts more than is wanted, by so much. */
  | { readonly code: 'too-thick'; readonly by: Length };

/**
 * How far one wedge is driven in, thin end first, to lift by so much: (lift - thin) * long / (thick - thin).
 *
 * @param wedge inches; thick > thin >= 0, long > 0
 * @param lift inches, between thin and thick
 * @returns inches, exact
 * @example wedgeIn(wedge, inches(3n, 16n)).value // Example 12 of room: 3 8/9
 */
export function wedgeIn({ thin, thick, long }: Wedge, lift: Length): Result<Length, WedgeError> {
  if (!isPositive(long)) return err({ code: 'not-positive' });
  if (isNegative(thin)) return err({ code: 'negative-thin', by: negate(thin) });
  if (!less(thin, thick)) return err({ code: 'no-taper', by: subtract(thin, thick) });
  if (less(thick, lift)) return err({ code: 'too-thin', by: subtract(lift, thick) });
  if (less(lift, thin)) return err({ code: 'too-thick', by: subtract(thin, lift) });
  return ok(subtract(lift, thin).mul(long).div(subtract(thick, thin)) as Length);
}
