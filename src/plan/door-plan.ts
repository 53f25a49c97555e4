import type { Job } from '../job/job';
import { type Room, roomIn, type WayRead } from '../job/room';
import { type Length, subtract } from '../length/length';
import { ok, type Result } from '../length/result';
import { grainOf } from '../length/tape';
import {
  type DoorPlaceError,
  doorPlace,
  doorSwing,
  type Floor,
  type Opening,
  type PlacedDoor,
  type Swing,
  standsBefore,
} from '../trade/room/door-swing';
import type { CaseSize } from '../trade/room/lying';
import type { RoomPlan } from './room-plan';
import { kindOf } from './way-plan';

/** What is still to be said of a door in the room; `wide` is how wide the room is. */
export type DoorField = 'corner' | 'fromCorner' | 'width' | 'hung' | 'swing' | 'deep' | 'wide';

/** A door of the way in whose wall was said, and one case in the room. Inches. */
export type DoorFound = {
  readonly way: WayRead;
  readonly asks: readonly DoorField[];
  /** Its opening, once its place is said. */
  readonly opening?: Result<Opening, DoorPlaceError>;
  /** The same with its leaf, once that is said: as wide as the opening where it was not measured. */
  readonly door?: PlacedDoor;
  readonly swing?: Swing;
  /** How far the case stands before the opening itself. */
  readonly before?: Length;
};

const isAside = ({ wall }: WayRead): boolean => wall === 'left' || wall === 'right';

/** Whether it must be known how deep the room is. */
export const wantsDepth = (way: WayRead): boolean =>
  way.wall === 'front' || (isAside(way) && way.corner === 'second');

const fields = ['corner', 'fromCorner', 'width', 'hung', 'swing'] as const;

function asksOf(way: WayRead, { deep }: Room, wide: Length | undefined): readonly DoorField[] {
  return [
    ...fields.filter((field) => !way[field]),
    ...(wantsDepth(way) && !deep ? (['deep'] as const) : []),
    ...(wide ? [] : (['wide'] as const)),
  ];
}

/** Its opening, measured from the corner it has in the trade's reckoning. */
function openingOf(
  way: WayRead,
  room: Pick<Floor, 'wide' | 'deep'>,
): Result<Opening, DoorPlaceError> | undefined {
  const { wall, corner, fromCorner: from, width } = way;
  if (!wall || !corner || !from || !width || (wantsDepth(way) && !room.deep)) return undefined;
  const placed = doorPlace({ wall, from, width }, room);
  if (!placed.ok) return placed;
  const long = isAside(way) ? room.deep : room.wide;
  if (corner === 'first' || !long) return ok({ wall, from, width });
  return ok({ wall, from: subtract(subtract(long, from), width), width });
}

function doorOf(
  { corner, hung, swing, leaf }: WayRead,
  opening: Result<Opening, DoorPlaceError> | undefined,
): PlacedDoor | undefined {
  if (!opening?.ok || !hung || !swing) return undefined;
  const atBegin = (hung === 'near') === (corner === 'first');
  const { value } = opening;
  return { ...value, leaf: leaf ?? value.width, hung: atBegin ? 'begin' : 'end', opens: swing };
}

/**
 * The doors of the room whose wall was said, in the order of the way in, and what each does to a case that stands at
 * its left allowance.
 *
 * @param room as `roomPlanOf` found it; @param stands the case as it stands, inches; none of a room without one
 */
export function doorsFor(job: Job, { wide, allow }: RoomPlan, stands?: CaseSize): readonly DoorFound[] {
  const room = roomIn(job);
  const grain = grainOf(job.tape);
  return room.ways.flatMap((way): readonly DoorFound[] => {
    if (kindOf(way) !== 'doorway' || !way.wall) return [];
    const asks = asksOf(way, room, wide?.value);
    if (!wide) return [{ way, asks }];
    const inside = { wide: wide.value, deep: room.deep };
    const opening = openingOf(way, inside);
    const door = doorOf(way, opening);
    const found = { way, asks, ...(opening && { opening }), ...(door && { door }) };
    if (!stands) return [found];
    const floor: Floor = {
      ...inside,
      stands: { from: allow.left, wide: stands.width, deep: stands.depth },
    };
    const swing = door && doorSwing(door, floor, grain);
    const before = opening?.ok ? standsBefore(opening.value, floor) : undefined;
    return [{ ...found, ...(swing && { swing }), ...(before && { before }) }];
  });
}

/** Whether a door of the room speaks against the case as it stands. */
export const isInTheWay = ({ swing, before }: DoorFound): boolean =>
  before !== undefined || swing?.code === 'strikes';
