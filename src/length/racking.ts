import { rootTo, squareOf } from './diagonal';
import { inches, isPositive, type Length, less, type Ratio, subtract } from './length';
import { err, ok, type Result } from './result';

export type Racking = {
  /** How far the top slides along the width, squeezing the corners on the long diagonal; 0 when equal. Exact. */
  readonly push: Length;
  /** What each diagonal reads when square, to the tape. */
  readonly until: Length;
  readonly long: 'A' | 'B' | 'neither';
  /** The two sides and two diagonals can all be right: mean error of a diagonal within the tolerance. */
  readonly agree: boolean;
};

export type RackingError =
  | { readonly code: 'not-positive' }
  | { readonly code: 'cannot-be'; readonly which: 'A' | 'B'; readonly least: Length; readonly most: Length };

/** Mean error of a diagonal the four figures may show and still be believed. Common practice, no source. */
const believable = inches(1n, 32n);

/**
 * A four-sided frame with equal opposite sides, out of square: on coordinates A² - B² = 4 W s, so the top slides
 * s = (A² - B²)/(4W), and both diagonals then read T with T² = (A² + B²)/2.
 *
 * @param frame width and height, and both diagonals as read, inches, > 0
 * @param grain the tape's, inches
 * @example squareUp({ w, h, a, b }, inches(1n, 32n)) // push 2395/9824, until 74 27/32: Example 7 of length
 */
export function squareUp(
  frame: { readonly w: Length; readonly h: Length; readonly a: Length; readonly b: Length },
  grain: Length,
): Result<Racking, RackingError> {
  const { w, h, a, b } = frame;
  if (![w, h, a, b].every(isPositive)) return err({ code: 'not-positive' });
  const least = (less(w, h) ? subtract(h, w) : subtract(w, h)) as Length;
  const most = w.add(h) as Length;
  for (const [which, x] of [
    ['A', a],
    ['B', b],
  ] as const) {
    if (!less(least, x) || !less(x, most)) return err({ code: 'cannot-be', which, least, most });
  }
  const difference = a.mul(a).sub(b.mul(b)) as Ratio;
  const target = squareOf(a, b).div(2n) as Ratio;
  return ok({
    push: difference.abs().div(w.mul(4n)) as Length,
    until: rootTo(target, grain),
    long: difference.n === 0n ? 'neither' : difference.s > 0n ? 'A' : 'B',
    agree: agreeing(squareOf(a, b).sub(squareOf(w, h).mul(2n)) as Ratio, target),
  });
}

/** Mean error = residue/(4T), compared by squares so that no root is taken: residue² <= tol² 16 T². */
function agreeing(residue: Ratio, target: Ratio): boolean {
  return residue.mul(residue).lte(believable.mul(believable).mul(16n).mul(target));
}
