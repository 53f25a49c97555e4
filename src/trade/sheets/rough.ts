import { add, type Length, longest } from '../../length/length';
import { markAt, type Tape } from '../../length/tape';
import type { Part } from '../carcass/part';
import type { Rect } from './tree';

/** What is cut over the finished size, and which stocks are sticks. Inches. */
export type RoughAt = {
  readonly tape: Tape;
  /** Over on each way of a piece of sheet, >= 0. */
  readonly over: Length;
  /** Over on the length of a piece of stick, >= 0. */
  readonly overStick: Length;
  readonly stick: (stock: string) => boolean;
};

/** A piece as it is cut out of its sheet or stick, and what is made of it. Inches. */
type Rough = Rect & { readonly finished: Rect };

/**
 * The size a piece is cut out at: the finished size and what is over, up to the next mark of the tape. A mitred end
 * counts to its long point. A piece of stick has nothing over on its width: it is ripped after it is cut to length, so
 * the stick only has to be wide enough.
 *
 * @param part with its marks; @param at allowances of the job, inches, >= 0
 * @returns inches
 * @example roughOf(side, at).wide // 17 3/4 for a side 17 1/2 wide, 1/4 over: Example 5 of sheets
 */
export function roughOf(part: Part, at: RoughAt): Rough {
  const stick = part.stuff !== undefined && at.stick(part.stuff);
  const up = (x: Length): Length => markAt(x, at.tape, 'ceil').value;
  const long = part.length.mark.value;
  const finished: Rect = {
    long: part.longPoint ? longest(long, up(part.longPoint.value)) : long,
    wide: part.width.mark.value,
  };
  return {
    finished,
    long: up(add(finished.long, stick ? at.overStick : at.over)),
    wide: stick ? finished.wide : up(add(finished.wide, at.over)),
  };
}
