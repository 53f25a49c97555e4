import { add, isPositive, type Length, type Ratio, times, zero } from '../../length/length';
import { err, ok, type Result } from '../../length/result';
import { faultOf, isBeyond, type SeasonError } from './season';

/** A size that may change with the moisture of the wood. Inches, percent. */
type Size = {
  readonly size: Length;
  /** `sheet`: of plywood or the like, in its length or width. */
  readonly way: 'across' | 'along' | 'sheet';
  readonly coefficient: Ratio;
  readonly from: Ratio;
  readonly to: Ratio;
};

type Change = {
  /** More than nothing: it grows. An estimate, shown at 1/64. */
  readonly change: Length;
  readonly size: Length;
  /** A moisture lies outside 6 to 14 %, which the table is for. */
  readonly beyond: boolean;
  /** Along the grain, and in a sheet, next to nothing: reckoned as nothing, and said. */
  readonly still: boolean;
};

type ChangeError = SeasonError | { readonly code: 'not-positive'; readonly what: 'size' };

/**
 * How a size changes from one moisture to another: D·C·(to - from). In width it is probably over-told, in thickness
 * under-told. Along the grain, and in a sheet's length and width, nothing is reckoned (common practice: hardly moves).
 *
 * Source: Wood Handbook, FPL-GTR-190, 2010, equation 13-2, p. 13-15, and p. 13-17.
 *
 * @param at inches, > 0; moistures percent, >= 0; coefficient over 0, under .01
 * @returns inches, exact
 * @example changeOf(at) // .06725: Example 1 of movement
 */
export function changeOf(at: Size): Result<Change, ChangeError> {
  const { size, way, coefficient, from, to } = at;
  if (!isPositive(size)) return err({ code: 'not-positive', what: 'size' });
  const [low, high] = from.lt(to) ? [from, to] : [to, from];
  const fault = faultOf({ low, now: from, high }, coefficient);
  if (fault) return err(fault);
  const still = way !== 'across';
  const change = still ? zero : times(times(size, coefficient), to.sub(from) as Ratio);
  return ok({ change, size: add(size, change), beyond: !still && isBeyond(from, to), still });
}
