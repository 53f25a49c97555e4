import {
  absolute,
  fromMillimetres,
  inches,
  isNegative,
  isZero,
  type Length,
  less,
  numerator,
  type Ratio,
  toMillimetres,
} from './length';
import { type Rounded, roundTo } from './round';
import { showsDecimals, type Tape, unitsOf } from './tape';
import type { Units } from './units';

/** A length taken apart for the eye: sign, whole inches, fraction. `n` is 0n when whole. */
export type Mixed = {
  readonly negative: boolean;
  readonly whole: bigint;
  readonly n: bigint;
  readonly d: bigint;
};

/** @example mixed(inches(215n, 16n)) // 13 and 7/16 */
export function mixed(x: Length | Ratio): Mixed {
  return { negative: x.s < 0n, whole: x.n / x.d, n: x.n % x.d, d: x.d };
}

/**
 * A length in words of the trade: `13 7/16`, `3/4`, `0`, `-1/8`. Without a tape it is exact to the last and reads back;
 * on a tape it is written as a screen shows it.
 */
export function writeLength(x: Length, tape?: Tape): string {
  if (!tape) return writeFraction(x);
  return showsDecimals(tape) ? writeDecimals(x, tape) : writeShown(x, unitsOf(tape));
}

function writeFraction(x: Length): string {
  const { negative, whole, n, d } = mixed(x);
  const fraction = n === 0n ? '' : `${n}/${d}`;
  const text = [whole === 0n && fraction ? '' : `${whole}`, fraction].filter(Boolean).join(' ');
  return negative ? `-${text}` : text;
}

/** Millimetres as a decimal: exact where they end within three places, else the nearest hundredth. */
export function writeMillimetres(x: Length): string {
  const mm = toMillimetres(x);
  const thousandths = numerator(mm) * 1000n;
  if (thousandths % mm.d !== 0n) return writeMillimetres(roundTo(x, hundredth, 'halfExpand').value);
  return `${writeThousandths(thousandths / mm.d).replace(/\.?0+$/, '')} mm`;
}

const hundredth = fromMillimetres(1n, 100n);

/**
 * A length on a screen, in a unit system. Inches are a fraction where a tape has it, millimetres where they were given
 * in millimetres, else thousandths; a job in millimetres has everything in them. A fraction no tape has is never shown.
 *
 * @example writeShown(inches(177n, 500n), 'in') // '0.354'
 */
export function writeShown(x: Length, units: Units): string {
  if (units === 'mm' || isMetric(x)) return writeMillimetres(x);
  return writeNumber(x);
}

/** A number without a unit on a screen: a fraction where a tape has it, else three decimals. */
export const writeNumber = (x: Length | Ratio): string =>
  64n % x.d === 0n ? writeFraction(x as Length) : writeDecimal(x as Length);

/** Whether it can only have been given in millimetres: hundredths of them, and no fraction of an inch. */
export const isMetric = (x: Length): boolean => x.d % 127n === 0n && 100n % toMillimetres(x).d === 0n;

/** Whole thousandths as a decimal with three places. @example writeThousandths(8n) // '0.008' */
function writeThousandths(k: bigint): string {
  const sign = k < 0n ? '-' : '';
  const digits = `${k < 0n ? -k : k}`.padStart(4, '0');
  return `${sign}${digits.slice(0, -3)}.${digits.slice(-3)}`;
}

/**
 * Whether a tape or rule can show it: halves, quarters … sixty-fourths.
 * @example isTapeFraction(inches(1n, 50n)) // false
 */
export const isTapeFraction = (x: Length): boolean => 64n % x.d === 0n;

/** A length in thousandths of an inch, nearest: for calipers and cutters. @example '0.734' */
export function writeDecimal(x: Length): string {
  return writeThousandths(numerator(roundTo(x, inches(1n, 1000n), 'halfExpand').value.mul(1000n) as Length));
}

/** A length as a tape that shows decimals has it, and as calipers read it. @example writeDecimals(inches(1n, 8n), '0.001') // '0.125' */
export const writeDecimals = (x: Length, tape: Tape): string => writing[unitsOf(tape)].decimal(x);

type Remainder = {
  readonly word: 'strong' | 'scant' | 'on the mark';
  /** Three decimals, without sign; empty on the mark. */
  readonly by: string;
};

/**
 * What rounding left, in words: strong when the true length is more than the mark, scant when less. Thousandths of an
 * inch; on a metric tape hundredths of a millimetre. Under 0.0008 in (0.02 mm) it is on the mark: nobody can set that.
 *
 * @param rest exact - mark, inches
 * @returns nothing when the mark is exact
 * @example remainder(inches(1n, 128n)) // strong by 0.008
 */
export function remainder(rest: Length, tape: Tape = '1/64'): Remainder | undefined {
  if (isZero(rest)) return undefined;
  const { onTheMark, left } = writing[unitsOf(tape)];
  const size = absolute(rest);
  if (less(size, onTheMark)) return { word: 'on the mark', by: '' };
  return { word: isNegative(rest) ? 'scant' : 'strong', by: left(size) };
}

/** Millimetres to two places: `0.36 mm`. */
function hundredths(x: Length): string {
  const k = numerator(roundTo(x, hundredth, 'halfExpand').value.mul(2540n) as Length);
  return `${k / 100n}.${`${k % 100n}`.padStart(2, '0')} mm`;
}

/**
 * A mark with what rounding left, as a list writes it.
 * @example writeMark({ value: 13 7/16, rest: .008 }, '1/16') // '13 7/16 (strong 0.008)'
 */
export function writeMark({ value, rest }: Rounded, tape: Tape): string {
  const left = remainder(rest, tape);
  const told = left ? ` (${left.word}${left.by ? ` ${left.by}` : ''})` : '';
  return `${writeLength(value, tape)}${told}`;
}

/** One spoken form for a mark and its remainder: `13 and 7/16 inches, strong by 0.008`. */
export function spoken(x: Length, rest?: Length, tape: Tape = '1/64'): string {
  const left = rest && remainder(rest, tape);
  const tail = left ? `, ${left.word}${left.by ? ` by ${left.by}` : ''}` : '';
  const figure = showsDecimals(tape) ? writeDecimals(x, tape) : spokenNumber(x);
  return `${figure}${writing[unitsOf(tape)].unitSpoken}${tail}`;
}

/** A number without a unit, spoken: pounds, a ratio, a count. @example spokenNumber(ratio(5n, 4n)) // '1 and 1/4' */
export function spokenNumber(x: Length | Ratio): string {
  const { negative, whole, n, d } = mixed(x);
  const parts = [whole > 0n || n === 0n ? `${whole}` : '', n > 0n ? `${n}/${d}` : ''].filter(Boolean);
  return `${negative ? 'minus ' : ''}${parts.join(' and ')}`;
}

/** How lengths are written in a unit system. */
type Writing = {
  readonly decimal: (x: Length) => string;
  /** What is said after a figure, where the figure does not say it. */
  readonly unitSpoken: string;
  /** What rounding left, without its sign. */
  readonly left: (size: Length) => string;
  /** Less than this is on the mark: nobody can set it. Inches. */
  readonly onTheMark: Length;
};

const writing: Record<Units, Writing> = {
  in: {
    decimal: writeDecimal,
    unitSpoken: ' inches',
    left: writeDecimal,
    onTheMark: inches(8n, 10000n),
  },
  mm: {
    decimal: writeMillimetres,
    unitSpoken: '',
    left: hundredths,
    onTheMark: fromMillimetres(2n, 100n),
  },
};
