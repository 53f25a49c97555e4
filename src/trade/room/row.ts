import { trueReading } from '../../length/burned';
import { isPositive, type Length, subtract } from '../../length/length';
import { err, ok, type Result } from '../../length/result';
import { type AtSpot, greatestOf, leastOf, readTwice, type Spot, spotOf } from './spot';

/** How the tape was used for a whole row: started at a burned inch, or its own body added inside. Inches, >= 0. */
export type TapeUse = { readonly burned?: Length; readonly body?: Length };

/** Widths or heights read at several spots, as they truly are. Inches. */
export type Row = {
  readonly trues: readonly AtSpot[];
  readonly least: AtSpot;
  readonly greatest: AtSpot;
  /** Greatest less least, >= 0. */
  readonly spread: Length;
  /** Burned inch and tape body both: seldom both meant. */
  readonly both: boolean;
};

export type RowError =
  | { readonly code: 'no-readings' }
  | { readonly code: 'twice'; readonly spot: Spot }
  /** Less is read than was burned, by so much. */
  | { readonly code: 'less-than-burned'; readonly spot: Spot; readonly by: Length }
  | { readonly code: 'not-positive'; readonly spot: Spot };

/**
 * A row of readings of one width or one height, the tape's start and body taken into it.
 *
 * @param readings inches, at least one, no spot twice
 * @param tape how the tape was used; nothing: from its hook to its mark
 * @returns inches; `RowError` where a reading cannot be
 * @example rowOf(readings, { body: inches(3n) }).value.least // Example 1 of room: 47 5/8
 */
export function rowOf(readings: readonly AtSpot[], tape: TapeUse): Result<Row, RowError> {
  const twice = readTwice(readings);
  if (twice) return err({ code: 'twice', spot: twice });
  const trues: AtSpot[] = [];
  for (const reading of readings) {
    const found = trueReading(reading.value, tape);
    const spot = spotOf(reading);
    if (!found.ok) return err({ ...found.error, spot });
    if (!isPositive(found.value.value)) return err({ code: 'not-positive', spot });
    trues.push({ ...spot, value: found.value.value });
  }
  const [least, greatest] = [leastOf(trues), greatestOf(trues)];
  if (!least || !greatest) return err({ code: 'no-readings' });
  const both = [tape.burned, tape.body].every((x) => x !== undefined && isPositive(x));
  return ok({ trues, least, greatest, spread: subtract(greatest.value, least.value), both });
}
