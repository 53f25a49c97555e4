import { fromMillimetres, inches, type Length, subtract } from './length';
import { type Rounded, type Rounding, roundTo } from './round';

/** The marks a job is laid out in. Cutter widths are also read in thousandths. */
export const tapes = ['1/16', '1/32', '1/64', '1 mm', '1/2 mm', '0.001'] as const;
export type Tape = (typeof tapes)[number];

const grains: Record<Tape, Length> = {
  '1/16': inches(1n, 16n),
  '1/32': inches(1n, 32n),
  '1/64': inches(1n, 64n),
  '1 mm': fromMillimetres(1n),
  '1/2 mm': fromMillimetres(1n, 2n),
  '0.001': inches(1n, 1000n),
};

/** The distance between two marks of a tape, inches. */
export const grainOf = (tape: Tape): Length => grains[tape];

export const isMetric = (tape: Tape): boolean => tape === '1 mm' || tape === '1/2 mm';

/**
 * The mark for a position: nearest unless its purpose says otherwise.
 * Parts that must enter an opening go `floor`, cavities that must receive go `ceil`.
 *
 * @param x exact position, inches
 * @returns the mark and the signed rest (> 0 strong)
 * @example markAt(inches(1175n, 64n), '1/16').value // 18 3/8: 18 23/64, nearest 16th
 */
export function markAt(x: Length, tape: Tape, mode: Rounding = 'halfExpand'): Rounded {
  return roundTo(x, grains[tape], mode);
}

/**
 * The same mark from the other end: the length rounded once, less the rounded mark, so the two marks always meet.
 *
 * @param length exact length of the part, inches
 * @param mark a position as marked: rounded, with what that left
 * @returns the figure, and what it leaves of the exact distance from the other end: rest = (length - exact position)
 * - value
 * @example fromOtherEnd(inches(257n, 4n), markAt(inches(685n, 32n), '1/16'), '1/16') // 42 13/16, strong by 1/32: Example 5 of length
 */
export function fromOtherEnd(length: Length, mark: Rounded, tape: Tape): Rounded {
  const whole = markAt(length, tape);
  return { value: subtract(whole.value, mark.value), rest: subtract(whole.rest, mark.rest) };
}
