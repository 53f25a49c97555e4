import type { Length } from '../length/length';
import { badFields, bayFields, placeFields, readingFields } from './fields';
import { pick, type Tree } from './tree';

/** The things of a list, each under a path of its own: two hands that add one at the same time add two. */
type Own = readonly (readonly [string, Tree])[];

/** Names for lengths that were kept in one list: by what they say, so that none is taken for another when one goes. */
function idsBySize(list: readonly Length[]): readonly string[] {
  const seen = new Map<string, number>();
  return list.map(({ n, d }) => {
    const id = `${n}d${d}`.slice(0, 20);
    const k = (seen.get(id) ?? 0) + 1;
    seen.set(id, k);
    return k === 1 ? id : `${id}x${k}`;
  });
}

/** Thicknesses read, in the order they were, each with the id it is kept by. */
export function readingsOf(list: readonly Length[], own: Own) {
  const sizes = new Map(idsBySize(list).map((id, k) => [id, list[k]]));
  for (const [id, node] of own) {
    const { size, gone } = pick(readingFields, node);
    if (gone) sizes.delete(id);
    else if (size) sizes.set(id, size);
  }
  const there = [...sizes].flatMap(([id, size]) => (size ? [{ id, size }] : []));
  return { readings: there.map(({ size }) => size), readingIds: there.map(({ id }) => id) };
}

/**
 * Places given one by one. One taken away leaves a gap: the others keep their numbers. Once in a list, the number is
 * the id.
 */
export function placesOf(list: readonly (Length | undefined)[], own: Own) {
  const places = new Map(list.map((at, k) => [`${k + 1}`, at]));
  for (const [id, node] of own) {
    const { at, gone } = pick(placeFields, node);
    places.set(id, gone ? undefined : (at ?? places.get(id)));
  }
  return { at: [...places.values()], ...(own.length > 0 ? { ids: [...places.keys()] } : {}) };
}

/** A bad place of a stick, off its squared end, inches; an end not said yet is undefined. */
export type BadPlace = { readonly id: string; readonly from?: Length; readonly to?: Length };

type Ends = { readonly from: Length | undefined; readonly to: Length | undefined };

/** Bad places of a stick: once from, to, from, to … in one list. */
export function badPlacesOf(list: readonly Length[], own: Own): readonly BadPlace[] {
  const pairs = list.flatMap((from, k) => (k % 2 === 0 ? [{ from, to: list[k + 1] }] : []));
  const ids = idsBySize(pairs.map(({ from }) => from));
  const places = new Map<string, Ends>(pairs.map((pair, k) => [ids[k] ?? '', pair]));
  for (const [id, node] of own) {
    const { gone, from, to } = pick(badFields, node);
    const before = places.get(id);
    if (gone) places.delete(id);
    else places.set(id, from ? { from, to } : { from: before?.from, to: to ?? before?.to });
  }
  return [...places].map(([id, { from, to }]) => ({ id, ...(from && { from }), ...(to && { to }) }));
}

/**
 * Bays with a width of their own, from the left; once in one list, and `open` where that width was taken away again.
 */
export function baysOf(list: readonly (Length | undefined)[], own: Own): readonly (Length | undefined)[] {
  const bays = [...list];
  for (const [id, node] of own) {
    const { wide, open } = pick(bayFields, node);
    bays[Number(id.slice(1)) - 1] = open ? undefined : wide;
  }
  return Array.from(bays);
}
