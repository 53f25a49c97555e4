import {
  add,
  howMany,
  isNegative,
  isPositive,
  type Length,
  longest,
  subtract,
  times,
  zero,
} from '../../length/length';
import { err, ok, type Result } from '../../length/result';
import { wholePart } from '../../length/round';

/** How many strips come out of a sheet, and what is over. Inches. */
type Strips = { readonly usable: Length; readonly count: number; readonly offcut: Length };

export type StripsError =
  | { readonly code: 'kerf-missing' }
  | { readonly code: 'no-width' }
  /** A trim takes off; `trim` is below 0. */
  | { readonly code: 'trim-negative'; readonly trim: Length }
  | { readonly code: 'trim-eats-it'; readonly trim: Length; readonly most: Length }
  | { readonly code: 'wider-than-sheet'; readonly by: Length; readonly usable: Length };

/**
 * Strips of one rough width across a sheet: the last needs no kerf, so the count is (usable + kerf) / (strip + kerf).
 *
 * @param at.across the sheet, inches, > 0; @param at.trim off each edge, >= 0; @param at.strip rough width, > 0
 * @param at.kerf > 0
 * @returns usable width, count and offcut, inches; or what is wrong, by how much
 * @example stripsOf({ across: inches(387n, 8n), trim: inches(3n, 16n), strip: inches(71n, 4n), kerf: inches(1n, 8n) })
 * // usable 48, 2 strips, offcut 12 1/4: Example 1 of sheets
 */
export function stripsOf(at: {
  readonly across: Length;
  readonly trim: Length;
  readonly strip: Length;
  readonly kerf: Length | undefined;
}): Result<Strips, StripsError> {
  if (!at.kerf || !isPositive(at.kerf)) return err({ code: 'kerf-missing' });
  if (!isPositive(at.strip)) return err({ code: 'no-width' });
  if (isNegative(at.trim)) return err({ code: 'trim-negative', trim: at.trim });
  const usable = subtract(at.across, times(at.trim, 2n));
  if (!isPositive(usable)) return err({ code: 'trim-eats-it', trim: at.trim, most: at.across });
  const count = wholePart(howMany(add(usable, at.kerf), add(at.strip, at.kerf)));
  if (count === 0n) return err({ code: 'wider-than-sheet', by: subtract(at.strip, usable), usable });
  const offcut = longest(zero, subtract(usable, times(add(at.strip, at.kerf), count)));
  return ok({ usable, count: Number(count), offcut });
}
