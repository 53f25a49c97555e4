import { type Blocks, insideOf } from './blocks';
import type { Work } from './tight-blocks';

/** Work of a block looked at. Measured, no source. */
const lookWork = 2;

/** Blocks looked at between two pauses. */
const breath = 20_000;

/**
 * So many blocks that hold all pieces together, each piece once.
 *
 * @param full the blocks to choose from, one for each choice of pieces
 * @param work counted up; ends the looking at `until`
 * @returns the blocks; undefined where none were found
 * @example yield* cover(blocks, full, { sheets: 2, work })
 */
export function* cover(
  blocks: Blocks,
  full: readonly number[],
  { sheets, work }: { readonly sheets: number; readonly work: Work },
): Generator<undefined, readonly number[] | undefined> {
  const byKey = new Map(full.map((block) => [blocks.key[block] ?? 0, block]));
  const lists = full.map((block) => insideOf(blocks, block));
  const having = blocks.counts.map((_, sort) =>
    lists.flatMap((list, k) => ((list[sort] ?? 0) > 0 ? [k] : [])),
  );
  let looked = 0;

  /** A sheet has to hold the sort that fewest blocks have: those are tried. */
  function* rest(
    left: readonly number[],
    key: number,
    many: number,
  ): Generator<undefined, readonly number[] | undefined> {
    if (many === 1) {
      const last = byKey.get(key);
      return last === undefined ? undefined : [last];
    }
    const wanted = left.flatMap((n, sort) => (n > 0 ? [sort] : []));
    const rare = wanted.reduce(
      (a, b) => ((having[b]?.length ?? 0) < (having[a]?.length ?? 0) ? b : a),
      wanted[0] ?? 0,
    );
    for (const k of having[rare] ?? []) {
      if (work.work >= work.until) return undefined;
      work.work += lookWork;
      looked += 1;
      if (looked % breath === 0) yield undefined;
      const [list, block] = [lists[k] ?? new Uint8Array(), full[k] ?? 0];
      if (list.some((n, sort) => n > (left[sort] ?? 0))) continue;
      const less = left.map((n, sort) => n - (list[sort] ?? 0));
      const found = yield* rest(less, key - (blocks.key[block] ?? 0), many - 1);
      if (found) return [block, ...found];
    }
    return undefined;
  }
  return yield* rest(blocks.counts, blocks.all, sheets);
}
