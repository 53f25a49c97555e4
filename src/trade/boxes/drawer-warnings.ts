import {
  absolute,
  add,
  isNegative,
  isPositive,
  less,
  negate,
  shortest,
  subtract,
  zero,
} from '../../length/length';
import { packOver, slideFits } from './box';
import type { DrawersWarning, WorkedDrawers } from './drawers';
import { gapOver } from './hung';
import { hungWarnings, kickerWarning } from './hung-faults';

/** Boxes too high for what is over them, slides too long for the case, openings that narrow or widen to the back. */
export function drawersWarnings(worked: WorkedDrawers): readonly DrawersWarning[] {
  const { drawers, slides, fronts } = worked;
  const strikes = drawers.flatMap((d): readonly DrawersWarning[] =>
    less(d.most, d.high) && d.column === 1
      ? [{ code: 'box-strikes', drawer: d.no, by: subtract(d.high, d.most), most: d.most }]
      : [],
  );
  const long = slides.long && slideFits(slides.long, slides.room, fronts.bank.units);
  const tooLong: readonly DrawersWarning[] =
    slides.long && long && !long.fits
      ? [{ code: 'slide-too-long', slide: slides.long, over: long.over }]
      : [];
  const pack = fronts.columns.flatMap(({ no, opening }): readonly DrawersWarning[] => {
    const off = opening.front && opening.back && absolute(subtract(opening.front, opening.back));
    return off && less(packOver(fronts.bank.units), off)
      ? [{ code: 'pack-slides', column: no, off, ...(slides.hung ? { hung: slides.hung.how } : {}) }]
      : [];
  });
  return [
    ...strikes,
    ...tooLong,
    ...deep(worked),
    ...low(worked),
    ...pack,
    ...differ(worked),
    ...hangs(worked),
  ];
}

/** What is worth a look in what boxes hang on where that is no slide. */
function hangs({ fronts, slides, drawers }: WorkedDrawers): readonly DrawersWarning[] {
  const { hung } = slides;
  const [first] = drawers;
  if (!hung || !first) return [];
  const loose = drawers.flatMap(({ no, column, high }) =>
    column === 1
      ? kickerWarning(hung, { no, gap: gapOver(hung, { fronts, slides, no, high }) }, fronts.bank)
      : [],
  );
  return [...hungWarnings(hung, first.plan, fronts.bank), ...loose];
}

/** A box deeper than the room behind its front. */
function deep({ drawers, slides }: WorkedDrawers): readonly DrawersWarning[] {
  const [first] = drawers;
  const box = first?.plan.depth;
  // of a front of its own the room is behind what is left of it over the side ends
  const over = box && subtract(subtract(box, first.own ? first.plan.lap : zero), slides.room);
  return box && over && isPositive(over) ? [{ code: 'box-too-deep', deep: box, over }] : [];
}

/**
 * The lowest box must clear what is under it by the play: the lower edge of its opening, or a little less than
 * nothing.
 */
function low({ fronts, slides }: WorkedDrawers): readonly DrawersWarning[] {
  const last = fronts.marks[fronts.marks.length - 1];
  if (!last) return [];
  const clear = add(last.bottomUp, slides.boxUp);
  return isNegative(clear)
    ? [{ code: 'box-low', by: negate(clear), least: subtract(slides.boxUp, clear) }]
    : [];
}

function differ({ fronts }: WorkedDrawers): readonly DrawersWarning[] {
  const highs = fronts.columns.map((c) => c.opening.high.value);
  const [first, ...rest] = highs;
  if (!first) return [];
  const least = shortest(first, ...rest);
  return fronts.columns.flatMap(({ no, opening }): readonly DrawersWarning[] => {
    const by = subtract(opening.high.value, least);
    return isPositive(by) ? [{ code: 'columns-differ', column: no, by }] : [];
  });
}
