import { usualIn } from '../job/in-units';
import type { Job } from '../job/job';
import { roomIn, type ZoneRead } from '../job/room';
import { type Length, less } from '../length/length';
import type { Result } from '../length/result';
import { grainOf } from '../length/tape';
import { type StudError, type StudPlan, type Studs, studsBehind } from '../trade/room/studs';
import { usualRoom } from '../trade/room/usual';

/** What must be said before studs can be reckoned. */
export type StudAsk = 'found' | 'spacing' | 'cleatFrom' | 'cleatTo';
const wanted = ['found', 'spacing', 'cleatFrom', 'cleatTo'] as const;

/** The wall behind a cleat. Inches along it, from its left end. */
export type WallPlan = {
  readonly zones: readonly ZoneRead[];
  readonly asks: readonly StudAsk[];
  /** What was reckoned with. */
  readonly plan?: StudPlan;
  readonly found?: Result<Studs, StudError>;
};

/** A zone of both its ends, the lesser first: from which end it was read is the same. */
const zoneOf = ({ from, to }: ZoneRead): readonly { readonly from: Length; readonly to: Length }[] =>
  from && to ? [less(to, from) ? { from: to, to: from } : { from, to }] : [];

/**
 * Where a cleat can be fastened: studs from one found edge, less those where nothing may be.
 *
 * @returns inches
 */
export function wallPlanOf(job: Job): WallPlan {
  const room = roomIn(job);
  const { zones, found, spacing, cleatFrom, cleatTo } = room;
  const asks = wanted.filter((field) => !room[field]);
  if (!found || !spacing || !cleatFrom || !cleatTo) return { zones, asks };
  const usual = usualRoom(usualIn(job));
  const plan: StudPlan = {
    found,
    edge: room.foundEdge ?? 'left',
    stud: room.stud ?? usual.stud,
    spacing,
    cleat: { from: cleatFrom, to: cleatTo },
    end: room.cleatEnd ?? usual.end,
    zones: zones.flatMap(zoneOf),
    keep: room.keep ?? usual.keep,
  };
  return { zones, asks, plan, found: studsBehind(plan, grainOf(job.tape)) };
}
