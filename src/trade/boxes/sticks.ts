import {
  compare,
  half,
  inches,
  isNegative,
  isPositive,
  type Length,
  less,
  negate,
  subtract,
  zero,
} from '../../length/length';
import { figureIn } from '../../length/metric-figures';
import { err, ok, type Result } from '../../length/result';
import type { Units } from '../../length/units';
import { minus, plus, type Sum, sumOf, type Term } from '../sums/sum';
import type { Hung } from './hung';

/** What the length of a stick is reckoned from. Inches. */
export type StickPlan = {
  /** Lower edges of the fronts from the bottom of the opening, drawer 1 (the top one) first. */
  readonly bottoms: readonly Length[];
  /** Lower edge of the opening over what the stick stands on. */
  readonly sill: Length;
  /** Lower edge of the box over that of its front. */
  readonly boxUp: Length;
  /** Middle of the slide up the box, and how high the slide is. */
  readonly centre: Length;
  readonly slide: Length;
  /** What boxes hang on where that is no slide: the stick goes to its lower edge. */
  readonly hung?: Hung;
};

/** A stick a slide rests on, or what is there in its place; under a kicker it goes to that. Inches. */
export type Stick = {
  readonly drawer: number;
  readonly length: Length;
  readonly sum: Sum;
  readonly as?: 'kicker';
};

/** The slide would sit on or below what the stick stands on; `by`: how much below, inches, >= 0. */
export type StickError = {
  readonly code: 'below-the-bottom';
  readonly drawer: number;
  readonly by: Length;
};

/**
 * Stick = sill + front bottom + box above it + slide centre - half the slide, longest first.
 *
 * @param plan inches; `bottoms` as cut or as measured, in any order, their drawers numbered as listed
 * @returns inches, each with its sum; or the first drawer from the top whose stick has no length
 * @example sticksOf(plan).value[0].length // Example 5 of boxes: 26 7/8
 */
export function sticksOf(plan: StickPlan): Result<readonly Stick[], StickError> {
  const sticks = plan.bottoms.map((bottom, k): Stick => {
    const made = sumOf(
      plus('sill', plan.sill),
      plus('front-lower-edge', bottom),
      plus('box-up', plan.boxUp),
      ...(plan.hung
        ? carried(plan.hung)
        : [plus('slide-centre', plan.centre), minus('half-slide', half(plan.slide))]),
    );
    return { drawer: k + 1, length: made.value, sum: made };
  });
  // a runner may stand on the very bottom
  const low = sticks.find((s) => (plan.hung ? isNegative(s.length) : !isPositive(s.length)));
  if (low) return err({ code: 'below-the-bottom', drawer: low.drawer, by: negate(low.length) });
  return ok(longestFirst(sticks));
}

const longestFirst = (sticks: readonly Stick[]): readonly Stick[] =>
  [...sticks].sort((a, b) => compare(b.length, a.length));

/** The same with sticks for kickers, by drawer: one stick serves all, cut down from the longest. */
export const withKickers = (
  sticks: Result<readonly Stick[], StickError>,
  kickers: ReadonlyMap<number, Sum>,
): typeof sticks =>
  sticks.ok && kickers.size > 0
    ? ok(
        longestFirst([
          ...sticks.value,
          ...[...kickers].map(([drawer, of]): Stick => ({ drawer, length: of.value, sum: of, as: 'kicker' })),
        ]),
      )
    : sticks;

/** A runner lies under the lower edge of its box, a strip at the upper wall of the groove in its side. */
const carried = ({ how, high, groove }: Hung): readonly Term[] =>
  groove && how === 'strips'
    ? [plus('strip-up', groove.up), plus('strip-play', subtract(groove.wide, high))]
    : [minus('run-high', high)];

/** Shorter is too short to hold at a saw. Common practice, no source. Inches. */
const leastStick = inches(3n);

type StickWarning = {
  readonly code: 'too-short';
  readonly drawer: number;
  readonly length: Length;
  readonly least: Length;
};

/**
 * Sticks to be cut from a long strip instead: too short to hold at a saw.
 *
 * @param sticks inches, > 0
 * @example stickWarnings(sticks).map((x) => x.drawer) // Example 5 of boxes: the fifth, 2 3/32
 */
export function stickWarnings(sticks: readonly Stick[], units?: Units): readonly StickWarning[] {
  const least = figureIn(units, leastStick);
  return sticks.flatMap(({ drawer, length }) =>
    less(length, least) ? [{ code: 'too-short', drawer, length, least } as const] : [],
  );
}

/**
 * What comes off a stick to make the next length, from what it measures now.
 *
 * @param measured, next, kerf inches, > 0
 * @returns `offcut` = measured - next - kerf, inches; not positive when less than a kerf is to go: a shaving, nothing
 *   falls. `short`: the stick is already too short for the next by so much, inches
 * @example nextCut(inches(215n, 8n), inches(1391n, 64n), inches(3n, 32n)).offcut // 5 3/64
 */
export function nextCut(
  measured: Length,
  next: Length,
  kerf: Length,
): { readonly offcut: Length; readonly short?: Length } {
  const off = subtract(measured, next);
  const offcut = subtract(off, kerf);
  return isNegative(off) ? { offcut, short: negate(off) } : { offcut };
}

/**
 * Slides of covering fronts stand flush with the front edge; of inset ones, back by the front's thickness.
 *
 * @param front how thick the front is, inches, > 0
 * @returns inches
 * @example setBack('inset', inches(23n, 32n)) // 23/32
 */
export const setBack = (fit: 'inset' | 'overlay', front: Length): Length => (fit === 'inset' ? front : zero);
