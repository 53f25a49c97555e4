import { rootLess, squareOf } from '../../length/diagonal';
import {
  add,
  inches,
  isPositive,
  type Length,
  less,
  longest,
  type Ratio,
  shortest,
  subtract,
  zero,
} from '../../length/length';
import { err, ok, type Result } from '../../length/result';
import { roundTo } from '../../length/round';

/** A wall of the room: `back` is the one the case stands against, `front` faces it. */
export type DoorWall = 'left' | 'right' | 'front' | 'back';

/** The opening of a door in a wall of a room taken to be square. Inches. */
export type Opening = {
  readonly wall: DoorWall;
  /** From the left corner, or of a side wall from the one at the case's wall, to where it begins, >= 0. */
  readonly from: Length;
  /** > 0. */
  readonly width: Length;
};

/** A door hung in an opening. Inches. */
export type PlacedDoor = Opening & {
  /** The leaf, from its hinge to its edge, > 0. */
  readonly leaf: Length;
  /** Hung where the opening begins, seen from that corner, or where it ends. */
  readonly hung: 'begin' | 'end';
  readonly opens: 'in' | 'out';
};

/** The room from above and the case in it, from the left corner at the case's wall. Inches. */
export type Floor = {
  readonly wide: Length;
  /** From the case's wall to the one that faces it; none where it was not read: only a side wall is then asked of. */
  readonly deep?: Length | undefined;
  readonly stands: { readonly from: Length; readonly wide: Length; readonly deep: Length };
};

export type DoorPlaceError =
  /** The opening ends past the other corner by so much; up to `most` from its own it fits. */
  | { readonly code: 'past-corner'; readonly by: Length; readonly most: Length }
  /** The opening is wider than its wall. */
  | { readonly code: 'wider-than-wall'; readonly by: Length; readonly most: Length };

/** A sideways move of the case, UP to the grain, and how much of it the wall on that side does not leave. */
export type Move = { readonly toward: 'left' | 'right'; readonly by: Length; readonly short?: Length };

export type Swing =
  /** How far the leaf keeps off the case all the way to a right angle, DOWN to the grain. */
  | { readonly code: 'clear'; readonly spare: Length }
  /** The edge of the leaf stands so far off its own wall when it strikes, DOWN to the grain; 0: it does not open. */
  | { readonly code: 'strikes'; readonly opensTo: Length; readonly moves: readonly Move[] }
  /** It opens out of the room, or away from the case. */
  | { readonly code: 'away' };

type Side = readonly [low: Length, high: Length];
/** A case as a door sees it: along its wall from the hinge the way the shut leaf lies, and out from the wall. */
type Seen = { readonly along: Side; readonly out: Side };

const isUpright = ({ wall }: Opening): boolean => wall === 'left' || wall === 'right';

/**
 * Whether an opening lies within its wall, measured from either corner of it; of one so long that is not known, nothing
 * is refused.
 *
 * @param opening inches; @param room inches
 */
export function doorPlace(
  { wall, from, width }: Opening,
  { wide, deep }: Pick<Floor, 'wide' | 'deep'>,
): Result<null, DoorPlaceError> {
  const long = wall === 'front' || wall === 'back' ? wide : deep;
  if (long && less(long, width))
    return err({ code: 'wider-than-wall', by: subtract(width, long), most: long });
  const most = long && subtract(long, width);
  if (most && less(most, from)) return err({ code: 'past-corner', by: subtract(from, most), most });
  return ok(null);
}

/** The case along x and y of the room, and as far out from a wall as it stands; none where that is not known. */
function seenFrom(door: Opening, hung: PlacedDoor['hung'], { wide, deep, stands }: Floor): Seen | undefined {
  const across: Side = [stands.from, add(stands.from, stands.wide)];
  const away: Side = [zero, stands.deep];
  const from = (far: Length, [low, high]: Side): Side => [subtract(far, high), subtract(far, low)];
  const on = isUpright(door) ? away : across;
  const end = add(door.from, door.width);
  const along: Side =
    hung === 'end' ? from(end, on) : [subtract(on[0], door.from), subtract(on[1], door.from)];
  switch (door.wall) {
    case 'left':
      return { along, out: across };
    case 'right':
      return { along, out: from(wide, across) };
    case 'back':
      return { along, out: away };
    case 'front':
      return deep && { along, out: from(deep, away) };
  }
}

const square = (x: Length): Ratio => x.mul(x) as unknown as Ratio;

/** How far off its wall the edge of a leaf so long stands when it first meets the case. */
function opensTo({ along, out }: Seen, leaf: Length, grain: Length): Length {
  const near = longest(out[0], zero);
  const far = squareOf(along[1], near);
  if (far.gte(square(leaf))) return roundTo(near, grain, 'floor').value; // the edge itself meets its face
  const meets = square(leaf).mul(square(near)).div(far) as Ratio;
  return rootLess(meets, zero, { grain, mode: 'floor' });
}

/** What takes the case out of the swing, to each side that can. */
function movesOf(door: PlacedDoor, floor: Floor, { along, out }: Seen, grain: Length): readonly Move[] {
  const { leaf, wall, hung } = door;
  const up = (square: Ratio, less: Length) => rootLess(square, less, { grain, mode: 'ceil' });
  const rest = (near: Length): Ratio => square(leaf).sub(square(longest(near, zero))) as Ratio;
  const { from, wide } = floor.stands;
  const free = { left: from, right: subtract(floor.wide, add(from, wide)) };
  const move = (toward: Move['toward'], by: Length): Move =>
    less(free[toward], by) ? { toward, by, short: subtract(by, free[toward]) } : { toward, by };
  if (isUpright(door)) return [move(wall === 'left' ? 'right' : 'left', up(rest(along[0]), out[0]))];
  const on = hung === 'begin' ? 'right' : 'left';
  return [
    move(on, up(rest(out[0]), along[0])),
    move(on === 'right' ? 'left' : 'right', roundTo(along[1], grain, 'ceil').value),
  ];
}

/**
 * Whether the leaf of a door, opened to a right angle, strikes the case as it stands: a quarter circle about the hinge
 * against a rectangle, settled by squares.
 *
 * @param door that `doorPlace` takes; @param floor inches; @param grain of the tape, inches, > 0
 * @returns inches; nothing where how deep the room is must be known and is not
 * @example doorSwing(door, floor, inches(1n, 16n)) // Example 16 of room
 */
export function doorSwing(door: PlacedDoor, floor: Floor, grain: Length): Swing | undefined {
  if (door.opens === 'out') return { code: 'away' };
  const seen = seenFrom(door, door.hung, floor);
  if (!seen) return undefined;
  const { along, out } = seen;
  if (!isPositive(along[1]) || !isPositive(out[1])) return { code: 'away' };
  const nearest = squareOf(longest(along[0], zero), longest(out[0], zero));
  if (nearest.gte(square(door.leaf)))
    return { code: 'clear', spare: rootLess(nearest, door.leaf, { grain, mode: 'floor' }) };
  return {
    code: 'strikes',
    opensTo: opensTo(seen, door.leaf, grain),
    moves: movesOf(door, floor, seen, grain),
  };
}

/** Nearer to a side wall than the widest filler nobody gets by. Common practice, no source. Inches. */
const noWayBy = inches(3n);

/**
 * How far the case stands before the opening itself: of a door in its own wall, or in a side wall it stands close to.
 *
 * @returns inches, > 0
 */
export function standsBefore(door: Opening, floor: Floor): Length | undefined {
  const seen = door.wall === 'front' ? undefined : seenFrom(door, 'begin', floor);
  if (!seen || !less(seen.out[0], noWayBy)) return undefined;
  const by = subtract(shortest(seen.along[1], door.width), longest(seen.along[0], zero));
  return isPositive(by) ? by : undefined;
}
