import type { PutUp } from '../job/install';
import type { Job } from '../job/job';
import type { Folded } from '../job/log';
import { isPositive, type Length } from '../length/length';
import { stockOf } from '../trade/carcass/sizes';
import { usualOf } from '../trade/carcass/usual';
import { anchorCard } from '../trade/install/anchor';
import { installId } from '../trade/setups/install-steps';
import type { Plan } from './plan';
import { type WallPlan, wallPlanOf } from './stud-plan';

/** How long a finish is let cure where nobody says. Common practice, no source: its maker's word comes first. */
export const usualCure = 7;

export const putUpOf = ({ putUp }: Pick<Job, 'putUp'>, place: string): PutUp => putUp[place] ?? {};

/** What the anchors of a case go through, where the case has cleats and nothing else is said. Inches. */
export function usualCleat(
  { job, stuff }: Pick<Plan, 'job' | 'stuff'>,
  place: string,
): { readonly thick?: Length | undefined; readonly wide?: Length | undefined } {
  const c = job.cases.find((one) => one.id === place);
  if (!c || c.cleats === 0) return {};
  return {
    thick: stuff.find((s) => s.id === stockOf(c, 'cleat'))?.thickness,
    wide: c.cleatWide ?? usualOf(c).cleatWide,
  };
}

/** What the anchors of a case go through, as said, else as the case has it. Inches. */
export function cleatOf(plan: Pick<Plan, 'job' | 'stuff'>, place: string): ReturnType<typeof usualCleat> {
  const own = putUpOf(plan.job, place);
  const usual = usualCleat(plan, place);
  return { thick: own.cleatThick ?? usual.thick, wide: own.cleatWide ?? usual.wide };
}

/** Places of the wall that take a screw; nothing while the wall is not read, or it is solid. */
export function placesOnWall(job: Job, place: string): WallPlan['found'] {
  return putUpOf(job, place).wall === 'sheathing' ? undefined : wallPlanOf(job).found;
}

/** How many fixings: as said, else one at each stud behind the cleat where one case alone stands at the wall. */
export function fixingsOf(job: Job, place: string): number | undefined {
  const own = putUpOf(job, place).fixings;
  const found = job.cases.length === 1 ? placesOnWall(job, place) : undefined;
  return own ?? (found?.ok ? found.value.fix.length : undefined);
}

/** The anchor card of a case; nothing while nobody knows how high it is. */
export function anchorOf(plan: Pick<Plan, 'job' | 'stuff' | 'worked'>, place: string) {
  const found = plan.worked.get(place);
  const high = found?.ok
    ? found.value.sizes.height.value
    : plan.job.cases.find((c) => c.id === place)?.height;
  if (!high || !isPositive(high)) return undefined;
  const own = putUpOf(plan.job, place);
  const { thick, wide } = cleatOf(plan, place);
  const isAnySaid = own.fixings !== undefined || own.washers !== undefined;
  const card = anchorCard({
    high,
    wall: own.wall ?? 'framing',
    fixings: fixingsOf(plan.job, place),
    washers: own.washers,
    cleat: thick && wide ? { thick, wide } : isAnySaid ? 'back-alone' : undefined,
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
