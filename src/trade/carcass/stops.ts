import {
  add,
  isNegative,
  isPositive,
  type Length,
  less,
  negate,
  subtract,
  sum,
  times,
  zero,
} from '../../length/length';
import { minus, plus, type Sum, type Term } from '../sums/sum';
import type { Case, Inside } from './case';
import type { Sizes } from './sizes';
import type { StopProblem, StopWarning } from './stop-problem';
import { usualOf } from './usual';

/** How wide a strip is from its lower to its upper edge. Inches. */
export const stopWide = (c: Case, { wide }: Inside): Length => wide ?? usualOf(c).stopWide;

/** How far its face stands behind the front edges: as what closes on it is thick. Inches. */
export const stopBack = (c: Case, { front }: Inside): Length => front ?? usualOf(c).stopBack;

/** Clear at each end. Inches. */
const stopPlay = (c: Case, { play }: Inside): Length => play ?? usualOf(c).stopPlay;

/** What comes off the bay for its length. */
export const stopLong = (c: Case, i: Inside): readonly Term[] => [
  minus('two-end-clearances', times(stopPlay(c, i), 2n)),
];

/** The sum its width has. */
export const stopHigh = (c: Case, i: Inside): Sum => {
  const wide = stopWide(c, i);
  return { value: wide, terms: [plus('width-said', wide)] };
};

/** The sizes with a place for every stop strip: one with none said stands right under the top. */
export function withStopPlaces(sizes: Sizes): Sizes {
  const { case: c, clearHeight } = sizes;
  if (!c.inside.some((i) => i.kind === 'stop' && !i.at)) return sizes;
  const inside = c.inside.map((i) =>
    i.kind === 'stop' && !i.at ? { ...i, at: subtract(clearHeight.value, stopWide(c, i)) } : i,
  );
  return { ...sizes, case: { ...c, inside } };
}

const stopsIn = ({ case: c }: Sizes): readonly Inside[] => c.inside.filter((i) => i.kind === 'stop');

/** Stop strips that have no length or width, or no place from front to back. */
export function stopProblems(sizes: Sizes): readonly StopProblem[] {
  const { case: c, inner, thick } = sizes;
  const most = subtract(inner.value, thick('stop'));
  return stopsIn(sizes).flatMap((i): readonly StopProblem[] => {
    const bay = sizes.real(i.bay).value;
    const long = sum([bay, ...stopLong(c, i).map((term) => term.value)]);
    const back = stopBack(c, i);
    const own = { stop: i.id } as const;
    return [
      ...(isPositive(bay) && !isPositive(long)
        ? [{ ...own, code: 'stop-short', by: negate(long) } as const]
        : []),
      ...(less(most, back) ? [{ ...own, code: 'stop-behind', by: subtract(back, most), most } as const] : []),
      ...(isNegative(back) ? [{ ...own, code: 'stop-before', by: negate(back) } as const] : []),
      ...(isPositive(stopWide(c, i)) ? [] : [{ ...own, code: 'stop-narrow' } as const]),
    ];
  });
}

/** Stop strips that stand before the grooves of trays, and in bays of drawers. */
export function stopWarnings(sizes: Sizes, drawers: ReadonlySet<number>): readonly StopWarning[] {
  const { case: c, clearHeight } = sizes;
  return stopsIn(sizes).flatMap((i): readonly StopWarning[] => {
    const low = i.at ?? zero;
    const trays = c.inside.filter((x) => x.kind === 'trays' && x.bay === i.bay);
    const locked = trays.some(
      ({ first, endRoom }) =>
        less(first ?? zero, add(low, stopWide(c, i))) &&
        less(low, subtract(clearHeight.value, endRoom ?? zero)),
    );
    return [
      ...(locked ? [{ stop: i.id, code: 'stop-on-trays' } as const] : []),
      ...(drawers.has(i.bay) ? [{ stop: i.id, code: 'stop-on-drawers' } as const] : []),
    ];
  });
}
