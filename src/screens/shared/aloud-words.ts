import type { Length } from '../../length/length';
import type { Rounded } from '../../length/round';
import { showsDecimals, type Tape, unitsOf } from '../../length/tape';
import { mixed, remainder, writeDecimals } from '../../length/write';

// A figure as it is said in a shop: in words, because a phone's voice reads 5/16 as a date.

const small =
  'zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen'.split(
    ' ',
  );
const tens = ' twenty thirty forty fifty sixty seventy eighty ninety'.split(' ');

/** A whole number under a million in words. @example cardinal(164) // 'one hundred sixty-four' */
export function cardinal(n: number): string {
  if (n >= 1000) return joined(`${cardinal(Math.floor(n / 1000))} thousand`, n % 1000);
  if (n >= 100) return joined(`${small[Math.floor(n / 100)]} hundred`, n % 100);
  if (n < 20) return small[n] ?? '';
  return `${tens[Math.floor(n / 10) - 1]}${n % 10 ? `-${small[n % 10]}` : ''}`;
}

const joined = (head: string, rest: number): string => (rest === 0 ? head : `${head} ${cardinal(rest)}`);

/** One of a kind, and several: what a tape divides an inch into. */
const shares: Readonly<Record<string, readonly [one: string, several: string]>> = {
  2: ['a half', 'halves'],
  4: ['a quarter', 'quarters'],
  8: ['an eighth', 'eighths'],
  16: ['one sixteenth', 'sixteenths'],
  32: ['one thirty-second', 'thirty-seconds'],
  64: ['one sixty-fourth', 'sixty-fourths'],
};

function fraction(n: bigint, d: bigint): string {
  const share = shares[`${d}`];
  if (!share) return `${cardinal(Number(n))} over ${cardinal(Number(d))}`;
  return n === 1n ? share[0] : `${cardinal(Number(n))} ${share[1]}`;
}

/** A decimal as it is read: the whole, then digit by digit. @example decimal('17.503') // 'seventeen point five zero three' */
function decimal(text: string): string {
  const [whole = '0', after = ''] = text.split('.');
  const digits = [...after].map((digit) => small[Number(digit)]).join(' ');
  return `${cardinal(Number(whole))}${digits ? ` point ${digits}` : ''}`;
}

/** A figure without what rounding left. */
function figure(x: Length, tape: Tape): string {
  if (showsDecimals(tape)) {
    const text = writeDecimals(x, tape);
    const [number = ''] = text.replace('-', '').split(' ');
    const unit = unitsOf(tape) === 'mm' ? ' millimetres' : ' inches';
    return `${text.startsWith('-') ? 'minus ' : ''}${decimal(number)}${unit}`;
  }
  const { negative, whole, n, d } = mixed(x);
  const parts = [whole > 0n || n === 0n ? cardinal(Number(whole)) : '', n > 0n ? fraction(n, d) : ''].filter(
    Boolean,
  );
  return `${negative ? 'minus ' : ''}${parts.join(' and ')}`;
}

/**
 * A mark and what rounding left, as a woodworker says it.
 *
 * @example aloud({ value: 17 1/2, rest: -.003 }, '1/32') // 'seventeen and a half, scant by three thousandths'
 */
export function aloud({ value, rest }: Rounded, tape: Tape): string {
  const said = figure(value, tape);
  const left = remainder(rest, tape);
  if (!left?.by) return left ? `${said}, ${left.word}` : said;
  const size = left.by.replace(/^\d+\./, '').replace(' mm', '');
  const share = unitsOf(tape) === 'mm' ? 'hundredth' : 'thousandth';
  const n = Number(size);
  return `${said}, ${left.word} by ${n === 1 ? `one ${share}` : `${cardinal(n)} ${share}s`}`;
}

export const sayIt = 'Say it aloud';
