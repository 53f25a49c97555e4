import { usualIn } from '../job/in-units';
import type { Job } from '../job/job';
import { roomIn, type ZoneRead } from '../job/room';
import { add, type Length, less, subtract } from '../length/length';
import type { Result } from '../length/result';
import { grainOf } from '../length/tape';
import { type Band, clearMoves, clears, type Moves } from '../trade/install/cleat-height';
import { type StudError, type StudPlan, type Studs, studsBehind } from '../trade/room/studs';
import { usualRoom } from '../trade/room/usual';
import { cleatAt, ownStretch, type WithCases } from './cleat-plan';

/** What must be said before studs can be reckoned. */
export type StudAsk = 'found' | 'spacing' | 'cleatFrom' | 'cleatTo';
const wanted = ['found', 'spacing', 'cleatFrom', 'cleatTo'] as const;

/** Places the screws of a cleat are too near to at its height, and how far it is moved to clear all of them. */
export type Crossed = { readonly zones: readonly ZoneRead[]; readonly moves: Moves };

/** The wall behind a cleat. Inches along it, from its left end. */
export type WallPlan = {
  readonly zones: readonly ZoneRead[];
  readonly asks: readonly StudAsk[];
  /** What was reckoned with. */
  readonly plan?: StudPlan;
  readonly found?: Result<Studs, StudError>;
};

type Both = { readonly from: Length; readonly to: Length };

/** Two ends of a zone, the lesser first: from which end it was read is the same. */
const inOrder = (a: Length | undefined, b: Length | undefined): Both | undefined =>
  a && b ? (less(b, a) ? { from: b, to: a } : { from: a, to: b }) : undefined;

function stretchOf({ from, to }: ZoneRead): readonly Both[] {
  const found = inOrder(from, to);
  return found ? [found] : [];
}

/** How high a zone is; at every height where only one end of that is said. */
function bandOf({ low, high }: ZoneRead): Band | undefined {
  const found = inOrder(low, high);
  return found && { low: found.from, high: found.to };
}

/** The cases that a cleat holds: one, or all that have none of their own. */
const heldBy = (job: Job, place: string | undefined): readonly string[] =>
  place === undefined ? job.cases.map(({ id }) => id).filter((id) => !ownStretch(job, id)) : [place];

/** A zone bars a cleat unless the screws of every case it holds are known to keep off it. */
function bars(zone: ZoneRead, screws: readonly (Length | undefined)[], keep: Length): boolean {
  const band = bandOf(zone);
  return !band || screws.length === 0 || screws.some((at) => !at || !clears(at, band, keep));
}

/**
 * Where a cleat can be fastened: studs from one found edge, less those where nothing may be.
 *
 * @param place the case it holds; nothing for the cleat that is said for all
 * @returns inches
 */
export function wallPlanOf(on: WithCases, place?: string): WallPlan {
  const { job } = on;
  const room = roomIn(job);
  const { found, spacing } = room;
  const own = place === undefined ? undefined : ownStretch(job, place);
  const said = own ?? { from: room.cleatFrom, to: room.cleatTo };
  const has = { found, spacing, cleatFrom: said.from, cleatTo: said.to };
  const asks = wanted.filter((field) => !has[field]);
  if (!found || !spacing || !said.from || !said.to) return { zones: room.zones, asks };
  const usual = usualRoom(usualIn(job));
  const keep = room.keep ?? usual.keep;
  const screws = heldBy(job, place).map((id) => cleatAt(on, id).height?.screws);
  const plan: StudPlan = {
    found,
    edge: room.foundEdge ?? 'left',
    stud: room.stud ?? usual.stud,
    spacing,
    cleat: { from: said.from, to: said.to },
    end: room.cleatEnd ?? usual.end,
    zones: room.zones.filter((zone) => bars(zone, screws, keep)).flatMap(stretchOf),
    keep,
  };
  return { zones: room.zones, asks, plan, found: studsBehind(plan, grainOf(job.tape)) };
}

/**
 * Places that the screws of a case are too near at their height, with how far up or down its cleat clears all of them.
 * A place beside the cleat is none of them.
 *
 * @returns inches; nothing where they keep off all of them, or nobody says how high they are
 */
export function crossedBy(on: WithCases, place: string): Crossed | undefined {
  const { job } = on;
  const room = roomIn(job);
  const { plan, height } = cleatAt(on, place);
  if (!height) return undefined;
  const keep = room.keep ?? usualRoom(usualIn(job)).keep;
  const isBehind = behindCleat(job, place, keep);
  const banded = room.zones.flatMap((zone) => {
    const band = bandOf(zone);
    return band && isBehind(zone) ? [{ zone, band }] : [];
  });
  const zones = banded.filter(({ band }) => !clears(height.screws, band, keep)).map(({ zone }) => zone);
  const bands = banded.map(({ band }) => band);
  return zones.length > 0 ? { zones, moves: clearMoves(plan, height, { bands, keep }) } : undefined;
}

/** Whether a zone lies so near along the wall that a screw of the cleat could be in it. */
function behindCleat(job: Job, place: string, keep: Length): (zone: ZoneRead) => boolean {
  const { cleatFrom, cleatTo } = roomIn(job);
  const { from = cleatFrom, to = cleatTo } = ownStretch(job, place) ?? {};
  const isBeside = (at: Both): boolean =>
    (from !== undefined && less(add(at.to, keep), from)) ||
    (to !== undefined && less(to, subtract(at.from, keep)));
  return (zone) => !stretchOf(zone).some(isBeside);
}
