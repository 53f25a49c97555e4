import type { Expr, Op } from './expr';
import { isZero, type Length, type Ratio, ratio } from './length';
import { readLength } from './read';
import { err, ok, type Result } from './result';
import { wholePart } from './round';

/** What a sum comes to: a length (inches), a number, or an area (square inches). */
export type Quantity =
  | { readonly kind: 'length'; readonly value: Length }
  | { readonly kind: 'number'; readonly value: Ratio }
  | { readonly kind: 'area'; readonly value: Ratio };

export type Kind = Quantity['kind'];

export type ReckonError =
  | { readonly code: 'divide-by-nothing' }
  /** These two kinds cannot be joined by this sign. */
  | { readonly code: 'kinds'; readonly op: Op; readonly a: Kind; readonly b: Kind }
  | { readonly code: 'unknown-line'; readonly id: string }
  /** The line is built on itself. */
  | { readonly code: 'ring'; readonly id: string }
  | { readonly code: 'bad-figure'; readonly text: string };

export type Lookup = (id: string) => Result<Quantity, ReckonError>;

export const noLines: Lookup = (id) => err({ code: 'unknown-line', id });

/**
 * Works a sum out, exactly. length ± length = length; length ×÷ number = length; length ÷ length = number;
 * length × length = area, which is not a mark.
 *
 * @param lookup what a line of the strip comes to
 * @example evaluate(expr, noLines)
 */
export function evaluate(expr: Expr, lookup: Lookup): Result<Quantity, ReckonError> {
  switch (expr.is) {
    case 'length':
      return lengthOf(expr.text);
    case 'count':
      return countOf(expr.text);
    case 'line':
      return lookup(expr.id);
    case 'minus': {
      const a = evaluate(expr.a, lookup);
      return a.ok ? ok({ ...a.value, value: a.value.value.neg() } as Quantity) : a;
    }
    case 'op': {
      const a = evaluate(expr.a, lookup);
      if (!a.ok) return a;
      const b = evaluate(expr.b, lookup);
      return b.ok ? join(expr.op, a.value, b.value) : b;
    }
  }
}

function lengthOf(text: string): Result<Quantity, ReckonError> {
  const read = readLength(text);
  return read.ok ? ok({ kind: 'length', value: read.value.value }) : err({ code: 'bad-figure', text });
}

function countOf(text: string): Result<Quantity, ReckonError> {
  const read = readLength(text);
  return read.ok
    ? ok({ kind: 'number', value: ratio(read.value.value.n, read.value.value.d) })
    : err({ code: 'bad-figure', text });
}

/** Kind of a product or quotient, by the kinds joined; what is not here is refused. */
const products: Partial<Record<`${Kind} ${'×' | '÷'} ${Kind}`, Kind>> = {
  'length × number': 'length',
  'number × length': 'length',
  'number × number': 'number',
  'length × length': 'area',
  'area × number': 'area',
  'number × area': 'area',
  'length ÷ number': 'length',
  'length ÷ length': 'number',
  'number ÷ number': 'number',
  'area ÷ number': 'area',
  'area ÷ length': 'length',
  'area ÷ area': 'number',
};

function join(op: Op, a: Quantity, b: Quantity): Result<Quantity, ReckonError> {
  const refuse = err({ code: 'kinds', op, a: a.kind, b: b.kind } as const);
  if (op === '+' || op === '−') {
    if (a.kind !== b.kind) return refuse;
    const value = op === '+' ? a.value.add(b.value) : a.value.sub(b.value);
    return ok({ kind: a.kind, value } as Quantity);
  }
  const kind = products[`${a.kind} ${op} ${b.kind}`];
  if (!kind) return refuse;
  if (op === '÷' && b.value.n === 0n) return err({ code: 'divide-by-nothing' });
  const value = op === '×' ? a.value.mul(b.value) : a.value.div(b.value);
  return ok({ kind, value } as Quantity);
}

type CountAndLeft = { readonly count: bigint; readonly left: Length };

/**
 * How many whole times b goes into a, and what is left over.
 *
 * @returns undefined when b is no length at all
 * @example countAndLeft(inches(48n), inches(71n, 4n)) // 2, 12 1/2 left: Example 10 of length
 */
export function countAndLeft(a: Length, b: Length): CountAndLeft | undefined {
  if (isZero(b)) return undefined;
  const count = wholePart(a.div(b) as Ratio);
  return { count, left: a.sub(b.mul(count)) as Length };
}
