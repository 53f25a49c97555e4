import { fromMillimetres, inches, type Length, subtract } from './length';
import { type Rounded, type Rounding, roundTo } from './round';
import type { Units } from './units';

/**
 * The graduations a job can be marked in, each of one unit system (`units.ts`); the names stand in kept jobs. Cutter
 * widths are also read in thousandths.
 */
export const tapes = ['1/16', '1/32', '1/64', '1 mm', '1/2 mm', '0.001'] as const;
export type Tape = (typeof tapes)[number];

type Graduation = {
  /** The distance between two marks. Inches. */
  readonly grain: Length;
  readonly units: Units;
  readonly decimal: boolean;
  /** What is read closer than the tape is shown on: a hole, a gap, a fit. */
  readonly fine: Tape;
  /** What a cutter's depth and width are shown on. */
  readonly cutter: Tape;
};

const inch = (d: bigint, decimal = false): Graduation => ({
  grain: inches(1n, d),
  units: 'in',
  decimal,
  fine: '1/64',
  cutter: '1/64',
});

const metric = (fine: Tape, d: bigint): Graduation => ({
  grain: fromMillimetres(1n, d),
  units: 'mm',
  decimal: true,
  fine,
  cutter: '1/2 mm',
});

const graduations: Record<Tape, Graduation> = {
  '1/16': inch(16n),
  '1/32': inch(32n),
  '1/64': inch(64n),
  '1 mm': metric('1 mm', 1n),
  '1/2 mm': metric('1/2 mm', 2n),
  '0.001': inch(1000n, true),
};

/** The distance between two marks of a tape, inches. */
export const grainOf = (tape: Tape): Length => graduations[tape].grain;

/** The unit system of a tape: what a bare number on it is. @example unitsOf('1/2 mm') // 'mm' */
export const unitsOf = (tape: Tape): Units => graduations[tape].units;

/** Whether its figures are decimals, not fractions. @example showsDecimals('0.001') // true */
export const showsDecimals = (tape: Tape): boolean => graduations[tape].decimal;

/** The tape for what is read closer than marks: a hole, a gap, a fit. @example fineOf('1/16') // '1/64' */
export const fineOf = (tape: Tape): Tape => graduations[tape].fine;

/** The tape for a cutter's depth and width. @example cutterTape('1 mm') // '1/2 mm' */
export const cutterTape = (tape: Tape): Tape => graduations[tape].cutter;

/**
 * The mark for a position: nearest unless its purpose says otherwise.
 * Parts that must enter an opening go `floor`, cavities that must receive go `ceil`.
 *
 * @param x exact position, inches
 * @returns the mark and the signed rest (> 0 strong)
 * @example markAt(inches(1175n, 64n), '1/16').value // 18 3/8: 18 23/64, nearest 16th
 */
export function markAt(x: Length, tape: Tape, mode: Rounding = 'halfExpand'): Rounded {
  return roundTo(x, grainOf(tape), mode);
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
export const fromOtherEnd = (length: Length, mark: Rounded, tape: Tape): Rounded =>
  restOfLength(markAt(length, tape), mark);

/**
 * As `fromOtherEnd`, of a length that is rounded already, by its own purpose.
 *
 * @param whole the length as marked; @param mark a position as marked. Both with what that left
 * @example restOfLength(markAt(length, '1/16', 'floor'), mark)
 */
export const restOfLength = (whole: Rounded, mark: Rounded): Rounded => ({
  value: subtract(whole.value, mark.value),
  rest: subtract(whole.rest, mark.rest),
});
