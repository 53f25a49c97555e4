import { add, isNegative, isPositive, type Length, negate, subtract, sum, times } from '../../length/length';
import { err, ok, type Result } from '../../length/result';

/** One blank for the fronts of a column, grain running through. Inches. */
export type Blank = {
  readonly length: Length;
  /** From the top: near edge of each core in the blank, and how high it is cut. */
  readonly cores: readonly { readonly no: number; readonly near: Length; readonly high: Length }[];
  /** How far the figure slips at each joint: 0 when the kerf is the gap and there is no band. */
  readonly slip: Length;
};

export type BlankError =
  /** No kerf, or none said: ask. */
  | { readonly code: 'kerf-missing' }
  | { readonly code: 'negative'; readonly what: 'trim' | 'band' | 'between'; readonly by: Length }
  | { readonly code: 'core-gone'; readonly front: number; readonly by: Length };

type BlankAt = {
  readonly trim: Length;
  readonly kerf: Length | undefined;
  /** Added to each edge later. */
  readonly band: Length;
  readonly between: Length;
};

/**
 * The blank: 2 trims, every front less its two bands, and a kerf between; marked before the first cut.
 *
 * @param heights of the fronts from the top, inches, > 0
 * @param at.trim off each end, >= 0; @param at.kerf > 0; @param at.band, at.between >= 0; all inches
 * @returns inches; or that the kerf is missing, or the first front whose bands leave no core, `by` how much, inches
 * @example blankFor([inches(9n, 2n), inches(83n, 16n), inches(47n, 8n)], at).value.length // 16 3/8
 */
export function blankFor(heights: readonly Length[], at: BlankAt): Result<Blank, BlankError> {
  const { kerf } = at;
  if (!kerf || !isPositive(kerf)) return err({ code: 'kerf-missing' });
  const below = (['trim', 'band', 'between'] as const).find((what) => isNegative(at[what]));
  if (below) return err({ code: 'negative', what: below, by: negate(at[below]) });
  const highs = heights.map((h) => subtract(h, times(at.band, 2n)));
  const gone = highs.findIndex((h) => !isPositive(h));
  const none = highs[gone];
  if (none) return err({ code: 'core-gone', front: gone + 1, by: negate(none) });
  const cores = highs.map((high, k) => ({
    no: k + 1,
    near: add(at.trim, sum(highs.slice(0, k).map((h) => add(h, kerf)))),
    high,
  }));
  const length = sum([times(at.trim, 2n), ...highs, times(kerf, BigInt(Math.max(0, highs.length - 1)))]);
  return ok({ length, cores, slip: subtract(add(at.between, times(at.band, 2n)), kerf) });
}

/**
 * A spoiled front of a blank: the lowest is cut anew from the offcut and the run holds; a higher one breaks it,
 * unless all below it are cut again too.
 *
 * @param no from the top, 1 to `count`; @param count of the column, >= 1
 * @returns whether the run breaks, and the numbers to cut again to keep it
 * @example spoiledFront(2, 4) // breaksRun, recut 2, 3, 4
 */
export function spoiledFront(
  no: number,
  count: number,
): { readonly breaksRun: boolean; readonly recut: readonly number[] } {
  return {
    breaksRun: no < count,
    recut: Array.from({ length: Math.max(0, count - no + 1) }, (_, k) => no + k),
  };
}
