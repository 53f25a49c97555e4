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
import { figureIn } from '../../length/metric-figures';
import type { Units } from '../../length/units';

/**
 * What is still to go at one side, the fitting going down from the top or up from the bottom: `reach` runs from the
 * edge it began at to the far edge of the last front fitted. Inches.
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
 * What is left for the gaps: space = O - y; alike (space - Σh)/(remaining + 1), or with the end held (space - r_b -
 * Σh)/remaining.
 *
 * @param ahead lengths in inches, opening and heights > 0; a reach beyond the opening binds and is not refused
 * @returns inches; none to go and the end not held: one gap, all the space; none to go and the end held: nothing, for
 * no gap is left to share
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
const tightGap = inches(1n, 16n);
const wideGap = inches(5n, 32n);

type GapWarning =
  | { readonly code: 'tight'; readonly each: Length; readonly least: Length }
  | { readonly code: 'wide'; readonly each: Length; readonly most: Length }
  | { readonly code: 'binds'; readonly by: Length };

/**
 * What is to be said of a gap; one of just 1/16 or 5/32 is well.
 *
 * @param each inches, any sign
 * @returns lengths in inches, `by` > 0; nothing when the gap is well
 * @example gapWarning(inches(5n, 96n)).code // 'tight'
 */
export function gapWarning(each: Length, units?: Units): GapWarning | undefined {
  const least = figureIn(units, tightGap);
  const most = figureIn(units, wideGap);
  if (isNegative(each)) return { code: 'binds', by: negate(each) };
  if (less(each, least)) return { code: 'tight', each, least };
  return less(most, each) ? { code: 'wide', each, most } : undefined;
}

/**
 * What must come off in all so that every gap is as wanted: gaps × wanted - what is left; negative: the fronts may be
 * so much taller.
 *
 * @param gaps as `gapsAhead` found them; @param wanted gap, inches, >= 0
 * @returns inches, all the fronts still to go together
 * @example trimTotal(gaps, inches(5n, 64n)) // -1/64
 */
export const trimTotal = ({ gaps, each }: Gaps, wanted: Length): Length =>
  times(subtract(wanted, each), BigInt(gaps));

/** `gaps`: all that are left share alike. `last`: each as wanted, what is left over in the last. */
type Goes = 'gaps' | 'last';

/**
 * Where the fronts still to go come. The end gap is not listed: it is what the last far edge leaves of the opening.
 *
 * @param ahead inches; what is fitted stays where it was measured
 * @param at.wanted gap, inches, >= 0; used where the difference goes into the last gap
 * @returns near and far edge of each, inches from where the fitting began, in the order fitted
 * @example edgesAhead({ opening, reach, heights }, { goes: 'last', wanted })[0].near // reach + wanted
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

type BothAhead = {
  readonly left: Gaps | undefined;
  readonly right: Gaps | undefined;
  /** How much a gap differs from side to side, >= 0; 0 where a side has no gap to share. */
  readonly taper: Length;
  /** The larger of the two trims: what keeps the tighter side as wanted; 0 where neither has a gap to share. */
  readonly trim: Length;
};

/**
 * Left and right reckoned apart, since a front stays square in an opening that is not.
 *
 * @param left, right the same fronts, each with what was measured at its side, inches
 * @param wanted gap, inches, >= 0
 * @returns inches
 * @example bothAhead(left, right, inches(5n, 64n)).taper // 1/96 where the reach differs by 1/32 over three gaps
 */
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
