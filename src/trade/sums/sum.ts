import { isNegative, type Length, negate, over, sum } from '../../length/length';
import type { TermCode } from './term-code';

/** One line of a sum: what it is, and what it adds (negative: takes off). Inches. */
export type Term = { readonly what: TermCode; readonly value: Length; readonly from?: Sum | undefined };

/** A figure with the sum it comes from: the answer to "why?". Value = terms added, shared by `shares`. Inches. */
export type Sum = {
  readonly value: Length;
  readonly terms: readonly Term[];
  /** The terms together are shared equally by so many. */
  readonly shares?: number;
};

/** A line that adds. @example plus('outside-width', inches(3n)) */
export const plus = (what: TermCode, value: Length, from?: Sum): Term => ({ what, value, from });

/** A line that takes off; the value is given without its sign. @example minus('two-sides', inches(3n, 2n)) */
export const minus = (what: TermCode, value: Length, from?: Sum): Term => ({
  what,
  value: negate(value),
  from,
});

/**
 * Lines added up; lines of nothing are left out, unless there is no other.
 *
 * @returns the figure with its lines, inches
 * @example sumOf(plus('outside-width', inches(3n)), minus('two-sides', inches(1n))).value // 2
 */
export function sumOf(...terms: readonly Term[]): Sum {
  const said = terms.filter((t, k) => k === 0 || t.value.n !== 0n);
  return { value: sum(terms.map((t) => t.value)), terms: said };
}

/**
 * Lines added up and shared equally.
 *
 * @param shares whole, >= 1
 * @example sharedBy(2, plus('clear-width', inches(9n))).value // 4 1/2
 */
export function sharedBy(shares: number, ...terms: readonly Term[]): Sum {
  const whole = sumOf(...terms);
  return shares === 1 ? whole : { ...whole, value: over(whole.value, BigInt(shares)), shares };
}

/** A figure given, not worked out. */
export const given = (what: TermCode, value: Length): Sum => ({ value, terms: [plus(what, value)] });

/** Whether a line takes off. */
export const takesOff = (term: Term): boolean => isNegative(term.value);
