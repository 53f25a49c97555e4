import { atMost, fromMillimetres, inches, type Length, subtract, times } from '../../length/length';
import type { Units } from '../../length/units';

/** Papers a printer takes; the spelling is stored. */
export type Paper = 'a4' | 'letter';

/** A sheet, or a strip cut off a roll, upright: inches, > 0. */
export type Sheet = { readonly across: Length; readonly long: Length };

/**
 * The sizes of papers.
 * Source: A4 is 210 × 297 mm (ISO 216); Letter 8 1/2 × 11 in (ANSI/ASME Y14.1, size A).
 */
export const sheetOf: Readonly<Record<Paper, Sheet>> = {
  a4: { across: fromMillimetres(210n), long: fromMillimetres(297n) },
  letter: { across: inches(17n, 2n), long: inches(11n) },
};

/** What a printer leaves white all round, and how far tiles lie over each other. Common practice, no source. */
export const usualOn: Readonly<Record<Units, { readonly margin: Length; readonly overlap: Length }>> = {
  in: { margin: inches(1n, 2n), overlap: inches(3n, 4n) },
  mm: { margin: fromMillimetres(12n), overlap: fromMillimetres(20n) },
};

/** What stays of a side between two margins; 0 or less where they eat it. Inches. */
export const between = (side: Length, margin: Length): Length => subtract(side, times(margin, 2n));

/** The longest page a reader of PDF must take: 14,400 units of 1/72 in. Source: ISO 32000-1:2008, table C.1. */
const longestPage = inches(200n);

/** By how much a strip of one page is too long for a PDF; nothing where it fits. Inches. */
export const overLongest = (strip: Length): Length | undefined =>
  atMost(strip, longestPage) ? undefined : subtract(strip, longestPage);
