import type { Join } from '../job/install';
import type { Job } from '../job/job';
import type { Length } from '../length/length';
import { toStored } from '../length/stored';
import type { JoinSchedule } from '../trade/buying/joins';
import type { ScrewSchedule } from '../trade/buying/screws';
import type { BankPlan } from './bank-plan';
import { joinPlace } from './join-place';
import type { Plan } from './plan';

const nameOf = (job: Job, { name, of }: Join): string =>
  name || job.cases.find((c) => c.id === of)?.name || 'Case';

/** Dowels and biscuits of a job, as far as their joints are said. */
export const joinsToBuy = (plan: Plan): readonly JoinSchedule[] => [
  ...ofCases(plan),
  ...[...plan.banks.values()].flatMap(ofBoxes),
];

/** The dowels of the boxes of a bank: both corners at the front of each, and both at its back. */
function ofBoxes({ bank, drawers }: BankPlan): readonly JoinSchedule[] {
  const all = drawers?.ok ? drawers.value.drawers : [];
  const corners = all.flatMap(({ joint }) => (joint.kind === 'doweled' ? [joint.front, joint.back] : []));
  const bySize = new Map<string, JoinSchedule>();
  for (const { size, row } of corners) {
    const key = `${toStored(size.thick)} ${toStored(size.long)}`;
    const count = (bySize.get(key)?.count ?? 0) + 2 * row.count;
    bySize.set(key, { place: bank.name || 'Drawers', count, is: size });
  }
  return [...bySize.values()];
}

const ofCases = (plan: Plan): readonly JoinSchedule[] =>
  plan.job.joins.flatMap((join): readonly JoinSchedule[] => {
    const { is, count } = joinPlace(plan, join, []);
    if (!count || !is || is.by === 'slant' || !is.found.ok) return [];
    const what = is.by === 'dowel' ? is.found.value.size : is.found.value.no;
    return [{ place: nameOf(plan.job, join), count, is: what }];
  });

/** Slant screws of a job, as far as their joints are said. */
export const slantsToBuy = (plan: Plan, lengths: readonly Length[]): readonly ScrewSchedule[] =>
  plan.job.joins.flatMap((join): readonly ScrewSchedule[] => {
    const { is, count } = joinPlace(plan, join, lengths);
    if (!count || is?.by !== 'slant' || !is.found.ok) return [];
    return [{ bank: nameOf(plan.job, join), long: is.found.value.long, pieces: 1, each: count, along: true }];
  });
