import Fraction from 'fraction.js';
import type { notInUse } from './not-in-use.ts';

declare const brand: unique symbol;

type Alone = 'abs' | 'neg' | 'inverse' | 'floor' | 'round';
type Reckoned = 'add' | 'sub' | 'mul' | 'div';
type Compared = 'equals' | 'lt' | 'lte' | 'gt' | 'gte' | 'compare';

/** A fraction of fraction.js, without what the built app leaves out: reckoned with others of its kind alone. */
type Exact = Omit<Fraction, (typeof notInUse)[number] | Alone | Reckoned | Compared> &
  Readonly<Record<Alone, () => Exact>> &
  Readonly<Record<'add' | 'sub', (other: Exact | bigint) => Exact>> &
  Readonly<Record<'mul' | 'div', (other: Exact | bigint, over?: bigint) => Exact>> &
  Readonly<Record<Exclude<Compared, 'compare'>, (other: Exact | bigint) => boolean>> & {
    compare(other: Exact | bigint): number;
  };

/** An exact length: a rational number of inches in lowest terms. Compare with `equals`, never `===`. */
export type Length = Exact & { readonly [brand]: 'Length' };

/** An exact number without a unit: a count, a ratio, a factor. */
export type Ratio = Exact & { readonly [brand]: 'Ratio' };

/**
 * An exact length of n/d inches.
 *
 * @param n numerator, any sign
 * @param d denominator, not 0
 * @throws RangeError if d is 0: a mistake in the program, never in what was typed
 * @example inches(47n, 64n) // 47/64
 */
export function inches(n: bigint, d = 1n): Length {
  return exact(n, d) as Length;
}

/**
 * A number without a unit, n/d.
 *
 * @throws RangeError if d is 0
 * @example ratio(5n, 4n)
 */
export function ratio(n: bigint, d = 1n): Ratio {
  return exact(n, d) as Ratio;
}

function exact(n: bigint, d: bigint): Exact {
  if (d === 0n) throw new RangeError('a denominator of 0');
  return new Fraction(n, d);
}

/**
 * Millimetres, exactly: 1 mm = 5/127 inch.
 * Source: "Refinement of Values for the Yard and the Pound", Federal Register, 1 July 1959 (1 yard = 0.9144 m).
 *
 * @param n numerator of the millimetres, any sign
 * @param d denominator, not 0
 * @example fromMillimetres(18n) // 90/127 inch
 */
export function fromMillimetres(n: bigint, d = 1n): Length {
  return inches(n * 5n, d * 127n);
}

/** The length as exact millimetres. @example toMillimetres(inches(1n)) // 127/5 */
export function toMillimetres(x: Length): Ratio {
  return x.mul(127n, 5n) as Ratio;
}

export const zero = inches(0n);

/** @example add(inches(1n, 2n), inches(1n, 4n)) // 3/4 */
export const add = (a: Length, b: Length): Length => a.add(b) as Length;
/** a - b; may be negative. @example subtract(inches(1n), inches(1n, 4n)) // 3/4 */
export const subtract = (a: Length, b: Length): Length => a.sub(b) as Length;
/** @example negate(inches(3n)) // -3 */
export const negate = (a: Length): Length => a.neg() as Length;
/** The length without its sign. @example absolute(inches(-3n)) // 3 */
export const absolute = (a: Length): Length => a.abs() as Length;

/** A length taken k times; k may be a whole number or a ratio. @example times(inches(3n, 4n), 6n) // 4 1/2 */
export const times = (a: Length, k: bigint | Ratio): Length => a.mul(k) as Length;

/** A length shared into k parts. @throws RangeError if k is 0. @example over(inches(9n), 2n) // 4 1/2 */
export function over(a: Length, k: bigint | Ratio): Length {
  if (typeof k === 'bigint' ? k === 0n : k.n === 0n) throw new RangeError('a length over 0');
  return a.div(k) as Length;
}

/**
 * How many times b goes into a, exactly. @throws RangeError if b is 0.
 * @example howMany(inches(9n), inches(2n)) // 9/2
 */
export function howMany(a: Length, b: Length): Ratio {
  if (isZero(b)) throw new RangeError('division by no length');
  return a.div(b) as Ratio;
}

/** @example half(inches(9n)) // 4 1/2 */
export const half = (a: Length): Length => over(a, 2n);
/** All of them added; none is 0. @example sum([inches(1n), inches(2n)]) // 3 */
export const sum = (lengths: readonly Length[]): Length => lengths.reduce(add, zero);

/** The same length, however it came about. @example equals(inches(2n, 4n), inches(1n, 2n)) // true */
export const equals = (a: Length, b: Length): boolean => a.equals(b);
/** a < b. @example less(inches(1n), inches(2n)) // true */
export const less = (a: Length, b: Length): boolean => a.lt(b);
/** a <= b. @example atMost(inches(2n), inches(2n)) // true */
export const atMost = (a: Length, b: Length): boolean => a.lte(b);
/** < 0, 0 or > 0, for sorting. @example compare(inches(1n), inches(2n)) // -1 */
export const compare = (a: Length, b: Length): number => a.compare(b);
export const isZero = (a: Length): boolean => a.n === 0n;
export const isNegative = (a: Length): boolean => a.s < 0n && a.n !== 0n;
export const isPositive = (a: Length): boolean => a.s > 0n && a.n !== 0n;
/** The greatest of them. @example longest(inches(1n), inches(3n), inches(2n)) // 3 */
export const longest = (a: Length, ...rest: readonly Length[]): Length =>
  rest.reduce((m, x) => (less(m, x) ? x : m), a);
/** The least of them. @example shortest(inches(2n), inches(1n)) // 1 */
export const shortest = (a: Length, ...rest: readonly Length[]): Length =>
  rest.reduce((m, x) => (less(x, m) ? x : m), a);

/** A number keyed as a length is, its inches dropped. @example asNumber(inches(5n, 4n)) // 5/4 */
export const asNumber = (x: Length): Ratio => ratio(numerator(x), x.d);
/** A number as so many inches, to be shown or keyed as a length is. @example asInches(ratio(5n, 4n)) // 1 1/4 */
export const asInches = (x: Ratio): Length => inches(numerator(x), x.d);

/** Numerator with its sign. @example numerator(inches(-3n, 4n)) // -3n */
export const numerator = (a: Length | Ratio): bigint => a.s * a.n;

/**
 * The length as a float, for pictures only: nothing computed from it may reach a mark.
 */
export const forDrawing = (a: Length): number => a.valueOf();
