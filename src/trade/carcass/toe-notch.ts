import {
  inches,
  isPositive,
  type Length,
  less,
  longest,
  negate,
  over,
  subtract,
  zero,
} from '../../length/length';
import { figureIn } from '../../length/metric-figures';
import { minus, plus, type Sum, sumOf } from '../sums/sum';
import type { Case } from './case';
import type { Corner } from './part';
import type { CaseProblem } from './problems';
import type { RoundWarning } from './round-problems';
import type { Sizes } from './sizes';
import { onStiles, stilesDown, toeOpening } from './stiles-down';
import { usualOf } from './usual';

/** Whether the toe board lies in notches of the sides, flush with their outer faces. */
export const isNotched = (c: Case): boolean =>
  c.hasToe && c.toeHow === 'notch' && c.feet !== undefined && isPositive(c.feet);

/** What stands before the front edges of the sides: as said, else a face frame. Inches. */
export const beforeSides = ({ case: c, thick }: Pick<Sizes, 'case' | 'thick'>): Length =>
  c.frontOver ?? (c.hasFrame ? thick('frame') : zero);

/**
 * How deep the sides are notched: the recess counts from the foremost face, and the board lies in the notch.
 *
 * @example notchDeep(sizes).value // 2 3/4: Example 18 of carcass
 */
export function notchDeep(sizes: Sizes): Sum {
  const { case: c, thick } = sizes;
  return sumOf(
    plus('recess', c.toeBack ?? usualOf(c).toeBack),
    minus('before-the-sides', beforeSides(sizes)),
    plus('toe-board', thick('toe')),
  );
}

/** The notch of a side, at the lower end of its front edge. */
export const toeNotch = (sizes: Sizes): Corner | undefined =>
  isNotched(sizes.case)
    ? { id: 'toe', deep: notchDeep(sizes).value, high: sizes.case.feet ?? zero }
    : undefined;

/** A notch that cannot be: none at all, through the whole side, or a board that has no height left. */
export function toeProblems(sizes: Sizes): readonly CaseProblem[] {
  const { case: c, depth, thick } = sizes;
  if (!isNotched(c)) return [];
  const deep = notchDeep(sizes).value;
  const clear = c.toeClear ?? usualOf(c).toeClear;
  const most = c.feet ?? zero;
  const before = subtract(beforeSides(sizes), thick('toe'));
  return [
    ...(isPositive(deep)
      ? []
      : [{ round: 'base', code: 'board-proud', by: negate(deep), least: before } as const]),
    ...(less(deep, depth.value)
      ? []
      : [{ round: 'base', code: 'no-foot', by: subtract(deep, depth.value) } as const]),
    ...(less(most, clear)
      ? [{ code: 'too-much', field: 'toeClear', by: subtract(clear, most), most } as const]
      : []),
  ];
}

/** A toe space a foot finds no room in. Common practice, no source. */
const leastHigh = inches(3n);
const leastRecess = inches(5n, 2n);

/** A notch that leaves the sides little to stand on, or toes little room. */
export const toeWarnings = (sizes: Sizes): readonly RoundWarning[] => [
  ...notchWarnings(sizes),
  ...openingWarnings(sizes),
];

/** The bottom rail before a toe board hangs where toes go. */
function openingWarnings({ case: c }: Sizes): readonly RoundWarning[] {
  const [is, least] = [toeOpening(c), figureIn(c.units, leastHigh)];
  const low = c.hasToe && stilesDown(c) && less(is, least) && less(is, c.feet ?? zero);
  return low ? [{ round: 'base', code: 'low-toe-opening', is, least }] : [];
}

function notchWarnings(sizes: Sizes): readonly RoundWarning[] {
  const { case: c, depth } = sizes;
  if (!isNotched(c)) return [];
  const deep = notchDeep(sizes).value;
  const third = over(depth.value, 3n);
  const [high, recess] = [c.feet ?? zero, c.toeBack ?? usualOf(c).toeBack];
  const [low, near] = [figureIn(c.units, leastHigh), figureIn(c.units, leastRecess)];
  return [
    ...(less(third, deep)
      ? [{ round: 'base', code: 'small-foot', foot: subtract(depth.value, deep), deep } as const]
      : []),
    ...(less(high, low) ? [{ round: 'base', code: 'low-toe', is: high, least: low } as const] : []),
    ...(less(recess, near) ? [{ round: 'base', code: 'shallow-toe', is: recess, least: near } as const] : []),
  ];
}

/** How far behind the foremost face of a case its foremost point on the floor stands. Inches. */
export function setBackOf(sizes: Pick<Sizes, 'case' | 'thick' | 'plinth'>): Length {
  const { case: c, thick, plinth } = sizes;
  if (isPositive(plinth)) return c.plinthFront ?? usualOf(c).toeBack;
  if (!c.hasToe || onStiles(c)) return zero;
  const recess = c.toeBack ?? usualOf(c).toeBack;
  // a board in notches hangs clear of the floor: the sides stand behind it
  return isNotched(c) ? longest(zero, subtract(recess, negate(thick('toe')))) : recess;
}
