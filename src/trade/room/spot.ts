import { compare, equals, type Length } from '../../length/length';

/**
 * Where a reading was taken. Of a width: so high over the floor; of a height: so far from the left wall. Inches. At the
 * front or at the back of where the case will stand.
 */
export type Spot = { readonly at: Length; readonly plane: 'front' | 'back' };

/** A length at a spot. Inches. */
export type AtSpot = Spot & { readonly value: Length };

export const sameSpot = (a: Spot, b: Spot): boolean => equals(a.at, b.at) && a.plane === b.plane;

/** The spot without what was read there. */
export const spotOf = ({ at, plane }: Spot): Spot => ({ at, plane });

/** What was read there, or nothing. @example valueAt(left, spot) */
export const valueAt = (row: readonly AtSpot[], spot: Spot): Length | undefined =>
  row.find((other) => sameSpot(other, spot))?.value;

/** The first of the least of a row; nothing of an empty one. */
export const leastOf = (row: readonly AtSpot[]): AtSpot | undefined =>
  [...row].sort((a, b) => compare(a.value, b.value))[0];

/** The first of the greatest of a row; nothing of an empty one. */
export const greatestOf = (row: readonly AtSpot[]): AtSpot | undefined =>
  [...row].sort((a, b) => compare(b.value, a.value))[0];

/** The first spot that stands twice in a row: nobody can say which of the two figures is meant. */
export function readTwice(row: readonly Spot[]): Spot | undefined {
  const found = row.find((spot, k) => row.slice(0, k).some((before) => sameSpot(before, spot)));
  return found && spotOf(found);
}

/** The first spot of either row that the other has not. */
export function unmatched(
  left: readonly Spot[],
  right: readonly Spot[],
): { readonly missing: 'first' | 'second'; readonly spot: Spot } | undefined {
  const lacks = (row: readonly Spot[]) => (spot: Spot) => !row.some((other) => sameSpot(other, spot));
  const onlyLeft = left.find(lacks(right));
  if (onlyLeft) return { missing: 'second', spot: spotOf(onlyLeft) };
  const onlyRight = right.find(lacks(left));
  return onlyRight && { missing: 'first', spot: spotOf(onlyRight) };
}
