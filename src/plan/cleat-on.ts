import type { PutUp } from '../job/install';
import type { Job } from '../job/job';
import type { Case } from '../trade/carcass/case';
import type { CleatOn } from '../trade/setups/operation';

export const putUpOf = ({ putUp }: Pick<Job, 'putUp'>, place: string): PutUp => putUp[place] ?? {};

export const caseIn = (job: Job, place: string): Case | undefined =>
  job.cases.find((one) => one.id === place);

/**
 * Whether the cleat of a case is in it, so that its screws anchor the case, or on the wall before the case stands
 * there. Nothing while nobody said anything of a cleat.
 */
export function cleatOnOf(job: Job, place: string): CleatOn | undefined {
  const { cleatOn, cleatThick, cleatWide, cleatAt } = putUpOf(job, place);
  const isAny = (caseIn(job, place)?.cleats ?? 0) > 0 || cleatThick || cleatWide || cleatAt;
  return cleatOn ?? (isAny ? 'case' : undefined);
}
