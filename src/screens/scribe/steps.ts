import type { Job } from '../../job/job';
import type { Length } from '../../length/length';
import { fineOf, markAt } from '../../length/tape';
import { type ScribeSide, scribeSides } from '../../plan/scribe-plan';
import { opId } from '../../trade/setups/operation';
import type { FigureStep } from '../shared/figure-by-figure';
import * as words from './words';

/** Edge by edge: compass, then what comes off at each place, from the floor up; none of an edge that fails. */
export const scribeSteps = (job: Job, id: string): readonly FigureStep[] =>
  scribeSides(job, id).flatMap((side) => edgeSteps(job, id, side));

function edgeSteps({ tape }: Job, id: string, { side, found }: ScribeSide): readonly FigureStep[] {
  if (!found?.ok || found.value.short) return [];
  const { compass, off } = found.value;
  const step = (key: string, title: string, kept: Length, says: string): FigureStep => ({
    id: `${side}~${key}`,
    op: opId(`${id}~bench`, `scribe~${side}~${key}`, '1'),
    title,
    figure: markAt(kept, fineOf(tape)),
    kept,
    says,
  });
  const byHeight = [...off].sort((a, b) => a.at.compare(b.at));
  return [
    step('compass', words.compassOf(side), compass, words.how),
    ...byHeight.map(({ at, value }, k) =>
      step(`off${k + 1}`, words.offOf(side, at), value, words.offSays(value)),
    ),
  ];
}
