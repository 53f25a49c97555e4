import { usualIn } from '../job/in-units';
import type { Join } from '../job/install';
import type { Job } from '../job/job';
import { inches, isPositive, type Length, subtract } from '../length/length';
import { figureIn } from '../length/metric-figures';
import type { Result } from '../length/result';
import type { Units } from '../length/units';
import type { Stuff } from '../trade/carcass/case';
import { type FastenedEnd, fastenedEnds, meetingOf } from '../trade/carcass/fastened';
import { type FastenerFault, fastenerFaults, takenUp } from '../trade/carcass/fastener-faults';
import { type Fastening, rowsFor } from '../trade/carcass/fastener-rows';
import type { Part } from '../trade/carcass/part';
import type { Worked } from '../trade/carcass/parts';
import { stockOf } from '../trade/carcass/sizes';
import {
  type BiscuitError,
  type Biscuits,
  biscuitsFor,
  biscuitThick,
  leastBesideSlot,
} from '../trade/fasteners/biscuits';
import {
  type DowelError,
  type Dowels,
  dowelsFor,
  mostDowelSpacing,
  usualDowels,
} from '../trade/fasteners/dowels';
import type { FastenerRow } from '../trade/fasteners/row';
import { type SlantError, type SlantScrew, slantScrewFor } from '../trade/fasteners/slant-screws';
import { type Schedule, screwSchedule } from '../trade/install/schedule';
import { withHandJoints } from '../trade/joints/by-hand';

/** What a join is worked out from. */
type JoinAt = {
  readonly job: Job;
  readonly stuff: readonly Stuff[];
  readonly parts: readonly Part[];
  readonly worked: ReadonlyMap<string, Result<Worked, unknown>>;
  /** Lengths of the screws on the shop's shelf. Inches. */
  readonly screws?: readonly Length[] | undefined;
};

/** Rows by the part they are in. */
type Rows = ReadonlyMap<string, readonly FastenerRow[]>;

/** What is reckoned with where nothing is said. Inches. */
type UsualJoin = {
  readonly part: Length | undefined;
  readonly mate: Length | undefined;
  readonly run: Length | undefined;
  readonly end: Length;
  readonly most: Length;
  readonly leave: Length;
};

/** The joints of a case a join is of. */
type Meets = {
  readonly ends: readonly FastenedEnd[];
  /** How long they are, from the front edge. Inches. */
  readonly run: Length | undefined;
  /** What keeps it from being bored. */
  readonly faults: readonly MeetsFault[];
};

/** `twice`: another join holds this meeting already. `off-the-joint`: it was said to be so much longer than it is. */
export type MeetsFault =
  | FastenerFault
  | { readonly code: 'twice' }
  | { readonly code: 'off-the-joint'; readonly by: Length; readonly run: Length };

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
  /** Of a meeting of its case: its joints, and what their holes would run into. */
  readonly meets?: Meets | undefined;
  readonly join: Join;
  readonly usual: UsualJoin;
  readonly missing: readonly ('part' | 'mate' | 'run' | 'seat' | 'head')[];
  readonly is: Found | undefined;
  /** In all joints alike. */
  readonly count: number | undefined;
};

/** From either end to the first dowel, or screw. Common practice, no source. Inches. */
const usualEnd = inches(5n, 4n);

const none = inches(0n);

/** What stands in for what was not said: the sides of the case, and how deep its bottom is. */
function usualJoin({ job, stuff, parts }: JoinAt, join: Join, meets: Met | undefined): UsualJoin {
  const of = job.cases.find((c) => c.id === join.of);
  const thick = (role: 'bottom' | 'side') => of && stuff.find((s) => s.id === stockOf(of, role))?.thickness;
  const units = usualIn(job);
  const { part, mate, run } = meets ?? {
    part: thick('bottom'),
    mate: thick('side'),
    run: parts.find((p) => p.of === of?.id && p.name.role === 'bottom')?.width.mark.value,
  };
  return {
    part,
    mate,
    run,
    end: figureIn(units, usualEnd),
    most: figureIn(units, mostDowelSpacing),
    leave: figureIn(units, leastBesideSlot),
  };
}

/** The joints of the meeting a join is of, and their sizes; nothing where it is of none. */
function metBy({ job, worked }: JoinAt, { at, of = '' }: Join) {
  if (!at) return undefined;
  const found = worked.get(of);
  if (!found?.ok) return { ends: [], part: undefined, mate: undefined, run: undefined };
  const ends = fastenedEnds(found.value, at);
  return { ends, ...meetingOf(found.value, ends, job.tape) };
}

type Met = NonNullable<ReturnType<typeof metBy>>;

/**
 * A join of a job from its sizes and what is on the shelf. One that is of a meeting of its case has them from there.
 *
 * @param lengths of the screws on the shelf, inches
 */
export const joinPlace = (plan: JoinAt, join: Join, lengths: readonly Length[]): JoinPlace =>
  placeIn(plan, join, { lengths, others: join.at ? rowsBefore(plan, join).taken : new Map() });

/** Screws on the shelf, and the rows that take up wood for other joints already. */
type Among = { readonly lengths: readonly Length[]; readonly others: Rows };

function placeIn(plan: JoinAt, join: Join, { lengths, others }: Among): JoinPlace {
  const met = metBy(plan, join);
  const usual = usualJoin(plan, join, met);
  const own = { ...usual, ...said(join) };
  const wanted =
    join.by === 'slant'
      ? (['part', 'mate', 'run', 'seat', 'head'] as const)
      : (['part', 'mate', 'run'] as const);
  const missing = met?.ends.length === 0 ? [] : wanted.filter((what) => own[what] === undefined);
  const is =
    missing.length > 0 || met?.ends.length === 0
      ? undefined
      : found(join, own, { lengths, units: usualIn(plan.job) });
  if (!met) return { join, usual, missing, is, count: countOf(is, join.many) };
  const faults = faultsOf(plan.job, join, { met, is, run: own.run, others });
  const count = faults.length > 0 ? undefined : countOf(is, met.ends.length);
  return { join, usual, missing, is, count, meets: { ends: met.ends, run: met.run, faults } };
}

type Told = {
  readonly met: Met;
  readonly is: Found | undefined;
  readonly run: Length | undefined;
  readonly others: Rows;
};

/** What keeps a meeting from being bored as it is set out. */
function faultsOf(job: Job, join: Join, { met, is, run, others }: Told): readonly MeetsFault[] {
  if (!isFirst(job, join)) return [{ code: 'twice' }];
  const by = run && met.run ? subtract(run, met.run) : none;
  if (met.run && isPositive(by)) return [{ code: 'off-the-joint', by, run: met.run }];
  const fastening = is && fasteningOf(is);
  if (!fastening || !join.at) return [];
  const cut = (part: Part) => withHandJoints(part, job.joints);
  const ends = met.ends.map((end) => ({ ...end, part: cut(end.part), mate: cut(end.mate) }));
  return fastenerFaults(ends, fastening, { what: join.at, others, units: usualIn(job) });
}

const isFirst = (job: Job, join: Join): boolean =>
  job.joins.find(({ of, at }) => of === join.of && at === join.at)?.id === join.id;

/** What is cut for a join, alike at all its joints. */
function fasteningOf(is: Found): Fastening | undefined {
  if (!is.found.ok) return undefined;
  if (is.by === 'dowel') {
    const { size, from, inFace, inEdge, row } = is.found.value;
    return { thick: size.thick, from, inFace, inEnd: inEdge, marks: row.marks };
  }
  if (is.by === 'biscuit') {
    const { no, slotDeep: deep, slotLong: long, from, row } = is.found.value;
    return { biscuit: no, thick: biscuitThick, long, from, inFace: deep, inEnd: deep, marks: row.marks };
  }
  const { seat, head, leaves, bite, drift, meets, seatBack } = is.found.value;
  const marks = is.row?.marks ?? [];
  const slant = { seat, seatBack, meets };
  return { thick: head, from: leaves, inFace: bite, inEnd: meets, drift, slant, marks };
}

/** The rows cut in the parts of a job for what holds the meetings of its cases, by their part. */
export const fastenerRows = (plan: JoinAt): Rows => rowsBefore(plan).cut;

/**
 * The rows of the joins of a job one after another, each clear of those before it: what is cut, and what wood it takes
 * up.
 *
 * @param until none of this one, nor of those after it, nor of another case
 */
function rowsBefore(plan: JoinAt, until?: Join): { readonly cut: Rows; readonly taken: Rows } {
  const [cut, taken] = [new Map<string, readonly FastenerRow[]>(), new Map<string, readonly FastenerRow[]>()];
  const { job, screws: lengths = [] } = plan;
  for (const join of job.joins) {
    if (join.id === until?.id) break;
    if (!join.at || (until && join.of !== until.of) || !isFirst(job, join)) continue;
    const { is, meets } = placeIn(plan, join, { lengths, others: taken });
    const fastening = is && fasteningOf(is);
    if (!fastening || !meets || meets.faults.length > 0) continue;
    addTo(cut, rowsFor(meets.ends, join.at, fastening));
    addTo(taken, takenUp(meets.ends, join.at, fastening));
  }
  return { cut, taken };
}

function addTo(rows: Map<string, readonly FastenerRow[]>, more: Rows): void {
  for (const [part, own] of more) rows.set(part, [...(rows.get(part) ?? []), ...own]);
}

type Own = UsualJoin & { readonly [K in 'seat' | 'head' | 'from']?: Length | undefined };

const said = (join: Join): Partial<Own> =>
  Object.fromEntries(
    (['part', 'mate', 'run', 'end', 'most', 'leave', 'seat', 'head', 'from'] as const).flatMap((what) =>
      join[what] ? [[what, join[what]]] : [],
    ),
  );

/** Screws on the shelf, and the unit of the job its limits are round in. */
type Shelf = Pick<Among, 'lengths'> & { readonly units: Units };

function found(join: Join, own: Own, { lengths, units }: Shelf): Found {
  const { part = none, mate = none, run = none, end, most, leave, from } = own;
  const middle = from ? { from } : {};
  const sizes = join.thick && join.long ? [{ thick: join.thick, long: join.long }] : usualDowels(units);
  if (join.by === 'dowel')
    return {
      by: 'dowel',
      found: dowelsFor({ part, mate, run, end, most, sizes, units, ...middle }),
    };
  if (join.by === 'biscuit')
    return { by: 'biscuit', found: biscuitsFor({ part, mate, run, most, leave, units, ...middle }) };
  const { seat = none, head = none } = own;
  const row = screwSchedule({ run, end, most, rows: 1 });
  const inPlane = join.flush === true && !join.at;
  return {
    by: 'slant',
    found: slantScrewFor({ part, mate, seat, head, inPlane, lengths, units }),
    row: row.ok ? row.value : undefined,
  };
}

/** Middles along the joint, from the reference end. */
export const middlesOf = (is: Found): readonly Length[] => {
  if (!is.found.ok) return [];
  return is.by === 'slant' ? (is.row?.marks ?? []) : is.found.value.row.marks;
};

function countOf(is: Found | undefined, many = 1): number | undefined {
  const marks = is ? middlesOf(is).length : 0;
  return marks > 0 ? marks * many : undefined;
}

/** Joins of a case. */
export const joinsOf = (job: Pick<Job, 'joins'>, of: string): readonly Join[] =>
  job.joins.filter((join) => join.of === of);
