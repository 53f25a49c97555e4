import { usualIn } from '../job/in-units';
import type { Join } from '../job/install';
import type { Job } from '../job/job';
import { inches, type Length } from '../length/length';
import { figureIn } from '../length/metric-figures';
import type { Result } from '../length/result';
import { toStored } from '../length/stored';
import type { JoinSchedule } from '../trade/buying/joins';
import type { ScrewSchedule } from '../trade/buying/screws';
import { stockOf } from '../trade/carcass/sizes';
import { type BiscuitError, type Biscuits, biscuitsFor, leastBesideSlot } from '../trade/fasteners/biscuits';
import {
  type DowelError,
  type Dowels,
  dowelsFor,
  mostDowelSpacing,
  usualDowels,
} from '../trade/fasteners/dowels';
import { type SlantError, type SlantScrew, slantScrewFor } from '../trade/fasteners/slant-screws';
import { type Schedule, screwSchedule } from '../trade/install/schedule';
import type { BankPlan } from './bank-plan';
import type { Plan } from './plan';

/** What is reckoned with where nothing is said. Inches. */
type UsualJoin = {
  readonly part: Length | undefined;
  readonly mate: Length | undefined;
  readonly run: Length | undefined;
  readonly end: Length;
  readonly most: Length;
  readonly leave: Length;
};

/** What a join comes to, by what holds it; or why it cannot be. */
type Found =
  | { readonly by: 'dowel'; readonly found: Result<Dowels, DowelError> }
  | { readonly by: 'biscuit'; readonly found: Result<Biscuits, BiscuitError> }
  | {
      readonly by: 'slant';
      readonly found: Result<SlantScrew, SlantError>;
      readonly row: Schedule | undefined;
    };

/** A join of a case worked out: what is asked for first, then what holds it and where. */
export type JoinPlace = {
  readonly join: Join;
  readonly usual: UsualJoin;
  readonly missing: readonly ('part' | 'mate' | 'run' | 'seat' | 'head')[];
  readonly is: Found | undefined;
  /** In all joints alike. */
  readonly count: number | undefined;
};

/** From either end to the first dowel, or screw. Common practice, no source. Inches. */
const usualEnd = inches(5n, 4n);

/** What stands in for what was not said: the sides of the case, and how deep its bottom is. */
function usualJoin({ job, stuff, parts }: Pick<Plan, 'job' | 'stuff' | 'parts'>, join: Join): UsualJoin {
  const of = job.cases.find((c) => c.id === join.of);
  const thick = (role: 'bottom' | 'side') => of && stuff.find((s) => s.id === stockOf(of, role))?.thickness;
  const units = usualIn(job);
  return {
    part: thick('bottom'),
    mate: thick('side'),
    run: parts.find((p) => p.of === of?.id && p.name.role === 'bottom')?.width.mark.value,
    end: figureIn(units, usualEnd),
    most: figureIn(units, mostDowelSpacing),
    leave: figureIn(units, leastBesideSlot),
  };
}

/**
 * A join of a job from its sizes and what is on the shelf.
 *
 * @param lengths of the screws on the shelf, inches
 */
export function joinPlace(
  plan: Pick<Plan, 'job' | 'stuff' | 'parts'>,
  join: Join,
  lengths: readonly Length[],
): JoinPlace {
  const usual = usualJoin(plan, join);
  const own = { ...usual, ...said(join) };
  const wanted =
    join.by === 'slant'
      ? (['part', 'mate', 'run', 'seat', 'head'] as const)
      : (['part', 'mate', 'run'] as const);
  const missing = wanted.filter((what) => own[what] === undefined);
  const is = missing.length > 0 ? undefined : worked(join, own, lengths);
  return { join, usual, missing, is, count: countOf(join, is) };
}

type Own = UsualJoin & { readonly [K in 'seat' | 'head' | 'from']?: Length | undefined };

const said = (join: Join): Partial<Own> =>
  Object.fromEntries(
    (['part', 'mate', 'run', 'end', 'most', 'leave', 'seat', 'head', 'from'] as const).flatMap((what) =>
      join[what] ? [[what, join[what]]] : [],
    ),
  );

const none = inches(0n);

function worked(join: Join, own: Own, lengths: readonly Length[]): Found {
  const { part = none, mate = none, run = none, end, most, leave, from } = own;
  const sizes = join.thick && join.long ? [{ thick: join.thick, long: join.long }] : usualDowels;
  if (join.by === 'dowel')
    return {
      by: 'dowel',
      found: dowelsFor({ part, mate, run, end, most, sizes, ...(from ? { from } : {}) }),
    };
  if (join.by === 'biscuit') return { by: 'biscuit', found: biscuitsFor({ part, mate, run, most, leave }) };
  const { seat = none, head = none } = own;
  const row = screwSchedule({ run, end, most, rows: 1 });
  return {
    by: 'slant',
    found: slantScrewFor({ part, mate, seat, head, inPlane: join.flush === true, lengths }),
    row: row.ok ? row.value : undefined,
  };
}

/** Middles along the joint, from the reference end. */
export const middlesOf = (is: Found): readonly Length[] => {
  if (!is.found.ok) return [];
  return is.by === 'slant' ? (is.row?.marks ?? []) : is.found.value.row.marks;
};

function countOf({ many = 1 }: Join, is: Found | undefined): number | undefined {
  const marks = is ? middlesOf(is).length : 0;
  return marks > 0 ? marks * many : undefined;
}

/** Joins of a case. */
export const joinsOf = (job: Pick<Job, 'joins'>, of: string): readonly Join[] =>
  job.joins.filter((join) => join.of === of);

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
