import { add, isPositive, type Length, less, longest, shortest, subtract, zero } from '../../length/length';
import type { Inside } from '../carcass/case';
import type { Sizes } from '../carcass/sizes';
import type { StopWarning } from '../carcass/stop-problem';
import { stopBack, stopWide } from '../carcass/stops';
import { boxesIn, into, type Taken } from './boxes-standing';
import type { WorkedDrawers } from './drawers';

/** What else a stop strip keeps clear of in its bay: fixed shelves, and other strips. */
const besides = ({ case: c, thick }: Sizes, stop: Inside): readonly Taken[] =>
  c.inside
    .filter((i) => i.bay === stop.bay && i.id !== stop.id && (i.kind === 'fixed' || i.kind === 'stop'))
    .map((i) => {
      const low = i.at ?? zero;
      return { low, high: add(low, i.kind === 'fixed' ? thick('shelf') : stopWide(c, i)) };
    });

/** What is left free up a bay, from the bottom up. */
function freeIn(taken: readonly Taken[], top: Length): readonly Taken[] {
  const sorted = [...taken].sort((a, b) => a.low.compare(b.low));
  const free: Taken[] = [];
  let from = zero;
  for (const { low, high } of sorted) {
    if (less(from, low)) free.push({ low: from, high: low });
    from = longest(from, high);
  }
  return less(from, top) ? [...free, { low: from, high: top }] : free;
}

/** The lower edge nearest to where a strip stands at which it is clear; none where nothing free is as wide. */
function nearest(free: readonly Taken[], at: Length, wide: Length): Length | undefined {
  const places = free
    .filter(({ low, high }) => !less(subtract(high, low), wide))
    .map(({ low, high }) => shortest(longest(at, low), subtract(high, wide)));
  const [first, ...rest] = places;
  const far = (place: Length) => subtract(place, at).abs() as Length;
  return first && rest.reduce((a, b) => (less(far(b), far(a)) ? b : a), first);
}

/**
 * Stop strips that boxes of drawers run into: the worst of them, how far, and where the strip just clears all.
 * One farther back than the boxes reach is clear of them.
 *
 * @param sizes every stop strip at its place, inches
 * @example stopStrikes(sizes, drawers).map((x) => x.stop)
 */
export function stopStrikes(sizes: Sizes, worked: WorkedDrawers): readonly StopWarning[] {
  const { case: c, clearHeight, thick } = sizes;
  const frame = c.hasFrame ? thick('frame') : zero;
  return c.inside
    .filter(({ kind }) => kind === 'stop')
    .flatMap((stop): readonly StopWarning[] => {
      const wide = stopWide(c, stop);
      const own = { low: stop.at ?? zero, high: add(stop.at ?? zero, wide) };
      const before = add(stopBack(c, stop), frame);
      const boxes = boxesIn(worked, stop.bay).filter(({ drawer }) =>
        less(before, add(worked.slides.setBack, drawer.plan.depth)),
      );
      const [first, ...rest] = boxes.filter((box) => isPositive(into(own, box)));
      if (!first) return [];
      const worst = rest.reduce((a, b) => (less(into(own, a), into(own, b)) ? b : a), first);
      const free = freeIn([...boxes, ...besides(sizes, stop)], clearHeight.value);
      const rooms = free.map(({ low, high }) => subtract(high, low));
      return [
        {
          stop: stop.id,
          code: 'stop-strikes',
          drawer: worst.drawer.place,
          by: into(own, worst),
          at: nearest(free, own.low, wide),
          most: longest(zero, ...rooms),
        },
      ];
    });
}
