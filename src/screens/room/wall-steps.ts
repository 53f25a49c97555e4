import type { Job } from '../../job/job';
import type { Length } from '../../length/length';
import type { Rounded } from '../../length/round';
import { markAt } from '../../length/tape';
import { wallPlanOf } from '../../plan/stud-plan';
import { opId } from '../../trade/setups/operation';
import type { FigureStep } from '../shared/figure-by-figure';
import * as words from './wall-words';

/** The tick of a mark on the wall. @example wallStep('from') // 'cut/room~wall/mark~from/1' */
const wallStep = (mark: string): string => opId('room~wall', `mark~${mark}`, '1');

/** What is marked on the wall from its left end: both ends of the cleat, then each place that takes a screw. */
export function wallSteps(job: Job): readonly FigureStep[] {
  const { plan, found } = wallPlanOf(job);
  if (!plan || !found?.ok) return [];
  const step = (id: string, title: string, figure: Rounded): FigureStep => ({
    id,
    op: wallStep(id),
    title,
    figure,
    kept: figure.value,
    says: words.fromLeft,
  });
  const exact = (x: Length): Rounded => markAt(x, job.tape);
  const { fix } = found.value;
  return [
    step('from', words.markEnd('begins'), exact(plan.cleat.from)),
    step('to', words.markEnd('ends'), exact(plan.cleat.to)),
    ...fix.map((mark, k) => step(`fix${k + 1}`, words.markScrew(k + 1, fix.length), mark)),
  ];
}
