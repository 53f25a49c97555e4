import { absolute, less, subtract } from '../../length/length';
import { packOver, slideFits } from './box';
import type { DrawersWarning, WorkedDrawers } from './drawers';

/** Boxes too high for what is over them, slides too long for the case, openings that narrow or widen to the back. */
export function drawersWarnings(worked: WorkedDrawers): readonly DrawersWarning[] {
  const { drawers, slides, fronts } = worked;
  const strikes = drawers.flatMap((d): readonly DrawersWarning[] =>
    less(d.most, d.high) && d.column === 1
      ? [{ code: 'box-strikes', drawer: d.no, by: subtract(d.high, d.most), most: d.most }]
      : [],
  );
  const long = slides.long && slideFits(slides.long, slides.room);
  const tooLong: readonly DrawersWarning[] =
    slides.long && long && !long.fits
      ? [{ code: 'slide-too-long', slide: slides.long, over: long.over }]
      : [];
  const pack = fronts.columns.flatMap(({ no, opening }): readonly DrawersWarning[] => {
    const off = opening.front && opening.back && absolute(subtract(opening.front, opening.back));
    return off && less(packOver, off) ? [{ code: 'pack-slides', column: no, off }] : [];
  });
  return [...strikes, ...tooLong, ...pack];
}
