import { add, isPositive, type Length, less, longest, shortest, subtract, zero } from '../../length/length';
import type { Inside } from '../carcass/case';
import type { Sizes } from '../carcass/sizes';
import type { StopWarning } from '../carcass/stop-problem';
import { stopBack, stopWide } from '../carcass/stops';
import type { Drawer, WorkedDrawers } from './drawers';

/** What takes room up a bay, over the upper face of the bottom. Inches. */
type Taken = { readonly low: Length; readonly high: Length };
type Standing = Taken & { readonly drawer: Drawer };

/** The boxes of one bay, as their slides carry them: fronts line up from the top in all columns. */
function boxesIn({ fronts, drawers, slides }: WorkedDrawers, bay: number): readonly Standing[] {
  const { bank, columns, marks } = fronts;
  const column = columns.find(({ no }) => bank.bay + no - 1 === bay);
  if (!column) return [];
  const { high, standUp, sill } = column.opening;
  const foot = add(standUp, sill.value);
  return drawers
    .filter((drawer) => drawer.column === column.no)
    .flatMap((drawer) => {
      const mark = marks.find(({ no }) => no === drawer.no);
      if (!mark) return [];
      const low = add(add(foot, subtract(high.value, mark.bottom)), slides.boxUp);
      return [{ drawer, ...withHung(slides, drawer, { low, high: add(low, drawer.high) }) }];
    });
}

/** A box with the runner under it, and with the kicker or the blocks over it. */
function withHung({ hung }: WorkedDrawers['slides'], drawer: Drawer, { low, high }: Taken): Taken {
  if (!hung || !drawer.hung) return { low, high };
  const { kicker, stop } = drawer.hung;
  const over = kicker ? hung.high : stop.on === 'wall' ? hung.thick : undefined;
  return {
    low: hung.how === 'runners' ? subtract(low, hung.high) : low,
    high: over ? add(high, add(hung.room, over)) : high,
  };
}

/** How far two stand in each other; nothing or less where they are clear. Inches. */
const into = (a: Taken, b: Taken): Length => shortest(subtract(a.high, b.low), subtract(b.high, a.low));

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
