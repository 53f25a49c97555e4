import type { Blocks } from './blocks';

/** Steps of area, each so many times the one before, from the smallest piece to the sheet. Measured, no source. */
const steps = 48;

/** Of one step, so many times those that are put together further are gathered before the worst are let go. */
const gathered = 2;

type Sides = { readonly least: number; readonly whole: number };

/** Blocks by their area, in steps of it: of each step the best alone are put together further. */
type Shelf = {
  /** Puts a block on its step, but where one of the same pieces is no larger either way. */
  readonly put: (block: number) => void;
  /** Whether one of so much area and waste is not yet known to be worse than those there are enough of. */
  readonly wants: (area: number, waste: number) => boolean;
  /** The best of each step, the small first; what is put on a step meanwhile comes too. */
  readonly inOrder: () => Generator<number>;
};

/**
 * An empty shelf.
 *
 * @param each blocks of one step that are put together further
 * @param area of the smallest piece, and of the sheet
 * @example shelfOf(blocks, { each: 400, least: 6, whole: 600 }).wants(6, 0) // true
 */
export function shelfOf(blocks: Blocks, { each, least, whole }: Sides & { readonly each: number }): Shelf {
  const onStep: number[][] = Array.from({ length: steps }, () => []);
  const worst = new Float64Array(steps).fill(Number.POSITIVE_INFINITY);
  const known = knownOf(blocks);
  const scale = steps / Math.log(whole / least);
  const stepOf = (area: number): number => Math.min(steps - 1, Math.floor(scale * Math.log(area / least)));
  const wasteOf = (block: number): number => {
    const area = blocks.area[block] ?? 0;
    return ((blocks.w[block] ?? 0) * (blocks.h[block] ?? 0) - area) / area;
  };
  const best = (list: readonly number[]): number[] =>
    [...list].sort((a, b) => wasteOf(a) - wasteOf(b) || a - b);
  const put = (block: number): void => {
    if (!known(block)) return;
    const step = stepOf(blocks.area[block] ?? 0);
    const list = onStep[step];
    list?.push(block);
    if (!list || list.length < gathered * each) return;
    const kept = best(list).slice(0, each);
    onStep[step] = kept;
    worst[step] = wasteOf(kept[each - 1] ?? block);
  };
  function* inOrder(): Generator<number> {
    for (let step = 0; step < steps; step += 1) {
      const done = new Set<number>();
      for (let some = best(onStep[step] ?? []); some.length > 0 && done.size < each; ) {
        for (const block of some.slice(0, each - done.size)) {
          done.add(block);
          yield block;
        }
        some = best(onStep[step] ?? []).filter((block) => !done.has(block));
      }
      onStep[step] = [];
    }
  }
  return { put, wants: (area, waste) => waste <= (worst[stepOf(area)] ?? 0) * area, inOrder };
}

/** True for a block none of the same pieces is no larger than, either way; it is known from then on. */
function knownOf({ w, h, key }: Blocks): (block: number) => boolean {
  const last = new Map<number, number>();
  const before = new Int32Array(w.length).fill(-1);
  return (block) => {
    const own = key[block] ?? 0;
    const same = last.get(own) ?? -1;
    for (let k = same; k >= 0; k = before[k] ?? -1)
      if ((w[k] ?? 0) <= (w[block] ?? 0) && (h[k] ?? 0) <= (h[block] ?? 0)) return false;
    before[block] = same;
    last.set(own, block);
    return true;
  };
}
