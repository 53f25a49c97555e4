import { usualIn } from '../job/in-units';
import type { Job } from '../job/job';
import { roomIn, standIn } from '../job/room';
import { add, equals, isNegative, type Length, subtract } from '../length/length';
import type { Result } from '../length/result';
import { grainOf } from '../length/tape';
import { fillerOf } from '../trade/carcass/filler';
import type { Part } from '../trade/carcass/part';
import type { Worked } from '../trade/carcass/parts';
import { stockOf } from '../trade/carcass/sizes';
import { type Fillers, fillersFor, type GapsRead } from '../trade/room/fillers';
import type { Plumb } from '../trade/room/plumb';
import type { AtSpot } from '../trade/room/spot';
import type { Closing } from '../trade/setups/install-steps';
import { given, type Sum } from '../trade/sums/sum';
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

/** Up to a mark wide; `width` is what it must be exactly. */
type Strip = { readonly side: Side; readonly wide: Length; readonly long: Length; readonly width: Sum };

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

/** What was read down an edge that a strip closes; a gap misread is told where it was read. */
const gapsAt = (sides: readonly ScribeSide[], side: Side): readonly AtSpot[] =>
  sides
    .filter((each) => each.side === side && closedBy(each) === 'strip')
    .flatMap(({ gaps }) => gaps)
    .flatMap(({ at, gap }) => (at && gap && !isNegative(gap) ? [{ at, plane: 'front', value: gap }] : []));

type StripAt = {
  readonly width: Length;
  readonly grain: Length;
  readonly read: GapsRead;
  readonly units: Parameters<typeof fillersFor>[2];
};

/** The strip beside a case whose other edge is scribed is as wide as that leaves it. */
function fillersOf(
  { plumb, allow }: { readonly plumb: Plumb; readonly allow: RoomPlan['allow'] },
  edges: readonly ScribeSide[],
  { units, ...at }: StripAt,
): Fillers {
  const { width } = at;
  const fillers = fillersFor(plumb, { ...at, allow }, units);
  const [edge, second] = edges;
  const left = edge && !second ? pushedTo(plumb, edge, width) : undefined;
  if (!edge || !left) return fillers;
  const other = edge.side === 'left' ? 'right' : 'left';
  const moved = fillersFor(plumb, { ...at, allow: { ...allow, left } }, units);
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
  const sides = scribeSides(job, id, room);
  const edges = sides.filter((s) => closedBy(s) === 'edge');
  const read = { left: gapsAt(sides, 'left'), right: gapsAt(sides, 'right') };
  const at = { width, grain: grainOf(job.tape), read, units: usualIn(job) };
  return {
    byEdge: edges.map(({ side }) => side),
    ...(plumb?.ok && { fillers: fillersOf({ plumb: plumb.value, allow }, edges, at) }),
  };
}

/** Whether a strip goes there: none where the edge is scribed, nor where the gap asks for a wider stile instead. */
export const isStripAt = ({ byEdge, fillers }: ClosedIn, side: Side): boolean =>
  fillers?.[side].strip !== undefined &&
  !byEdge.includes(side) &&
  !fillers[side].warnings.some(({ code }) => code === 'wide');

/** The strips to be ripped. */
const stripsOf = (closed: ClosedIn, long: Length): readonly Strip[] =>
  (['left', 'right'] as const).flatMap((side) => {
    const found = closed.fillers?.[side];
    if (!found?.strip || !found.width || !isStripAt(closed, side)) return [];
    return [{ side, wide: found.strip, width: found.width, long }];
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

/**
 * The filler strips as parts of their cases: to be ripped and cut to length with the rest, scribed when the case
 * stands. None where the room asks for none, nor while what it is of has no thickness yet.
 *
 * @returns by case
 */
export function fillerParts(
  job: Job,
  worked: ReadonlyMap<string, Result<Worked, unknown>>,
): (id: string) => readonly Part[] {
  const strips = stripsToRip(job, worked);
  return (id) => {
    const found = worked.get(id);
    if (!found?.ok) return [];
    return strips
      .filter(({ of }) => of === id)
      .flatMap(({ side, width, long }) => {
        const stock = stockOf(found.value.sizes.case, 'filler');
        const solid = job.stock.some((s) => s.id === stock && s.kind === 'stick');
        const length = given('case-stands-high', long);
        return fillerOf(found.value, { side, width, length, solid }, job.tape) ?? [];
      });
  };
}
