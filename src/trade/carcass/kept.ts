import { type Length, subtract } from '../../length/length';
import { keptOff } from './kept-off';
import type { Part, Size } from './part';

/** Marks a part keeps whatever its sums come to: others are cut to them, or are to match them. Inches. */
export type Marks = { readonly mark?: Length | undefined; readonly markWide?: Length | undefined };

/**
 * A part cut to the marks it keeps: what its sums leave of them is told like any remainder. A mark farther off than
 * `farthestKept` belongs to a case that was changed since, and is dropped.
 *
 * @param marks length and width of it as it came out, or was cut, inches
 * @example keptTo(top, { mark: l('42 7/8') }).length.mark.value // 42 7/8
 */
export function keptTo(part: Part, { mark, markWide }: Marks): Part {
  const length = keptAt(part.length, mark);
  const width = keptAt(part.width, markWide);
  const board = part.board && { ...part.board, lengthMark: length.mark };
  return { ...part, length, width, ...(length !== part.length && board ? { board } : {}) };
}

const keptAt = (size: Size, kept: Length | undefined): Size =>
  kept && keptOff(size.sum.value, kept)
    ? { ...size, mark: { value: kept, rest: subtract(size.sum.value, kept) } }
    : size;
