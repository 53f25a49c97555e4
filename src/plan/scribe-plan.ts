import { usualIn } from '../job/in-units';
import type { Job } from '../job/job';
import { type GapRead, standIn } from '../job/room';
import { absolute, add, compare, equals, inches, type Length, less, subtract, zero } from '../length/length';
import { figureIn } from '../length/metric-figures';
import { err, ok, type Result } from '../length/result';
import { type Scribe, type ScribeError, scribe } from '../trade/room/scribe';
import type { AtSpot } from '../trade/room/spot';
import { type RoomPlan, roomPlanOf } from './room-plan';

type Short = Extract<ScribeError, { readonly code: 'overhang' }>;

/** One side of a case scribed to its wall. Inches. */
export type ScribeSide = {
  readonly side: 'left' | 'right';
  /** The gaps in the order they were made, read or not. */
  readonly gaps: readonly GapRead[];
  /** How far the edge hangs over: said, or as the face frame does. */
  readonly hang: Length;
  /** What was said of it, where it was. */
  readonly said?: Length;
  readonly found?: Result<Scribe & { readonly short?: Short }, Exclude<ScribeError, Short>>;
  /** Where a gap is not what the plumb lines make it by the lowest one. */
  readonly differs?: Differs;
};

/** Read so high over the floor, and what the lines of the room make it. Inches. */
type Differs = { readonly at: Length; readonly read: Length; readonly byLines: Length };

/** So far two readings of a tape may part. Common practice, no source. Inches. */
const parting = inches(1n, 16n);

/** The edge of a plumb case runs along a plumb line: from gap to gap it changes as the wall does from its line. */
function differsOf(gaps: readonly AtSpot[], line: readonly AtSpot[], most: Length): Differs | undefined {
  const both = [...gaps]
    .sort((a, b) => compare(a.at, b.at))
    .flatMap(({ at, value: read }) => {
      const wall = line.find((spot) => spot.plane === 'front' && equals(spot.at, at));
      return wall ? [{ at, read, wall: wall.value }] : [];
    });
  const [low, ...rest] = both;
  if (!low) return undefined;
  return rest
    .map(({ at, read, wall }) => ({ at, read, byLines: add(low.read, subtract(wall, low.wall)) }))
    .find(({ read, byLines }) => less(most, absolute(subtract(read, byLines))));
}

/**
 * Whether a side is closed by scribing its edge, or by a strip: by the edge where its gaps were read and enough hangs
 * over, else by a strip.
 */
export const closedBy = ({ found }: Pick<ScribeSide, 'found'>): 'edge' | 'strip' =>
  found?.ok && !found.value.short ? 'edge' : 'strip';

const isShort = (error: ScribeError): error is Short => error.code === 'overhang';

/** What comes off all the same where too little hangs over: by how much is said beside it. */
function scribed(gaps: readonly AtSpot[], hang: Length): Exclude<ScribeSide['found'], undefined> {
  const found = scribe(gaps, hang);
  if (found.ok) return found;
  if (!isShort(found.error)) return err(found.error);
  const all = scribe(gaps, found.error.need);
  if (all.ok) return ok({ ...all.value, short: found.error });
  return isShort(all.error) ? err({ code: 'no-readings' }) : err(all.error);
}

/**
 * Both sides of a case scribed to the walls, from the gaps read down its edges.
 *
 * @param id of the case; @param room as `roomPlanOf` found it
 * @returns inches
 */
export function scribeSides(
  job: Job,
  id: string,
  room: Pick<RoomPlan, 'plumb'> = roomPlanOf(job),
): readonly ScribeSide[] {
  const stand = standIn(job, id);
  const c = job.cases.find((x) => x.id === id);
  const framed = (c?.hasFrame ? c.overhang : undefined) ?? zero;
  const { plumb } = room;
  const lines = plumb?.ok ? plumb.value.lines : undefined;
  const most = figureIn(usualIn(job), parting);
  return (['left', 'right'] as const).map((side) => {
    const gaps = stand.gaps.filter((gap) => (gap.side ?? 'left') === side);
    const said = side === 'left' ? stand.hangLeft : stand.hangRight;
    const hang = said ?? framed;
    const read = gaps.flatMap(({ at, gap }): readonly AtSpot[] =>
      at && gap ? [{ at, plane: 'front', value: gap }] : [],
    );
    const differs = lines && differsOf(read, lines[side], most);
    return {
      side,
      gaps,
      hang,
      ...(said && { said }),
      ...(read.length > 0 && { found: scribed(read, hang) }),
      ...(differs && { differs }),
    };
  });
}
