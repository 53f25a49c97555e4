import { add, equals, type Length, shortest, subtract } from '../../length/length';
import type { Result } from '../../length/result';
import { type Pile, type PileError, pileFor, type Shim } from '../stacks/pile';
import { stackUp } from '../tolerance/stack-up';

/** The piles of shims of one gap, 1 the first; `right` only where the gap differs from the left. */
export type GapPiles = {
  readonly gap: number;
  readonly left: Result<Pile, PileError>;
  readonly right?: Result<Pile, PileError>;
};

/**
 * A pile for every gap, left and right apart, from the shims at hand: never over, within the tolerance where that can
 * be. Fronts are shimmed and screwed one after another, so each gap may draw on the whole drawer: the shims come
 * back.
 *
 * @param gaps inches, >= 0, the first first; @param at.shims all in the drawer
 * @param at.tol how much short is good enough, inches, >= 0
 * @returns lengths in inches; a gap that binds, or shims that cannot be reckoned with, is an error at its own side
 * @example shimSchedule([{ left: inches(19n, 64n), right: inches(19n, 64n) }], { shims, tol })[0].left // 1/4 + 1/32
 */
export function shimSchedule(
  gaps: readonly { readonly left: Length; readonly right: Length }[],
  at: { readonly shims: readonly Shim[]; readonly tol: Length },
): readonly GapPiles[] {
  // most gaps are alike, and the search for a pile is whole
  const known = new Map<string, Result<Pile, PileError>>();
  const pile = (gap: Length): Result<Pile, PileError> => {
    const key = gap.toFraction();
    const found = known.get(key) ?? pileFor(gap, at.shims, at.tol);
    known.set(key, found);
    return found;
  };
  return gaps.map(({ left, right }, k) => ({
    gap: k + 1,
    left: pile(left),
    ...(equals(left, right) ? {} : { right: pile(right) }),
  }));
}

/** What the last gap may come to. Inches. */
type RevealStackUp = {
  /** Every front and shim off the same way. */
  readonly worst: Length;
  /** Root of the sum of squares, to 1/10,000 and never over the worst: independent errors. */
  readonly likely: Length;
  /** The gap at its least (negative: it would bind) and at its most. */
  readonly least: Length;
  readonly most: Length;
};

/** Counts whole, >= 0; tolerances plus or minus, inches, >= 0. */
type StackUpAt = {
  readonly fronts: number;
  readonly frontTol: Length;
  /** Gaps set by shims before the last. */
  readonly gaps: number;
  readonly shimTol: Length;
  readonly wanted: Length;
};

/**
 * Every front and every shim off by its tolerance lands in the last gap: to be known before anything is cut.
 *
 * @param at.wanted gap, inches, >= 0
 * @returns inches
 * @example revealStackUp({ fronts: 5, frontTol: inches(1n, 64n), gaps: 5, shimTol: zero, wanted }).worst // 5/64
 */
export function revealStackUp({ fronts, frontTol, gaps, shimTol, wanted }: StackUpAt): RevealStackUp {
  const { worst, likely: root } = stackUp([
    ...Array.from({ length: fronts }, () => frontTol),
    ...Array.from({ length: gaps }, () => shimTol),
  ]);
  // one front off alone by 1/32 has a root that rounds to .0313, over the sum
  const likely = shortest(root, worst);
  return { worst, likely, least: subtract(wanted, worst), most: add(wanted, worst) };
}
