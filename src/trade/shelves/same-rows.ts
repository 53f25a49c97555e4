import { equals, type Length } from '../../length/length';
import type { Inside } from '../carcass/case';
import type { Sizes } from '../carcass/sizes';
import type { RowName } from './bore';
import { type Pins, pinsOf } from './pins';
import { type Strips, stripsOf } from './strips';

const ofPins = ({ dia, deep, pitch, first, top, front, rear }: Pins): readonly Length[] => [
  dia,
  deep,
  pitch,
  first,
  top,
  front,
  rear,
];

const ofStrips = ({ front, rear, width, deep, proud, pieces }: Strips): readonly Length[] => [
  front,
  rear,
  width,
  deep,
  proud,
  ...pieces.map(({ long }) => long),
];

const figures = (sizes: Sizes, i: Inside): readonly Length[] => {
  const [pins, strips] = [pinsOf(sizes, i), stripsOf(sizes, i)];
  return pins ? ofPins(pins) : strips ? ofStrips(strips) : [];
};

/**
 * Loose shelves that lie in the holes, or on the strips, of a set before them in the list: one of their bay with every
 * figure the same. What they share is cut once.
 *
 * @returns the first such set; none where they have their own
 * @example sameRows(sizes, second)?.id // 's': Example 11 of shelves
 */
export function sameRows(sizes: Sizes, i: Inside): Inside | undefined {
  const own = figures(sizes, i);
  const isSame = (other: Inside): boolean => {
    const found = figures(sizes, other);
    return found.length === own.length && found.every((x, k) => equals(x, own[k] ?? x));
  };
  if (own.length === 0) return undefined;
  const { inside } = sizes.case;
  const before = inside.slice(
    0,
    inside.findIndex(({ id }) => id === i.id),
  );
  const ofKind = (x: Inside) => x.kind === 'loose' && x.bay === i.bay && isOnStrips(x) === isOnStrips(i);
  return before.find((x) => ofKind(x) && isSame(x));
}

/** The sets of loose shelves that lie in the holes, or on the strips, of this one. */
const sharedBy = (sizes: Sizes, i: Inside): readonly string[] =>
  sizes.case.inside.filter((other) => sameRows(sizes, other)?.id === i.id).map(({ id }) => id);

/** A row of a set, and by which ids it was known while sets that share it had rows of their own. */
export function rowOf(
  sizes: Sizes,
  i: Inside,
  row: RowName,
): { readonly id: string; readonly also?: readonly string[] } {
  const also = sharedBy(sizes, i).map((id) => `${id}~${row}`);
  return { id: `${i.id}~${row}`, ...(also.length > 0 ? { also } : {}) };
}

const isOnStrips = ({ heldBy }: Inside): boolean => heldBy === 'strips';
