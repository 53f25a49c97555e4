import {
  absolute,
  inches,
  isNegative,
  type Length,
  less,
  over,
  subtract,
  sum,
  times,
  zero,
} from '../../length/length';

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
 * The last front planed to follow the opening, so that its end gap comes as wanted (or as held) where there is too
 * little room. It is never made taller: at a side with room to spare nothing comes off, and the gap there is what is
 * left.
 *
 * @param skew inches; @param wanted gap, inches, >= 0
 * @returns inches: height of the last front at either side, not positive where it would be planed away, and the most
 * that is planed off, >= 0
 * @example planedLast(skew, inches(5n, 64n)) // Example 5 of fronts: 7 5/32 left, 7 1/16 right, 3/32 planed
 */
export function planedLast(
  skew: Skew,
  wanted: Length,
): { readonly left: Length; readonly right: Length; readonly plane: Length } {
  const last = skew.heights[skew.heights.length - 1] ?? zero;
  const end = skew.ends?.bottom ?? wanted;
  const gap = dumpedAtEnd(skew, wanted);
  const off = (has: Length): Length => {
    const lacking = subtract(end, has);
    return isNegative(lacking) ? zero : lacking;
  };
  const [l, r] = [off(gap.left), off(gap.right)];
  return { left: subtract(last, l), right: subtract(last, r), plane: less(l, r) ? r : l };
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
export function skewWarnings({ gapLeft, gapRight, taper }: Skewed): readonly SkewWarning[] {
  const seen: readonly SkewWarning[] = less(seenTaper, taper)
    ? [{ code: 'taper-seen', taper, most: seenTaper }]
    : [];
  const sides = [
    ['left', gapLeft],
    ['right', gapRight],
  ] as const;
  const closes = sides.flatMap(([side, gap]): readonly SkewWarning[] =>
    less(gap, leastGap) ? [{ code: 'gap-closes', side, gap, least: leastGap }] : [],
  );
  return [...seen, ...closes];
}
