import { add, equals, type Length, subtract } from '../../length/length';
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
  const laps = lapsAt(part, length);
  return { ...part, length, width, laps, ...(length !== part.length && board ? { board } : {}) };
}

/** A lap at the far end of a piece of the face frame stays at that end. */
function lapsAt({ laps, inFrame, length: own }: Part, kept: Size): Part['laps'] {
  if (!inFrame || kept === own) return laps;
  const { value } = own.sum;
  const by = subtract(kept.mark.value, value);
  return laps.map((lap) =>
    equals(add(lap.near, lap.long), value) ? { ...lap, near: add(lap.near, by) } : lap,
  );
}

const keptAt = (size: Size, kept: Length | undefined): Size =>
  kept && keptOff(size.sum.value, kept)
    ? { ...size, mark: { value: kept, rest: subtract(size.sum.value, kept) } }
    : size;
