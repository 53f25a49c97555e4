import { usualIn } from '../job/in-units';
import type { Job } from '../job/job';
import { type Across, type Room, roomIn, type Upright } from '../job/room';
import type { Length } from '../length/length';
import type { Result } from '../length/result';
import type { Rounded } from '../length/round';
import { grainOf } from '../length/tape';
import { type Corner, type CornerError, cornerOf } from '../trade/room/corner';
import { type Allowances, greatestWidth, type WidthError } from '../trade/room/greatest-width';
import { type Level, type LevelError, levelHeight } from '../trade/room/level-line';
import { type Plumb, type PlumbError, plumbWidth } from '../trade/room/plumb';
import { type Row, type RowError, rowOf, type TapeUse } from '../trade/room/row';
import type { AtSpot, Spot } from '../trade/room/spot';
import { greatestHeight, type HeightError, type HeightLimit } from '../trade/room/tilt';
import { type UsualRoom, usualRoom } from '../trade/room/usual';

/** What is still to be said before a reading counts. */
export type RoomAsk = 'apart' | 'body' | 'at-across' | 'at-upright';

/** What stands between the walls, or between floor and ceiling: where the lines hang is known, or only the least. */
type Free = { readonly value: Length; readonly by: 'lines' | 'least' };

/** The room worked out. Inches; what nothing was read for is not there. */
export type RoomPlan = {
  readonly usual: UsualRoom;
  readonly allow: Allowances;
  readonly gap: Length;
  readonly asks: readonly RoomAsk[];
  readonly widths?: Result<Row, RowError>;
  readonly plumb?: Result<Plumb, PlumbError>;
  readonly wide?: Free;
  readonly widest?: Result<Rounded, WidthError>;
  readonly heights?: Result<Row, RowError>;
  readonly level?: Result<Level, LevelError>;
  readonly high?: Free;
  readonly highest?: Result<{ readonly value: Length; readonly limit: HeightLimit }, HeightError>;
  readonly corners: Readonly<Partial<Record<'left' | 'right', Result<Corner, CornerError>>>>;
};

/** A spot as it was said: at the front where nothing else is. */
const spotOf = ({ at, plane = 'front' }: Across | Upright): Spot | undefined => at && { at, plane };

/** What was read at every spot that has its place and its reading. */
const readAt = <T extends Across | Upright>(
  spots: readonly T[],
  reading: (spot: T) => Length | undefined,
): readonly AtSpot[] =>
  spots.flatMap((each) => {
    const [spot, value] = [spotOf(each), reading(each)];
    return spot && value ? [{ ...spot, value }] : [];
  });

/** How the tape was used; the body that is not said yet is asked for. */
const tapeUse = (room: Room, usual: UsualRoom): TapeUse => ({
  ...(room.burned ? { burned: room.burnedAt ?? usual.burned } : {}),
  ...(room.inside && room.body ? { body: room.body } : {}),
});

function asksOf(room: Room): readonly RoomAsk[] {
  const { spotsAcross, spotsUpright } = room;
  const offsets = spotsAcross.some(({ left, right }) => left || right);
  const read = [...spotsAcross.map(({ wide }) => wide), ...spotsUpright.map(({ high }) => high)];
  return [
    ...(offsets && !room.apart ? (['apart'] as const) : []),
    ...(bodyUnsaid(room) && read.some((x) => x) ? (['body'] as const) : []),
    ...(spotsAcross.some(({ at }) => !at) ? (['at-across'] as const) : []),
    ...(spotsUpright.some(({ at }) => !at) ? (['at-upright'] as const) : []),
  ];
}

/** Without the body of the tape nothing read straight is what it says; what was read from the lines stands. */
const bodyUnsaid = (room: Room): boolean => room.inside === true && !room.body;

/** By the lines where they are hung, else the least that was read; nothing where either is refused. */
function freeOf(byLines: Length | 'refused' | undefined, read: RoomPlan['widths']): Free | undefined {
  if (byLines === 'refused' || (read && !read.ok)) return undefined;
  if (byLines) return { value: byLines, by: 'lines' };
  return read && { value: read.value.least.value, by: 'least' };
}

type Acrosswise = Pick<RoomPlan, 'widths' | 'plumb' | 'wide'>;

function acrossOf(room: Room, tape: TapeUse): Acrosswise {
  const wides = bodyUnsaid(room) ? [] : readAt(room.spotsAcross, ({ wide }) => wide);
  const widths = wides.length > 0 ? rowOf(wides, tape) : undefined;
  const left = readAt(room.spotsAcross, (spot) => spot.left);
  const right = readAt(room.spotsAcross, (spot) => spot.right);
  const lines = room.apart && left.length + right.length > 0 ? { apart: room.apart, left, right } : undefined;
  const plumb = lines && plumbWidth(widths?.ok ? { ...lines, across: widths.value } : lines);
  const byLines = plumb && (plumb.ok ? plumb.value.width : 'refused');
  const wide = freeOf(byLines, widths);
  return { ...(widths && { widths }), ...(plumb && { plumb }), ...(wide && { wide }) };
}

type Upwards = Pick<RoomPlan, 'heights' | 'level' | 'high'>;

function upwardsOf(job: Job, tape: TapeUse): Upwards {
  const room = roomIn(job);
  const { spotsUpright } = room;
  const highs = bodyUnsaid(room) ? [] : readAt(spotsUpright, ({ high }) => high);
  const heights = highs.length > 0 ? rowOf(highs, tape) : undefined;
  const drops = readAt(spotsUpright, ({ drop }) => drop);
  const rises = readAt(spotsUpright, ({ rise }) => rise);
  const line = drops.length + rises.length > 0 ? { drops, rises } : undefined;
  const level = line && levelHeight(heights?.ok ? { ...line, upright: heights.value } : line, usualIn(job));
  const byLine = level && (level.ok ? level.value.height : 'refused');
  const high = freeOf(byLine, heights);
  return { ...(heights && { heights }), ...(level && { level }), ...(high && { high }) };
}

function cornersOf({ corners }: Room): RoomPlan['corners'] {
  const found = (['left', 'right'] as const).flatMap((side) => {
    const { back, side: along, across } = corners[side] ?? {};
    return back && along && across ? [[side, cornerOf({ back, side: along, across })] as const] : [];
  });
  return Object.fromEntries(found);
}

/**
 * The room of a job worked out from what was read: what is free between its walls, between floor and ceiling, and the
 * greatest case that goes in.
 *
 * @param job its room may be wholly unread
 * @returns inches
 */
export function roomPlanOf(job: Job): RoomPlan {
  const room = roomIn(job);
  const usual = usualRoom(usualIn(job));
  const tape = tapeUse(room, usual);
  const grain = grainOf(job.tape);
  const allow = { left: room.allowLeft ?? usual.allow, right: room.allowRight ?? usual.allow };
  const gap = room.ceilingGap ?? usual.ceilingGap;
  const [across, upwards] = [acrossOf(room, tape), upwardsOf(job, tape)];
  const { wide } = across;
  const { high } = upwards;
  return {
    usual,
    allow,
    gap,
    asks: asksOf(room),
    ...across,
    ...upwards,
    ...(wide ? { widest: greatestWidth(wide.value, allow, grain) } : {}),
    ...(high ? { highest: greatestHeight(high.value, { gap }, grain) } : {}),
    corners: cornersOf(room),
  };
}
