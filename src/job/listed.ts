import type { Length } from '../length/length';
import { badFields, bayFields, placeFields, readingFields } from './fields';
import { pick, type Tree } from './tree';

/** The things of a list, each under a path of its own (M15). */
type Own = readonly (readonly [string, Tree])[];

/** Ids for the lengths of an old list, made of their values: an id stays the same when another length goes. */
function idsBySize(list: readonly Length[]): readonly string[] {
  const seen = new Map<string, number>();
  return list.map(({ n, d }) => {
    const id = `${n}d${d}`.slice(0, 20);
    const k = (seen.get(id) ?? 0) + 1;
    seen.set(id, k);
    return k === 1 ? id : `${id}x${k}`;
  });
}

/** Thickness readings in the order they were taken, and the id each is kept by. */
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
 * Places given one by one. One taken away leaves a gap, so that the others keep their numbers. In an old list the
 * number is the id.
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

/** Bad places of a stick. An old list holds from, to, from, to … */
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

/** Bays with a width of their own, from the left, read over an old list; `open` takes a width away. */
export function baysOf(list: readonly (Length | undefined)[], own: Own): readonly (Length | undefined)[] {
  const bays = [...list];
  for (const [id, node] of own) {
    const { wide, open } = pick(bayFields, node);
    bays[Number(id.slice(1)) - 1] = open ? undefined : wide;
  }
  return Array.from(bays);
}
