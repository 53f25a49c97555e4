import { usualIn } from '../job/in-units';
import type { Job } from '../job/job';
import { roomIn, standIn } from '../job/room';
import type { Length } from '../length/length';
import type { Result } from '../length/result';
import type { Worked } from '../trade/carcass/parts';
import { type Fillers, fillersFor } from '../trade/room/fillers';
import type { Closing } from '../trade/setups/install-steps';
import { outsideOf } from './outside';
import { type RoomPlan, roomPlanOf } from './room-plan';
import { closedBy, scribeSides } from './scribe-plan';

type Side = 'left' | 'right';

/** How a case is closed to the walls beside it. Inches. */
export type ClosedIn = {
  /** The sides that are closed by scribing the edge: no strip goes there. */
  readonly byEdge: readonly Side[];
  /** The gaps at both sides and the strips for them, once plumb lines were read. */
  readonly fillers?: Fillers;
};

type Strip = { readonly side: Side; readonly wide: Length };

/**
 * How a case so wide is closed to the walls of its room.
 *
 * @param room as `roomPlanOf` found it; @param at.width as it stands, inches, > 0
 * @returns inches
 */
export function closedIn(
  job: Job,
  room: Pick<RoomPlan, 'plumb' | 'allow'>,
  { id, width }: { readonly id: string; readonly width: Length },
): ClosedIn {
  const { plumb, allow } = room;
  const byEdge = scribeSides(job, id, room).flatMap((s) => (closedBy(s) === 'edge' ? [s.side] : []));
  return { byEdge, ...(plumb?.ok && { fillers: fillersFor(plumb.value, { width, allow }, usualIn(job)) }) };
}

/** The strips to be ripped: none where the edge is scribed, nor where the gap asks for a wider stile instead. */
const stripsOf = ({ byEdge, fillers }: ClosedIn): readonly Strip[] =>
  (['left', 'right'] as const).flatMap((side) => {
    const found = fillers?.[side];
    const isWide = found?.warnings.some(({ code }) => code === 'wide');
    return found?.strip && !isWide && !byEdge.includes(side) ? [{ side, wide: found.strip }] : [];
  });

/**
 * What closes each case to the walls, as steps of its putting up: nothing where neither a gap nor a wall was read.
 *
 * @param worked the cases as they work out; one that does not is not there yet
 */
export function closingOf(
  job: Job,
  worked: ReadonlyMap<string, Result<Worked, unknown>>,
): (id: string) => readonly Closing[] {
  const isRead = roomIn(job).spotsAcross.length > 0;
  const room = isRead ? roomPlanOf(job) : undefined;
  return (id) => {
    const found = worked.get(id);
    if (!found?.ok || !(room || standIn(job, id).gaps.length > 0)) return [];
    const { width } = outsideOf(found.value).stands;
    const closed = closedIn(job, room ?? roomPlanOf(job), { id, width });
    return [
      ...(closed.byEdge.length > 0 ? (['scribe'] as const) : []),
      ...(stripsOf(closed).length > 0 ? (['filler'] as const) : []),
    ];
  };
}
