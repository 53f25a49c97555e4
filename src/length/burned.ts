import { add, isNegative, type Length, subtract, zero } from './length';
import { err, ok, type Result } from './result';

type BurnedError = { readonly code: 'less-than-burned'; readonly by: Length };

type TrueReading = {
  readonly value: Length;
  /** Burning an inch and adding the tape body are seldom both meant. */
  readonly both: boolean;
};

/**
 * What a tape really says: reading less the burned start, plus the tape's own body for an inside measure.
 *
 * @param reading inches; @param burned inches the tape was started at, >= 0; @param body length of the tape case,
 * inches, >= 0
 * @throws RangeError if burned or body is negative: no blank takes such a figure
 * @example trueReading(inches(25n), { burned: inches(1n) }) // 24
 */
export function trueReading(
  reading: Length,
  { burned = zero, body = zero }: { readonly burned?: Length; readonly body?: Length },
): Result<TrueReading, BurnedError> {
  if (isNegative(burned) || isNegative(body))
    throw new RangeError('trueReading: burned and body must be >= 0');
  const value = add(subtract(reading, burned), body);
  if (isNegative(value)) return err({ code: 'less-than-burned', by: value.neg() as Length });
  return ok({ value, both: burned.n !== 0n && body.n !== 0n });
}
