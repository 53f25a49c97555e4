import { add, compare, type Length, subtract, sum } from '../../length/length';

/** Where a front stands. Inches. */
export type FrontMark = {
  readonly no: number;
  readonly height: Length;
  /** Its edges from the top of the opening. */
  readonly top: Length;
  readonly bottom: Length;
  /** The same from the bottom of the opening. */
  readonly topUp: Length;
  readonly bottomUp: Length;
};

/**
 * Where the fronts of a column come: top edge of front k at r_t + Σ(h + r_m) from the top, exact.
 *
 * @param heights from the top; @param at.opening > 0; @param at.top reveal over the first, negative where it covers;
 *   @param at.between reveal between two; all inches
 * @returns inches, numbered from the top, 1 the first; `top + topUp` is the opening
 * @example frontMarksOf(heights, { opening, top: inches(5n, 64n), between: inches(5n, 64n) })[1].top // 4 17/32
 */
export function frontMarksOf(
  heights: readonly Length[],
  at: { readonly opening: Length; readonly top: Length; readonly between: Length },
): readonly FrontMark[] {
  return heights.map((height, k) => {
    const top = add(at.top, sum(heights.slice(0, k).map((h) => add(h, at.between))));
    const bottom = add(top, height);
    return {
      no: k + 1,
      height,
      top,
      bottom,
      topUp: subtract(at.opening, top),
      bottomUp: subtract(at.opening, bottom),
    };
  });
}

/** An edge on the story stick. */
type StickEdge = { readonly front: number; readonly edge: 'top' | 'bottom'; readonly at: Length };

/**
 * Every edge on one story stick in reading order from one end of the opening; where two meet, the nearer front's first.
 *
 * @param marks from the top, inches
 * @returns `at` from the end it is read from, inches; negative: it covers the end
 * @example storyStick(marks, 'bottom')[0] // the lowest front's bottom edge
 */
export function storyStick(marks: readonly FrontMark[], from: 'top' | 'bottom'): readonly StickEdge[] {
  const edges = marks.flatMap((m): readonly StickEdge[] => [
    { front: m.no, edge: 'top', at: from === 'top' ? m.top : m.topUp },
    { front: m.no, edge: 'bottom', at: from === 'top' ? m.bottom : m.bottomUp },
  ]);
  // The sort is stable: turned round first, edges that meet stay in the order they are read in.
  const read = from === 'top' ? edges : [...edges].reverse();
  return [...read].sort((a, b) => compare(a.at, b.at));
}
