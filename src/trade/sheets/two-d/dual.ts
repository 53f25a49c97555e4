/**
 * A dual feasible function for a sheet `room` wide, in whole numbers: sizes that add up to no more than x have values
 * that add up to no more than its value at x (it is superadditive), so its values may stand for sizes in an area
 * bound.
 */
export type Dual = (x: number) => number;

/** Sizes as they are. */
export const plainly: Dual = (x) => x;

/**
 * u^(k): what lies between two k + 1-ths of the room is rounded down to a k-th of it. Values are k times as large.
 *
 * @param room > 0
 * @param k whole, >= 1
 * @example steps(10, 1)(6) // 10: more than half takes all the room
 * Source: S. P. Fekete, J. Schepers, "New classes of fast lower bounds for bin packing problems", Math. Program. 91
 * (2001).
 */
export function steps(room: number, k: number): Dual {
  return (x) => (((k + 1) * x) % room === 0 ? k * x : room * Math.floor(((k + 1) * x) / room));
}

/**
 * f0: what is smaller than `small` counts nothing, and what leaves less than it takes all the room.
 *
 * @param room > 0
 * @param small whole, 1 to half the room
 * @example dropped(10, 3)(8) // 10
 * Source: J. Carlier, F. Clautiaux, A. Moukrim, "New reduction procedures and lower bounds for the two-dimensional bin
 * packing problem with fixed orientation", Computers & OR 34 (2007).
 */
export function dropped(room: number, small: number): Dual {
  return (x) => {
    if (x > room - small) return room;
    return x < small ? 0 : x;
  };
}

/**
 * f2: sizes up to half the room in whole `small`s, larger ones by what they leave. Values are doubled.
 *
 * @param room > 0
 * @param small whole, 1 to half the room
 * @example counted(10, 3)(6) // 2 x (3 - 1) = 4
 * Source: as `dropped`.
 */
export function counted(room: number, small: number): Dual {
  const all = Math.floor(room / small);
  return (x) => {
    if (2 * x === room) return all;
    return 2 * x > room ? 2 * (all - Math.floor((room - x) / small)) : 2 * Math.floor(x / small);
  };
}

/** At most so many parameters of each family are tried: the bound stays a matter of milliseconds. */
const mostSmalls = 40;

/** k of u^(k): beyond that hardly ever the best. */
const mostSteps = 12;

/** Some of a list, evenly spread, the first and last kept. */
function thinned(list: readonly number[], most: number): readonly number[] {
  if (list.length <= most) return list;
  return list.filter(
    (_, k) => k === 0 || Math.floor((k * most) / list.length) !== Math.floor(((k - 1) * most) / list.length),
  );
}

/**
 * The functions worth trying: their parameters are sizes that occur, where the values jump.
 *
 * @param room > 0
 * @param sizes whole, > 0
 * @example dualsFor(10, [3, 6]).length // 18
 */
export function dualsFor(room: number, sizes: readonly number[]): readonly Dual[] {
  const jumps = sizes
    .flatMap((x) => [x, x + 1, room - x, room - x + 1])
    .filter((x) => x >= 1 && 2 * x <= room);
  const smalls = thinned(
    [...new Set(jumps)].sort((a, b) => a - b),
    mostSmalls,
  );
  const ks = Array.from({ length: mostSteps }, (_, k) => k + 1);
  return [
    plainly,
    ...ks.map((k) => steps(room, k)),
    ...smalls.map((x) => dropped(room, x)),
    ...smalls.map((x) => counted(room, x)),
  ];
}
