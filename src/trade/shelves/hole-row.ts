import {
  add,
  half,
  howMany,
  isNegative,
  isPositive,
  type Length,
  less,
  subtract,
  times,
} from '../../length/length';
import { toWhole } from '../../length/round';

/** How a row of holes goes up a wall: its first and its pitch, middle to middle, and the room at the top. Inches. */
type RowAt = {
  readonly span: Length;
  readonly first: Length;
  readonly pitch: Length;
  readonly top: Length;
};

/** So many holes fit; what is left over the last beside the room at the top. Below 0: short of a first one. Inches. */
type HoleRow = { readonly count: number; readonly left: Length };

/**
 * How many holes go into a row: one, and one more for each whole pitch in the room that is left over it.
 *
 * @param at from the upper face of the bottom; pitch > 0, inches
 * @returns no holes where there is no room for the first
 * @example holeRow({ span, first, pitch, top }).count // 35: Example 1 of shelves
 */
export function holeRow({ span, first, pitch, top }: RowAt): HoleRow {
  const room = subtract(subtract(span, first), top);
  if (isNegative(room) || !isPositive(pitch)) return { count: 0, left: room };
  const pitches = toWhole(howMany(room, pitch), 'floor');
  return { count: Number(pitches) + 1, left: subtract(room, times(pitch, pitches)) };
}

/** A groove across a wall, from the same face as the holes. Inches. */
export type Across = { readonly near: Length; readonly far: Length };

type HoleAt = { readonly at: Length; readonly dia: Length };

/**
 * Whether a hole comes too near a groove: less wood between them than `least`. Inches.
 *
 * @example meets({ at: inches(61n, 4n), dia: inches(1n, 4n) }, dado, inches(1n, 4n)) // true: Example 3 of shelves
 */
export function meets({ at, dia }: HoleAt, { near, far }: Across, least: Length): boolean {
  const clear = add(half(dia), least);
  return less(subtract(near, at), clear) && less(subtract(at, far), clear);
}

/** Numbers of the holes that are left out of a row, from 1 up: those too near a groove. */
export function leftOut(
  row: RowAt & { readonly dia: Length },
  grooves: readonly Across[],
  least: Length,
): readonly number[] {
  const { count } = holeRow(row);
  return Array.from({ length: count }, (_, k) => k + 1).filter((no) => {
    const at = add(row.first, times(row.pitch, BigInt(no - 1)));
    return grooves.some((groove) => meets({ at, dia: row.dia }, groove, least));
  });
}
