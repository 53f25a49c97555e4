import { usualIn } from '../job/in-units';
import type { Job } from '../job/job';
import { roomIn, standIn } from '../job/room';
import { add, equals, type Length, subtract } from '../length/length';
import type { Result } from '../length/result';
import type { Worked } from '../trade/carcass/parts';
import { type Fillers, fillersFor } from '../trade/room/fillers';
import type { Plumb } from '../trade/room/plumb';
import type { Closing } from '../trade/setups/install-steps';
import { outsideOf } from './outside';
import { type RoomPlan, roomPlanOf } from './room-plan';
import { closedBy, type ScribeSide, scribeSides } from './scribe-plan';

type Side = 'left' | 'right';

/** How a case is closed to the walls beside it. Inches. */
export type ClosedIn = {
  /** The sides that are closed by scribing the edge: no strip goes there. */
  readonly byEdge: readonly Side[];
  /** The gaps at both sides and the strips for them, once plumb lines were read. */
  readonly fillers?: Fillers;
};

type Strip = { readonly side: Side; readonly wide: Length; readonly long: Length };

/**
 * What is free at the left, by the plumb lines, of a case pushed to the wall until its scribed edge closes: by the
 * first gap that was read at a height where its wall was. Inches, below 0 where the edge stands past the nearest of the
 * wall.
 */
function pushedTo({ lines, nearLeft }: Plumb, { side, gaps, found }: ScribeSide, width: Length) {
  if (!found?.ok) return undefined;
  const { compass } = found.value;
  return gaps.flatMap(({ at, gap }) => {
    const wall = lines[side].find((spot) => at && spot.plane === 'front' && equals(spot.at, at));
    if (!wall || !gap) return [];
    // from the left plumb line, to the right: the edge at the left, then what is free
    const edge =
      side === 'left'
        ? subtract(subtract(gap, wall.value), compass)
        : subtract(add(subtract(add(lines.apart, wall.value), gap), compass), width);
    return [add(edge, nearLeft)];
  })[0];
}

/** The strip beside a case whose other edge is scribed is as wide as that leaves it. */
function fillersOf(
  { plumb, allow }: { readonly plumb: Plumb; readonly allow: RoomPlan['allow'] },
  edges: readonly ScribeSide[],
  { width, units }: { readonly width: Length; readonly units: Parameters<typeof fillersFor>[2] },
): Fillers {
  const fillers = fillersFor(plumb, { width, allow }, units);
  const [edge, second] = edges;
  const left = edge && !second ? pushedTo(plumb, edge, width) : undefined;
  if (!edge || !left) return fillers;
  const other = edge.side === 'left' ? 'right' : 'left';
  const moved = fillersFor(plumb, { width, allow: { ...allow, left } }, units);
  return { ...fillers, [other]: moved[other] };
}

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
  const edges = scribeSides(job, id, room).filter((s) => closedBy(s) === 'edge');
  const at = { width, units: usualIn(job) };
  return {
    byEdge: edges.map(({ side }) => side),
    ...(plumb?.ok && { fillers: fillersOf({ plumb: plumb.value, allow }, edges, at) }),
  };
}

/** The strips to be ripped: none where the edge is scribed, nor where the gap asks for a wider stile instead. */
const stripsOf = ({ byEdge, fillers }: ClosedIn, long: Length): readonly Strip[] =>
  (['left', 'right'] as const).flatMap((side) => {
    const found = fillers?.[side];
    const isWide = found?.warnings.some(({ code }) => code === 'wide');
    return found?.strip && !isWide && !byEdge.includes(side) ? [{ side, wide: found.strip, long }] : [];
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
    const { width, height } = outsideOf(found.value).stands;
    const closed = closedIn(job, room ?? roomPlanOf(job), { id, width });
    return [
      ...(closed.byEdge.length > 0 ? (['scribe'] as const) : []),
      ...(stripsOf(closed, height).length > 0 ? (['filler'] as const) : []),
    ];
  };
}

/** The strips to be ripped for the cases of a job, each as long as its case is high. Inches. */
export function stripsToRip(
  job: Job,
  worked: ReadonlyMap<string, Result<Worked, unknown>>,
): readonly (Strip & { readonly of: string })[] {
  if (roomIn(job).spotsAcross.length === 0) return [];
  const room = roomPlanOf(job);
  return job.cases.flatMap(({ id }) => {
    const found = worked.get(id);
    if (!found?.ok) return [];
    const { width, height } = outsideOf(found.value).stands;
    return stripsOf(closedIn(job, room, { id, width }), height).map((strip) => ({ ...strip, of: id }));
  });
}
