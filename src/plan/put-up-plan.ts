import { usualIn } from '../job/in-units';
import type { Job } from '../job/job';
import type { Folded } from '../job/log';
import { add, isPositive } from '../length/length';
import { nailerCount } from '../trade/carcass/nailer-places';
import type { Sizes } from '../trade/carcass/sizes';
import { anchorCard } from '../trade/install/anchor';
import { installId } from '../trade/setups/install-steps';
import { caseIn, ownStrip, putUpOf } from './cleat-on';
import { cleatOf, ownStretch, type WithCases } from './cleat-plan';
import type { Plan } from './plan';
import { type WallPlan, wallPlanOf } from './stud-plan';

/** How long a finish is let cure where nobody says. Common practice, no source: its maker's word comes first. */
export const usualCure = 7;

/** Places of the wall that take a screw; nothing while the wall is not read, or it is solid. */
export function placesOnWall(plan: WithCases, place: string): WallPlan['found'] {
  return putUpOf(plan.job, place).wall === 'sheathing' ? undefined : wallPlanOf(plan, place).found;
}

/** How many fixings: as said, else one at each stud behind the cleat where no other case is held by that cleat. */
export function fixingsOf(plan: WithCases, place: string): number | undefined {
  const own = putUpOf(plan.job, place).fixings;
  const isAlone = plan.job.cases.length === 1 || ownStretch(plan.job, place) !== undefined;
  const found = isAlone ? placesOnWall(plan, place) : undefined;
  return own ?? (found?.ok ? found.value.fix.length : undefined);
}

/** What a case has between its highest strip and its lowest: from three on one stands there. */
function betweenOf(job: Job, place: string, sizes: Sizes | undefined): ReturnType<typeof ownStrip> {
  const own = caseIn(job, place);
  const strip = ownStrip(own);
  const count = strip === 'cleat' ? own?.cleats : sizes && nailerCount(sizes);
  return (count ?? 0) >= 3 ? strip : undefined;
}

/** The anchor card of a case; nothing while nobody knows how high it is. */
export function anchorOf(plan: Pick<Plan, 'job' | 'stuff' | 'worked'>, place: string) {
  const found = plan.worked.get(place);
  const high = found?.ok
    ? add(found.value.sizes.height.value, found.value.sizes.plinth)
    : plan.job.cases.find((c) => c.id === place)?.height;
  if (!high || !isPositive(high)) return undefined;
  const own = putUpOf(plan.job, place);
  const { thick, wide } = cleatOf(plan, place);
  const isAnySaid = own.fixings !== undefined || own.washers !== undefined;
  const card = anchorCard({
    high,
    units: usualIn(plan.job),
    wall: own.wall ?? 'framing',
    fixings: fixingsOf(plan, place),
    washers: own.washers,
    cleat: thick && wide ? { thick, wide } : isAnySaid ? 'back-alone' : undefined,
    between: betweenOf(plan.job, place, found?.ok ? found.value.sizes : undefined),
  });
  return card.ok ? card.value : undefined;
}

/** A moment of the wall clock, for the eye only. */
type Moment = string;

/** How far the finish of a case has cured: not on yet, since when and until when, or said to be cured. */
export type Cure = { readonly days: number; readonly usual: boolean } & (
  | { readonly is: 'not-on' }
  | { readonly is: 'cured' }
  | { readonly is: 'curing'; readonly since: Moment; readonly until: Moment }
);

const day = 24 * 60 * 60 * 1000;

/**
 * The wait of a finish: from the tick that it is on, by the clock of the phone that ticked it. The clock may be wrong,
 * so the wait is said and nothing waits for it.
 */
export function cureOf(job: Pick<Job, 'putUp'>, place: string, folded: Pick<Folded, 'ticks'>): Cure {
  const said = putUpOf(job, place).cureDays;
  const wait = { days: said ?? usualCure, usual: said === undefined };
  if (folded.ticks.has(installId(place, 'cure'))) return { ...wait, is: 'cured' };
  const since = folded.ticks.get(installId(place, 'finish'))?.at;
  if (since === undefined) return { ...wait, is: 'not-on' };
  return { ...wait, is: 'curing', since, until: new Date(Date.parse(since) + wait.days * day).toISOString() };
}
