import { add, type Length, shortest, subtract } from '../../length/length';
import type { Drawer, WorkedDrawers } from './drawers';

/** What takes room up a bay, over the upper face of the bottom. Inches. */
export type Taken = { readonly low: Length; readonly high: Length };
export type Standing = Taken & { readonly drawer: Drawer };

/**
 * The boxes of a bank in one bay, with what carries them and what lies over them, as their slides carry them: fronts
 * line up from the top in all columns.
 */
export function boxesIn({ fronts, drawers, slides }: WorkedDrawers, bay: number): readonly Standing[] {
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
export const into = (a: Taken, b: Taken): Length =>
  shortest(subtract(a.high, b.low), subtract(b.high, a.low));
