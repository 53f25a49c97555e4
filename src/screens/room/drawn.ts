import type { Job } from '../../job/job';
import { roomIn } from '../../job/room';
import { forDrawing, isPositive, isZero, type Length, subtract } from '../../length/length';
import { writeLength } from '../../length/write';
import type { CaseInRoom } from '../../plan/case-in-room';
import type { DoorFound } from '../../plan/door-plan';
import type { RoomPlan } from '../../plan/room-plan';
import type { AtSpot } from '../../trade/room/spot';
import type { WallPoint } from '../../ui/room-drawing';

/** A wall as points from the floor to the ceiling: what was read in front, `sign` to the right. */
function wallOf(row: readonly AtSpot[], high: number, sign: 1 | -1): readonly WallPoint[] {
  const points = row
    .filter(({ plane }) => plane === 'front')
    .map(({ at, value }) => ({ up: forDrawing(at), out: sign * forDrawing(value) }))
    .sort((a, b) => a.up - b.up);
  const [first, last] = [points[0], points[points.length - 1]];
  if (!first || !last)
    return [
      { up: 0, out: 0 },
      { up: high, out: 0 },
    ];
  return [{ up: 0, out: first.out }, ...points, { up: Math.max(high, last.up), out: last.out }];
}

/** The room drawn from the front, once its width and its height are read. */
export function drawnRoom(job: Job, room: RoomPlan, found: CaseInRoom | undefined) {
  const { plumb, wide, high } = room;
  if (!wide || !high) return undefined;
  const lines = plumb?.ok ? plumb.value.lines : undefined;
  const apart = lines?.apart ?? wide.value;
  const up = forDrawing(high.value);
  const size = found?.outside.stands;
  const from =
    lines && plumb?.ok
      ? forDrawing(room.allow.left) - forDrawing(plumb.value.nearLeft)
      : forDrawing(room.allow.left);
  const written = (x: Length): string => writeLength(x, job.tape);
  return {
    wide: forDrawing(apart),
    high: up,
    left: wallOf(lines?.left ?? [], up, -1),
    right: wallOf(lines?.right ?? [], up, 1),
    stands: size && { from, wide: forDrawing(size.width), high: forDrawing(size.height) },
    across: written(wide.value),
    up: written(high.value),
  };
}

const outOfPlumb = ({ value }: AtSpot): boolean => !isZero(value);

/** Whether a wall is drawn out of plumb, and so more than to scale. */
export const leans = ({ plumb }: RoomPlan): boolean =>
  plumb?.ok === true && [...plumb.value.lines.left, ...plumb.value.lines.right].some(outOfPlumb);

/** The room from above with a case in it, once its width is read. */
export function drawnPlan(job: Job, { wide, allow }: RoomPlan, found: CaseInRoom) {
  const { outside, corners, byEdge, doors } = found;
  if (!wide) return undefined;
  const { width, depth } = outside.stands;
  const over = (side: 'left' | 'right'): number | undefined => {
    const corner = corners.find((each) => each.side === side);
    return corner && forDrawing(corner.over);
  };
  const faces = roomIn(job).deep;
  const gaps = { left: allow.left, right: subtract(subtract(wide.value, allow.left), width) };
  return {
    wide: forDrawing(wide.value),
    faces: faces && forDrawing(faces),
    comesIn: { left: over('left'), right: over('right') },
    stands: { from: forDrawing(allow.left), wide: forDrawing(width), deep: forDrawing(depth) },
    strips: (['left', 'right'] as const).filter((side) => !byEdge.includes(side) && isPositive(gaps[side])),
    doors: doors.flatMap(drawnDoor),
    deep: writeLength(depth, job.tape),
  };
}

/** A door whose place is said and can be; with its leaf once that is said too. */
function drawnDoor({ opening, door }: DoorFound) {
  if (!opening?.ok) return [];
  const { wall, from, width } = opening.value;
  const drawn = { wall, from: forDrawing(from), width: forDrawing(width) };
  const leaf = door && { long: forDrawing(door.leaf), hung: door.hung, opens: door.opens };
  return [{ ...drawn, ...(leaf && { leaf }) }];
}
