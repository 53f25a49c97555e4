import {
  absolute,
  add,
  inches,
  isNegative,
  type Length,
  less,
  longest,
  negate,
  over,
  subtract,
  sum,
  times,
  zero,
} from '../../length/length';

/**
 * What is still to go at one side, the fitting going down from the top or up from the bottom: `reach` runs from the edge it
 * began at to the far edge of the last front fitted. Inches.
 */
export type Ahead = {
  readonly opening: Length;
  readonly reach: Length;
  /** In the order they will be fitted. */
  readonly heights: readonly Length[];
  /** The end reveal is held at this (negative where it covers); else all gaps are alike, the end one among them. */
  readonly hold?: Length;
};

/** What is left for the gaps: `each` may be negative, and binds. Inches. */
export type Gaps = { readonly space: Length; readonly gaps: number; readonly each: Length };

/**
 * C6.6: space = O - y; alike (space - Σh)/(remaining + 1), or with the end held (space - r_b - Σh)/remaining.
 *
 * @returns nothing when none is to go and the end is held: no gap is left to share
 * @example gapsAhead({ opening, reach: inches(249n, 16n), heights }).each // 1/12
 */
export function gapsAhead({ opening, reach, heights, hold }: Ahead): Gaps | undefined {
  const space = subtract(opening, reach);
  const gaps = hold === undefined ? heights.length + 1 : heights.length;
  if (gaps === 0) return undefined;
  const free = subtract(subtract(space, hold ?? zero), sum(heights));
  return { space, gaps, each: over(free, BigInt(gaps)) };
}

/** A gap under this is tight, over the other wide. Common practice, no source. Inches. */
export const tightGap = inches(1n, 16n);
export const wideGap = inches(5n, 32n);

export type GapWarning =
  | { readonly code: 'tight'; readonly each: Length; readonly least: Length }
  | { readonly code: 'wide'; readonly each: Length; readonly most: Length }
  | { readonly code: 'binds'; readonly by: Length };

/** What is to be said of a gap. @example gapWarning(inches(5n, 96n)).code // 'tight' */
export function gapWarning(each: Length): GapWarning | undefined {
  if (isNegative(each)) return { code: 'binds', by: negate(each) };
  if (less(each, tightGap)) return { code: 'tight', each, least: tightGap };
  return less(wideGap, each) ? { code: 'wide', each, most: wideGap } : undefined;
}

/**
 * What must come off in all so that every gap is as wanted: gaps × wanted - what is left; negative: the fronts may be so
 * much taller.
 *
 * @example trimTotal(gaps, inches(5n, 64n)) // -1/64
 */
export const trimTotal = ({ gaps, each }: Gaps, wanted: Length): Length =>
  times(subtract(wanted, each), BigInt(gaps));

/** `gaps`: all that are left share alike. `last`: each as wanted, what is left over in the last. */
export type Goes = 'gaps' | 'last';

/**
 * Where the fronts still to go come: near and far edge of each from where the fitting began.
 *
 * @param at.wanted gap, inches
 */
export function edgesAhead(
  ahead: Ahead,
  at: { readonly goes: Goes; readonly wanted: Length },
): readonly { readonly near: Length; readonly far: Length }[] {
  const gap = at.goes === 'gaps' ? (gapsAhead(ahead)?.each ?? at.wanted) : at.wanted;
  return ahead.heights.map((high, k) => {
    const before = sum(ahead.heights.slice(0, k).map((h) => add(h, gap)));
    const near = sum([ahead.reach, gap, before]);
    return { near, far: add(near, high) };
  });
}

export type BothAhead = {
  readonly left: Gaps | undefined;
  readonly right: Gaps | undefined;
  /** How much a gap differs from side to side. */
  readonly taper: Length;
  /** The larger of the two trims: what keeps the tighter side as wanted. */
  readonly trim: Length;
};

/** Left and right reckoned apart. Inches. @example bothAhead(left, right, wanted).taper */
export function bothAhead(left: Ahead, right: Ahead, wanted: Length): BothAhead {
  const [l, r] = [gapsAhead(left), gapsAhead(right)];
  const trims = [l, r].flatMap((g) => (g ? [trimTotal(g, wanted)] : []));
  const [first, ...rest] = trims;
  return {
    left: l,
    right: r,
    taper: l && r ? absolute(subtract(l.each, r.each)) : zero,
    trim: first ? longest(first, ...rest) : zero,
  };
}
