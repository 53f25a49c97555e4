import type { Length } from '../../length/length';
import type { Rounded } from '../../length/round';
import { fineOf, markAt } from '../../length/tape';
import type { Plan } from '../../plan/plan';
import { anchorScrews, type ScrewPlace, screwPlace, screwsOf } from '../../plan/screw-plan';
import { opId } from '../../trade/setups/operation';
import type { FigureStep } from '../shared/figure-by-figure';
import { anchors } from './anchor-words';
import * as words from './screw-words';

/** Place by place: how long the screw is, what is drilled for it, and every mark of its row; none without a screw. */
export function screwSteps(plan: Plan, of: string, lengths: readonly Length[]): readonly FigureStep[] {
  const anchor = screwPlace(plan, anchorScrews(plan, of), lengths);
  return [
    ...placeSteps(plan, of, 'anchors', anchors, anchor),
    ...screwsOf(plan.job, of).flatMap((own) =>
      placeSteps(plan, of, own.id, words.nameOf(own), screwPlace(plan, own, lengths)),
    ),
  ];
}

function placeSteps(
  { job: { tape } }: Plan,
  of: string,
  key: string,
  name: string,
  { screw, row, holes }: ScrewPlace,
): readonly FigureStep[] {
  if (!screw?.pick) return [];
  const step = (own: string, title: string, figure: Rounded, says: string): FigureStep => ({
    id: `${key}~${own}`,
    op: opId(`${of}~bench`, `screws~${key}~${own}`, '1'),
    title: `${name}: ${title}`,
    figure,
    kept: figure.value,
    says,
  });
  const fine = (x: Length): Rounded => markAt(x, fineOf(tape));
  const marks = row?.ok ? row.value.marks : [];
  return [
    step('long', words.oneLong, fine(screw.pick), words.oneLongSays),
    step('clear', words.oneClear, fine(holes.clearance), words.oneClearSays),
    step('pilot', words.onePilot, fine(holes.pilot), words.onePilotSays),
    ...marks.map((x, k) =>
      step(`mark${k + 1}`, words.oneMark(k + 1, marks.length), markAt(x, tape), words.oneMarkSays),
    ),
  ];
}
