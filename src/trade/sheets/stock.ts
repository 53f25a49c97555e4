import { inches, type Length, type Ratio } from '../../length/length';
import { figureIn } from '../../length/metric-figures';
import type { Units } from '../../length/units';

/** Which way the face grain runs on a sheet: with its long side, across it, or it does not matter. */
export type Grain = 'long' | 'wide' | 'none';

/**
 * What parts are cut out of: a sheet of one size and thickness, or a stick. `long` along the longer side, `trim` cut
 * off every edge of a sheet and both ends of a stick. Inches.
 */
export type SheetStock = {
  readonly id: string;
  readonly name: string;
  readonly kind: 'sheet' | 'stick';
  /** What it is reckoned with; not known is undefined. */
  readonly thickness?: Length | undefined;
  readonly long: Length;
  readonly wide: Length;
  readonly trim: Length;
  readonly grain: Grain;
  /** At hand, not to be bought. */
  readonly have: number;
  /** No more are to be had than those at hand. */
  readonly noMore: boolean;
  /** What one costs, in any money; fewest sheets count when not every one has a price. */
  readonly price?: Ratio | undefined;
  /** The stock whose parts may be cut from it too, when both are as thick. */
  readonly like?: string | undefined;
  /** Bad places of a stick from its reference end: [from, to, from, to …]. */
  readonly bad: readonly Length[];
};

/** A piece left over, of a stock. Inches. */
export type LeftPiece = {
  readonly id: string;
  readonly stock: string;
  readonly long: Length;
  readonly wide: Length;
};

/**
 * Sizes and figures until they are said. Sheet 96 by 48, sticks 96 long, no trim, 1/4 over on each way of
 * a piece of sheet, nothing over on the length of a stick, and 50 pounds for one person: common practice, no source.
 * A stick is as wide as its widest piece; one that no piece is of counts as `stickWide`.
 */
const usual = {
  long: inches(96n),
  wide: inches(48n),
  stickWide: inches(6n),
  trim: inches(0n),
  over: inches(1n, 4n),
  overStick: inches(0n),
  carry: 50,
};

const inMillimetres: typeof usual = {
  long: figureIn('mm', usual.long),
  wide: figureIn('mm', usual.wide),
  stickWide: figureIn('mm', usual.stickWide),
  trim: usual.trim,
  over: figureIn('mm', usual.over),
  overStick: usual.overStick,
  carry: usual.carry,
};

/** @param units of the job: a metric sheet is 2440 by 1220, with 6 mm over on each way of a piece */
export const usualSheets = (units: Units): typeof usual => (units === 'mm' ? inMillimetres : usual);
