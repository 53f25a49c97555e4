import type { Job } from '../job/job';
import { roomIn, standIn } from '../job/room';
import { add, isPositive, type Length, shortest, zero } from '../length/length';
import type { Result } from '../length/result';
import type { Case, Stuff } from '../trade/carcass/case';
import { topCleat } from '../trade/carcass/cleats';
import { nailerWide, topNailer } from '../trade/carcass/nailer-places';
import type { Worked } from '../trade/carcass/parts';
import { type Sizes, stockOf } from '../trade/carcass/sizes';
import { usualOf } from '../trade/carcass/usual';
import {
  type CleatHeight,
  type CleatPlan,
  type CleatWrong,
  cleatHeight,
  cleatWrong,
} from '../trade/install/cleat-height';
import type { CleatOn } from '../trade/setups/operation';
import { caseIn, cleatOnOf, ownStrip, putUpOf } from './cleat-on';
import { levelPlanOf } from './level-plan';
import { roomPlanOf } from './room-plan';

/** A job with those of its cases that work out. */
export type WithCases = {
  readonly job: Job;
  readonly worked: ReadonlyMap<string, Result<Worked, unknown>>;
};

/** A job with its sheets as they are reckoned with. */
type WithStuff = { readonly job: Job; readonly stuff: readonly Stuff[] };

/** How wide the cleats of a case are, else its nailers, where it has any. Inches. */
function ownWide(c: Case | undefined): Length | undefined {
  const strip = ownStrip(c);
  if (!c || !strip) return undefined;
  return strip === 'cleat' ? (c.cleatWide ?? usualOf(c).cleatWide) : nailerWide(c);
}

/** What the anchors of a case go through, where it has cleats or nailers and nothing else is said. Inches. */
export function usualCleat(
  { job, stuff }: WithStuff,
  place: string,
): { readonly thick?: Length | undefined; readonly wide?: Length | undefined } {
  const c = caseIn(job, place);
  // those of a case that stands before a cleat on the wall are not that cleat
  const strip = ownStrip(c);
  if (!c || !strip || cleatOnOf(job, place) === 'wall') return {};
  return { thick: stuff.find((s) => s.id === stockOf(c, strip))?.thickness, wide: ownWide(c) };
}

/** What the anchors of a case go through, as said, else as the case has it. Inches. */
export function cleatOf(plan: WithStuff, place: string): ReturnType<typeof usualCleat> {
  const own = putUpOf(plan.job, place);
  const usual = usualCleat(plan, place);
  return { thick: own.cleatThick ?? usual.thick, wide: own.cleatWide ?? usual.wide };
}

/** From the lower end of a case: between its bottom and its top, or all its back covers. Inches. */
function behind(sizes: Sizes, on: CleatOn): { readonly from: Length; readonly to: Length } {
  const { case: c, datum, clearHeight, height } = sizes;
  if (on === 'wall') return { from: c.feet ?? zero, to: height.value };
  return { from: datum.value, to: c.hasTop ? add(datum.value, clearHeight.value) : height.value };
}

/** What stands between the high point of the floor and the lower end of a case. Inches. */
export type Lift = { readonly feet?: Length; readonly base?: Length };

function liftOf(job: Job, place: string, sizes: Sizes | undefined): Lift {
  const { footHow, footHigh } = standIn(job, place);
  // a plinth scribed to the floor stands on it
  const onFeet = footHow === 'screw' && !levelPlanOf(job, place).scribed;
  const base = sizes && add(sizes.case.hasBase ? sizes.thick('base') : zero, sizes.plinth);
  return {
    ...(onFeet && footHigh ? { feet: footHigh } : {}),
    ...(base && isPositive(base) ? { base } : {}),
  };
}

/** From the level line down to the high point: under the feet of the case where all were read, else of the room. */
function dropOf(job: Job, place: string): Length | undefined {
  const { found, read } = levelPlanOf(job, place);
  const [first, ...more] = found?.ok ? read.map(({ drop }) => drop) : [];
  if (first) return shortest(first, ...more);
  const { level } = roomPlanOf(job);
  return level?.ok ? level.value.leastDrop : undefined;
}

/** The cleat of a case as far as it is known. Inches over the floor at its high point. */
export type Cleat = {
  readonly on: CleatOn;
  readonly plan: CleatPlan;
  readonly lift: Lift;
  readonly height: CleatHeight | undefined;
  readonly wrong: CleatWrong | undefined;
};

/**
 * The cleat of a case, how high it stands and what is wrong with that.
 *
 * @returns inches
 */
export function cleatAt({ job, worked }: WithCases, place: string): Cleat {
  const own = putUpOf(job, place);
  const found = worked.get(place);
  const sizes = found?.ok ? found.value.sizes : undefined;
  const on = cleatOnOf(job, place) ?? 'case';
  const lift = liftOf(job, place, sizes);
  const plan: CleatPlan = {
    said: own.cleatAt,
    inCase: sizes && on === 'case' ? (topCleat(sizes) ?? topNailer(sizes)) : undefined,
    lift: add(lift.feet ?? zero, lift.base ?? zero),
    back: sizes && behind(sizes, on),
    wide: own.cleatWide ?? (on === 'case' ? ownWide(caseIn(job, place)) : undefined),
    drop: dropOf(job, place),
  };
  const height = cleatHeight(plan);
  return { on, plan, lift, height, wrong: height && cleatWrong(plan, height.low) };
}

/**
 * Where the cleat of one case begins and ends along the wall, where that is said of it alone: what is not said of it is
 * as for all. Inches.
 */
export function ownStretch(
  job: Job,
  place: string,
): { readonly from?: Length | undefined; readonly to?: Length | undefined } | undefined {
  const { cleatFrom, cleatTo } = putUpOf(job, place);
  const room = roomIn(job);
  return cleatFrom || cleatTo
    ? { from: cleatFrom ?? room.cleatFrom, to: cleatTo ?? room.cleatTo }
    : undefined;
}
