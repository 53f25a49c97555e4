import type { Expr, Op } from './expr';
import type { Units } from './units';

/** One figure being keyed: two slots, whole and fraction, filled in any order. Plain JSON. */
export type Slot = {
  readonly feet?: string;
  readonly digits: string;
  /** Sixty-fourths of an inch: a chosen sixteenth, moved by scant and strong. */
  readonly sixtyFourths?: number;
  readonly unit: Units;
  /** On a metric tape a bare number is millimetres, and the unit key says inches. */
  readonly home?: 'mm';
  /** Set when the user swapped what the figure counts as. */
  readonly as?: 'count' | 'length';
};

export const emptySlot: Slot = { digits: '', unit: 'in' };

/** One level of brackets: what is reckoned so far and the sign waiting for its figure. */
export type Frame = { readonly total?: Expr; readonly op?: Op };

/** The calculator's keys, as a state. Plain JSON: kept over restarts. */
export type Keypad = {
  /** Outermost bracket first; always at least one. */
  readonly frames: readonly Frame[];
  readonly slot: Slot;
  /** A line of the strip standing where a figure would. */
  readonly line?: string;
  /** After equals: the sum stands finished. */
  readonly done: boolean;
};

export const blank: Keypad = { frames: [{}], slot: emptySlot, done: false };
