import { usualIn } from '../job/in-units';
import type { Job } from '../job/job';
import { roomIn } from '../job/room';
import { type Length, subtract, zero } from '../length/length';
import type { Result } from '../length/result';
import { grainOf } from '../length/tape';
import type { Units } from '../length/units';
import type { Worked } from '../trade/carcass/parts';
import { cornerOver } from '../trade/room/corner';
import type { FillerWarning } from '../trade/room/fillers';
import { heightAt } from '../trade/room/level-line';
import type { CaseSize } from '../trade/room/lying';
import type { AtSpot } from '../trade/room/spot';
import { greatestHeight, type TiltError, type TiltUp, tiltUp } from '../trade/room/tilt';
import { type ClosedIn, closedIn } from './closing-plan';
import { type DoorFound, doorsFor } from './door-plan';
import { type Outside, outsideOf } from './outside';
import { type RoomPlan, roomPlanOf } from './room-plan';
import { type Standing, standingOf, type Verdict, verdictOf } from './room-verdict';
import { type WayFound, waysFor } from './way-plan';

/** One case in the room, as far as the room was read. Inches; below 0 it is so much too large. */
export type CaseInRoom = {
  readonly id: string;
  readonly outside: Outside;
  /** What is free between the walls, less both allowances, less the case. */
  readonly spareWide?: Length;
  /** What is free in height, less the gap under the ceiling, less the case. */
  readonly spareHigh?: Length;
  /** Up to the ceiling at every spot, and down to the floor. */
  readonly over?: readonly AtSpot[];
  readonly under?: readonly AtSpot[];
  /** Stood up from its back, where it is to be; how it comes to stand says whether it must be. */
  readonly tilt?: Result<TiltUp, TiltError>;
  readonly standing: Standing;
  /** The highest case so deep that can be stood up there; of one that cannot. */
  readonly tiltsAt?: Length;
  /** How far a side wall comes in over the depth of the case; below 0 it goes away. */
  readonly corners: readonly { readonly side: 'left' | 'right'; readonly over: Length }[];
  readonly ways: readonly WayFound[];
  /** What each door of the room whose place was said does to it as it stands. */
  readonly doors: readonly DoorFound[];
} & ClosedIn &
  Verdict;

/**
 * A case that works out in the room of its job.
 *
 * @param room as `roomPlanOf` found it
 * @returns inches
 */
export function caseInRoom(job: Job, room: RoomPlan, worked: Worked): CaseInRoom {
  const outside = outsideOf(worked);
  const { stands, carried } = outside;
  const { allow, gap, level, wide, high } = room;
  const units = usualIn(job);
  const held = room.widest && wide;
  const ways = waysFor(job, carried);
  const found = {
    id: worked.sizes.case.id,
    outside,
    ...(held && {
      spareWide: subtract(subtract(subtract(held.value, allow.left), allow.right), stands.width),
    }),
    ...(room.highest && high && { spareHigh: subtract(subtract(high.value, gap), stands.height) }),
    ...closedIn(job, room, { id: worked.sizes.case.id, width: stands.width }),
    ...(level?.ok && heightAt(level.value, stands.height)),
    ...(high && tiltOf(carried, high.value, { grain: grainOf(job.tape), units })),
    corners: (['left', 'right'] as const).flatMap((side) => {
      const corner = room.corners[side];
      return corner?.ok ? [{ side, over: cornerOver(corner.value, stands.depth) }] : [];
    }),
    ways,
    doors: doorsFor(job, room, stands),
    standing: standingOf(roomIn(job).standsUp, ways),
  };
  return { ...found, ...verdictOf(found) };
}

type TiltAt = { readonly grain: Length; readonly units: Units | undefined };

/** Whether it can be stood up, and where it cannot, how high one as deep may be. */
function tiltOf(
  { height, depth }: CaseSize,
  ceiling: Length,
  { grain, units }: TiltAt,
): Pick<CaseInRoom, 'tilt' | 'tiltsAt'> {
  const tilt = tiltUp({ height, depth, ceiling }, grain, units);
  if (tilt.ok && tilt.value.passes) return { tilt };
  const most = greatestHeight(ceiling, { gap: zero, depth }, grain);
  return { tilt, ...(most.ok && { tiltsAt: most.value.value }) };
}

/** Every case of a job that works out, in its room. */
export const casesInRoom = (
  job: Job,
  worked: ReadonlyMap<string, Result<Worked, unknown>>,
): readonly CaseInRoom[] => {
  const room = roomPlanOf(job);
  return [...worked.values()].flatMap((found) => (found.ok ? [caseInRoom(job, room, found.value)] : []));
};

/** What is to be warned of at one side; where its edge is scribed, no strip can be too narrow or too wide. */
export const warningsAt = (
  { fillers, byEdge }: Pick<CaseInRoom, 'fillers' | 'byEdge'>,
  side: 'left' | 'right',
): readonly FillerWarning[] =>
  (fillers?.[side].warnings ?? []).filter(({ code }) => code === 'binds' || !byEdge.includes(side));
