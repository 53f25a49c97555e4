import type { Length } from '../../length/length';
import type { Rounded } from '../../length/round';
import { markAt } from '../../length/tape';
import { cleatAt, ownStretch, type WithCases } from '../../plan/cleat-plan';
import { wallPlanOf } from '../../plan/stud-plan';
import { opId } from '../../trade/setups/operation';
import { fromLine } from '../shared/cleat-words';
import type { FigureStep } from '../shared/figure-by-figure';
import * as words from './wall-words';

/** The tick of a mark on the wall. @example wallStep('room', 'from') // 'cut/room~wall/mark~from/1' */
const wallStep = (of: string, mark: string): string => opId(`${of}~wall`, `mark~${mark}`, '1');

/**
 * What is marked on the wall: how high the cleat of each case stands; then from the left end both ends of each cleat
 * and each place that takes a screw. A case whose cleat is its own has its own marks.
 */
export function wallSteps(on: WithCases): readonly FigureStep[] {
  const { cases } = on.job;
  const own = cases.filter(({ id }) => ownStretch(on.job, id));
  const nameOf = (name: string) => (cases.length > 1 ? name : '');
  return [
    ...cases.flatMap(({ id, name }) => heightStep(on, id, nameOf(name))),
    ...(cases.length > 0 && own.length === cases.length ? [] : alongSteps(on)),
    ...own.flatMap(({ id, name }) => alongSteps(on, { id, name: nameOf(name) })),
  ];
}

function heightStep(on: WithCases, id: string, name: string): readonly FigureStep[] {
  const { height } = cleatAt(on, id);
  if (!height) return [];
  return [
    {
      id: `up~${id}`,
      op: wallStep(id, 'up'),
      title: words.markLine(name),
      figure: markAt(height.low, on.job.tape),
      kept: height.low,
      says: words.lineSays(height.fromLine ? fromLine(height.fromLine) : ''),
    },
  ];
}

/** @param of the case whose own cleat it is; nothing for the cleat that is said for all */
function alongSteps(
  on: WithCases,
  of?: { readonly id: string; readonly name: string },
): readonly FigureStep[] {
  const { plan, found } = wallPlanOf(on, of?.id);
  if (!plan || !found?.ok) return [];
  const step = (id: string, title: string, figure: Rounded): FigureStep => ({
    id: of ? `${id}~${of.id}` : id,
    op: wallStep(of?.id ?? 'room', id),
    title: words.of(of?.name ?? '', title),
    figure,
    kept: figure.value,
    says: words.fromLeft,
  });
  const exact = (x: Length): Rounded => markAt(x, on.job.tape);
  const { fix } = found.value;
  return [
    step('from', words.markEnd('begins'), exact(plan.cleat.from)),
    step('to', words.markEnd('ends'), exact(plan.cleat.to)),
    ...fix.map((mark, k) => step(`fix${k + 1}`, words.markScrew(k + 1, fix.length), mark)),
  ];
}
