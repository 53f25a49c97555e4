import type { Ratio } from '../../length/length';
import { common, derivative, divided, type Polynomial, product, signAt } from './polynomial';

/** A stretch of the line, its ends not in it. */
type Stretch = { readonly from: Ratio; readonly to: Ratio };

/** The chain of Sturm: p, its derivative, and each time the remainder with its sign turned. */
function chainOf(p: Polynomial): readonly Polynomial[] {
  const chain = [p];
  for (let next = derivative(p); next.length > 0; ) {
    const before = chain[chain.length - 1] ?? p;
    chain.push(next);
    next = divided(before, next).rest.map((c) => -c);
  }
  return chain;
}

/** How often the sign changes along a chain at a place, noughts left out. */
function changesAt(chain: readonly Polynomial[], u: Ratio): number {
  const signs = chain.map((p) => signAt(p, u)).filter((sign) => sign !== 0);
  return signs.filter((sign, k) => k > 0 && sign !== signs[k - 1]).length;
}

/**
 * How many places within a stretch a polynomial is 0, however often at each: the changes of sign of its chain at the
 * one end less those at the other.
 * Source: the theorem of Sturm (1829).
 *
 * @param p with no root twice (see `oddRoots`), not 0
 * @example rootsWithin([-1n, 2n], { from: ratio(0n), to: ratio(1n) }) // 1, at a half
 */
export function rootsWithin(p: Polynomial, { from, to }: Stretch): number {
  const chain = chainOf(p);
  const atEnd = signAt(p, to) === 0 ? 1 : 0;
  return changesAt(chain, from) - changesAt(chain, to) - atEnd;
}

/**
 * The polynomial whose roots, each once, are those that p has an odd number of times: there and only there p changes
 * its sign.
 *
 * @param p not 0
 */
export function oddRoots(p: Polynomial): Polynomial {
  let many = common(p, derivative(p));
  let distinct = divided(p, many).quotient;
  let odd: Polynomial = [1n];
  for (let times = 1; distinct.length > 1; times++) {
    const more = common(distinct, many);
    if (times % 2 === 1) odd = product(odd, divided(distinct, more).quotient);
    distinct = more;
    many = divided(many, more).quotient;
  }
  return odd;
}

/**
 * Whether a polynomial is nowhere below 0 within a stretch, settled without a sample: it may touch 0, and must not
 * cross it, and must be above it at one place that is no root.
 *
 * @param stretch from < to
 * @example neverBelow([0n, 0n, 1n], stretch) // true: u²
 */
export function neverBelow(p: Polynomial, stretch: Stretch): boolean {
  if (p.length === 0) return true;
  if (rootsWithin(oddRoots(p), stretch) > 0) return false;
  // as many places as p may have roots, and one more
  const wide = stretch.to.sub(stretch.from) as Ratio;
  const places = p.map(
    (_, k) => stretch.from.add(wide.mul(BigInt(k + 1)).div(BigInt(p.length + 1))) as Ratio,
  );
  return places.every((u) => signAt(p, u) >= 0);
}
