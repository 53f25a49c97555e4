import { numerator, type Ratio } from '../../length/length';

/**
 * Whole coefficients of 1, u, u² …, the last not 0; none at all is 0. Only signs and roots are asked of one, so any may
 * be taken times a whole number above 0.
 */
export type Polynomial = readonly bigint[];

const abs = (n: bigint): bigint => (n < 0n ? -n : n);
const divisor = (a: bigint, b: bigint): bigint => (b === 0n ? abs(a) : divisor(b, a % b));

/** Without the noughts at the top, and without what all coefficients have in common. */
function simplest(coefficients: Polynomial): Polynomial {
  let end = coefficients.length;
  while (end > 0 && coefficients[end - 1] === 0n) end--;
  const shared = coefficients.reduce(divisor, 0n);
  return coefficients.slice(0, end).map((c) => c / shared);
}

/** Of exact coefficients, taken times what makes them whole. @example polynomial([ratio(1n, 2n), ratio(1n)]) // 1 + 2u */
export function polynomial(coefficients: readonly Ratio[]): Polynomial {
  const all = coefficients.reduce((d, c) => d * c.d, 1n);
  return simplest(coefficients.map((c) => (numerator(c) * all) / c.d));
}

/** Below 0, 0 or above 0 at a place. @example signAt([-1n, 2n], ratio(1n, 2n)) // 0 */
export function signAt(p: Polynomial, u: Ratio): number {
  const n = numerator(u);
  const total = p.reduceRight((sum, c, k) => sum * n + c * u.d ** BigInt(p.length - 1 - k), 0n);
  return total === 0n ? 0 : total < 0n ? -1 : 1;
}

export const derivative = (p: Polynomial): Polynomial => simplest(p.map((c, k) => c * BigInt(k)).slice(1));

export function product(p: Polynomial, q: Polynomial): Polynomial {
  const terms = Array.from({ length: p.length + q.length }, () => 0n);
  for (const [i, a] of p.entries())
    for (const [k, b] of q.entries()) terms[i + k] = (terms[i + k] ?? 0n) + a * b;
  return simplest(terms);
}

/**
 * Division with a remainder of lower degree; both come out times something above 0, each its own.
 *
 * @throws RangeError where the divisor is 0: a mistake in the program
 */
export function divided(
  p: Polynomial,
  by: Polynomial,
): { readonly quotient: Polynomial; readonly rest: Polynomial } {
  const top = by[by.length - 1];
  if (top === undefined) throw new RangeError('divided: by 0');
  let quotient = Array.from({ length: Math.max(0, p.length - by.length + 1) }, () => 0n);
  let rest: bigint[] = [...p];
  for (let shift = p.length - by.length; shift >= 0; shift--) {
    // times |top|, so that the step stays whole and no sign turns
    const factor = (top < 0n ? -1n : 1n) * (rest[shift + by.length - 1] ?? 0n);
    rest = rest.map((c, k) => c * abs(top) - factor * (by[k - shift] ?? 0n));
    quotient = quotient.map((c, k) => (k === shift ? factor : c * abs(top)));
  }
  return { quotient: simplest(quotient), rest: simplest(rest) };
}

/** The greatest common divisor, its top coefficient above 0; of 0 and 0 it is 0. */
export function common(p: Polynomial, q: Polynomial): Polynomial {
  let [a, b] = [p, q];
  while (b.length > 0) [a, b] = [b, divided(a, b).rest];
  return (a[a.length - 1] ?? 1n) < 0n ? a.map((c) => -c) : a;
}
