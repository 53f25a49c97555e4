import { usualIn } from '../job/in-units';
import type { Job } from '../job/job';
import { roomIn } from '../job/room';
import { isNegative, type Length, subtract } from '../length/length';
import type { Result } from '../length/result';
import { grainOf } from '../length/tape';
import type { Worked } from '../trade/carcass/parts';
import { cornerOver } from '../trade/room/corner';
import { type Fillers, fillersFor } from '../trade/room/fillers';
import { heightAt } from '../trade/room/level-line';
import type { AtSpot } from '../trade/room/spot';
import { type TiltError, type TiltUp, tiltUp } from '../trade/room/tilt';
import { type Outside, outsideOf } from './outside';
import { type RoomPlan, roomPlanOf } from './room-plan';
import { type WayFound, waysFor } from './way-plan';

/** One case in the room, as far as the room was read. Inches; below 0 it is so much too large. */
export type CaseInRoom = {
  readonly id: string;
  readonly outside: Outside;
  /** What is free between the walls, less both allowances, less the case. */
  readonly spareWide?: Length;
  /** What is free in height, less the gap under the ceiling, less the case. */
  readonly spareHigh?: Length;
  readonly fillers?: Fillers;
  /** Up to the ceiling at every spot, and down to the floor. */
  readonly over?: readonly AtSpot[];
  readonly under?: readonly AtSpot[];
  /** Stood up from its back, where it is to be. */
  readonly tilt?: Result<TiltUp, TiltError>;
  /** How far a side wall comes in over the depth of the case; below 0 it goes away. */
  readonly corners: readonly { readonly side: 'left' | 'right'; readonly over: Length }[];
  readonly ways: readonly WayFound[];
  /** Whether it goes in by all that was read; nothing while nothing was. */
  readonly goesIn?: boolean;
};

/** What speaks for or against a case, one reading after the other. */
const verdicts = ({ spareWide, spareHigh, tilt, ways }: Omit<CaseInRoom, 'goesIn'>): readonly boolean[] => [
  ...[spareWide, spareHigh].flatMap((spare) => (spare ? [!isNegative(spare)] : [])),
  ...(tilt ? [tilt.ok && tilt.value.passes] : []),
  ...ways.flatMap(({ found }) => (found?.ok ? [found.value.passes] : [])),
];

/**
 * A case that works out in the room of its job.
 *
 * @param room as `roomPlanOf` found it
 * @returns inches
 */
export function caseInRoom(job: Job, room: RoomPlan, worked: Worked): CaseInRoom {
  const outside = outsideOf(worked);
  const { stands, carried } = outside;
  const { allow, gap, plumb, level, wide, high } = room;
  const units = usualIn(job);
  const held = room.widest && wide;
  const found = {
    id: worked.sizes.case.id,
    outside,
    ...(held && {
      spareWide: subtract(subtract(subtract(held.value, allow.left), allow.right), stands.width),
    }),
    ...(room.highest && high && { spareHigh: subtract(subtract(high.value, gap), stands.height) }),
    ...(plumb?.ok && { fillers: fillersFor(plumb.value, { width: stands.width, allow }, units) }),
    ...(level?.ok && heightAt(level.value, stands.height)),
    ...(roomIn(job).standsUp &&
      high && {
        tilt: tiltUp(
          { height: carried.height, depth: carried.depth, ceiling: high.value },
          grainOf(job.tape),
          units,
        ),
      }),
    corners: (['left', 'right'] as const).flatMap((side) => {
      const corner = room.corners[side];
      return corner?.ok ? [{ side, over: cornerOver(corner.value, stands.depth) }] : [];
    }),
    ways: waysFor(job, carried),
  };
  const all = verdicts(found);
  return { ...found, ...(all.length > 0 && { goesIn: all.every(Boolean) }) };
}

/** Every case of a job that works out, in its room. */
export const casesInRoom = (
  job: Job,
  worked: ReadonlyMap<string, Result<Worked, unknown>>,
): readonly CaseInRoom[] => {
  const room = roomPlanOf(job);
  return [...worked.values()].flatMap((found) => (found.ok ? [caseInRoom(job, room, found.value)] : []));
};
