import type { PutUp } from '../job/install';
import type { Job } from '../job/job';
import type { Case } from '../trade/carcass/case';
import { isNailed } from '../trade/carcass/nailer-places';
import type { CleatOn } from '../trade/setups/operation';

export const putUpOf = ({ putUp }: Pick<Job, 'putUp'>, place: string): PutUp => putUp[place] ?? {};

export const caseIn = (job: Job, place: string): Case | undefined =>
  job.cases.find((one) => one.id === place);

/** What of a case its anchors go through: its cleats, else its nailers. */
export function ownStrip(c: Case | undefined): 'cleat' | 'nailer' | undefined {
  if (!c) return undefined;
  if (c.cleats > 0) return 'cleat';
  return isNailed(c) ? 'nailer' : undefined;
}

/** Whether what is called the cleat of a case is its top nailer: nothing else is said of one. */
export function nailerIsCleat(job: Job, place: string): boolean {
  const { cleatThick, cleatWide, cleatAt } = putUpOf(job, place);
  const isNailer = ownStrip(caseIn(job, place)) === 'nailer' && cleatOnOf(job, place) === 'case';
  return isNailer && !(cleatThick || cleatWide || cleatAt);
}

/**
 * Whether the cleat of a case is in it, so that its screws anchor the case, or on the wall before the case stands
 * there. Nothing while nobody said anything of a cleat.
 */
export function cleatOnOf(job: Job, place: string): CleatOn | undefined {
  const { cleatOn, cleatThick, cleatWide, cleatAt } = putUpOf(job, place);
  const isAny = ownStrip(caseIn(job, place)) || cleatThick || cleatWide || cleatAt;
  return cleatOn ?? (isAny ? 'case' : undefined);
}
