import {
  absolute,
  inches,
  type Length,
  less,
  longest,
  negate,
  over,
  shortest,
  subtract,
  sum,
  times,
  zero,
} from '../../length/length';
import { figureIn } from '../../length/metric-figures';
import type { Units } from '../../length/units';

/**
 * A column in an opening that is higher at one side; fronts stay square. Inches. The last front is the last fitted,
 * its end gap the bottom one: for a column fitted from the bottom up, turn `heights` and `ends` round.
 */
export type Skew = {
  /** Height of the opening at either side, > 0. */
  readonly left: Length;
  readonly right: Length;
  /** From the top, each > 0, at least one. */
  readonly heights: readonly Length[];
  /** End reveals held (negative where a front covers): then only the gaps between share. */
  readonly ends?: { readonly top: Length; readonly bottom: Length };
};

type Skewed = {
  readonly gapLeft: Length;
  readonly gapRight: Length;
  /** How much wider a gap is at one side than at the other. */
  readonly taper: Length;
  readonly gaps: number;
};

const free = ({ heights, ends }: Skew, opening: Length): Length =>
  subtract(opening, sum([...heights, ends?.top ?? zero, ends?.bottom ?? zero]));

/**
 * What each gap is at either side, and the taper of each: (O - Σh)/(n + 1), or with the ends held
 * (O - r_t - r_b - Σh)/(n - 1).
 *
 * @param skew inches
 * @returns inches, a gap negative where the fronts bind; nothing when there is no gap to share it: one front with
 * both ends held
 * @example skewOf({ left, right, heights }).taper // Example 5 of fronts: 1/48
 */
export function skewOf(skew: Skew): Skewed | undefined {
  const gaps = skew.ends ? skew.heights.length - 1 : skew.heights.length + 1;
  if (gaps < 1) return undefined;
  const at = (opening: Length) => over(free(skew, opening), BigInt(gaps));
  const [gapLeft, gapRight] = [at(skew.left), at(skew.right)];
  return { gapLeft, gapRight, taper: absolute(subtract(gapLeft, gapRight)), gaps };
}

/**
 * All of it in the last gap, every other as wanted: what is left there at either side, negative where it binds.
 *
 * @param skew inches; @param wanted gap, inches, >= 0
 * @returns inches; of held ends the first stands and the last is what is told here
 * @example dumpedAtEnd(skew, inches(5n, 64n)) // Example 5 of fronts: 7/64 and -1/64
 */
export function dumpedAtEnd(skew: Skew, wanted: Length): { readonly left: Length; readonly right: Length } {
  const { heights, ends } = skew;
  const between = times(wanted, BigInt(Math.max(0, heights.length - 1)));
  const taken = sum([...heights, between, ends?.top ?? wanted]);
  return { left: subtract(skew.left, taken), right: subtract(skew.right, taken) };
}

/**
 * The last front follows the opening: as high at either side as leaves its end gap as wanted (or as held) there. Not
 * cut yet, it is ripped to its higher side and planed down to the other. Cut already it is never made taller: at a side
 * with room to spare nothing comes off, and the gap there is what is left.
 *
 * @param skew inches; @param at.wanted gap, inches, >= 0; @param at.cut whether the last front has its height already
 * @returns inches: height of the last front at either side, not positive where it would be planed away, and the most
 * that is planed off, >= 0
 * @example planedLast(skew, { wanted, cut: false }) // Example 5 of fronts: 7 3/16 left, 7 1/16 right, 1/8 planed
 */
export function planedLast(
  skew: Skew,
  at: { readonly wanted: Length; readonly cut: boolean },
): { readonly left: Length; readonly right: Length; readonly plane: Length } {
  const last = skew.heights[skew.heights.length - 1] ?? zero;
  const end = skew.ends?.bottom ?? at.wanted;
  const gap = dumpedAtEnd(skew, at.wanted);
  const fits = (has: Length): Length => sum([last, has, negate(end)]);
  const kept = (high: Length): Length => (at.cut ? shortest(high, last) : high);
  const [left, right] = [kept(fits(gap.left)), kept(fits(gap.right))];
  const from = at.cut ? last : longest(left, right);
  return { left, right, plane: subtract(from, shortest(left, right)) };
}

/** A taper over this shows; a gap under the other closes. Common practice, no source. Inches. */
const seenTaper = inches(1n, 32n);
const leastGap = inches(1n, 32n);

type SkewWarning =
  | { readonly code: 'taper-seen'; readonly taper: Length; readonly most: Length }
  | {
      readonly code: 'gap-closes';
      readonly side: 'left' | 'right';
      readonly gap: Length;
      readonly least: Length;
    };

/**
 * What is to be said of a column out of square; a taper or a gap of just 1/32 is well.
 *
 * @param skewed inches, as `skewOf` found it
 * @returns the taper first, then each side whose gaps close, lengths in inches; none when all is well
 * @example skewWarnings(skewOf({ left, right, heights })) // Example 5 of fronts: none, 1/48 a gap is not seen
 */
export function skewWarnings({ gapLeft, gapRight, taper }: Skewed, units?: Units): readonly SkewWarning[] {
  const most = figureIn(units, seenTaper);
  const least = figureIn(units, leastGap);
  const seen: readonly SkewWarning[] = less(most, taper) ? [{ code: 'taper-seen', taper, most }] : [];
  const sides = [
    ['left', gapLeft],
    ['right', gapRight],
  ] as const;
  const closes = sides.flatMap(([side, gap]): readonly SkewWarning[] =>
    less(gap, least) ? [{ code: 'gap-closes', side, gap, least }] : [],
  );
  return [...seen, ...closes];
}
