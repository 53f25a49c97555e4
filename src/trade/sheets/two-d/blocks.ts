import { type Nest, rowOf } from './nest';
import { alongX, alongY } from './packing';
import type { PieceTable } from './stock';

/** Pieces of one size, by number, each as often as there is of it. `turn`: the other way is another way. */
export type Sort = {
  readonly w: number;
  readonly h: number;
  readonly turn: boolean;
  readonly pieces: readonly number[];
};

/** Pieces by size. @example sortsOf(stock).length */
export function sortsOf({ w, h, turn, count }: PieceTable): readonly Sort[] {
  const sorts = new Map<string, Sort & { readonly pieces: number[] }>();
  for (const [k, n] of count.entries()) {
    const [own, high] = [w[k] ?? 0, h[k] ?? 0];
    const name = [own, high, turn[k]].join();
    const sort = sorts.get(name) ?? { w: own, h: high, turn: turn[k] === 1, pieces: [] };
    for (let t = 0; t < n; t += 1) sort.pieces.push(k);
    if (n > 0) sorts.set(name, sort);
  }
  return [...sorts.values()];
}

/**
 * Blocks by number: rectangles put together of pieces, and of blocks. Mutable: the inside of a search. `key`: what a
 * block is made of as one number; those of two blocks put together are added.
 */
export type Blocks = {
  /** How many there are. */
  n: number;
  readonly w: Float64Array;
  readonly h: Float64Array;
  readonly area: Float64Array;
  readonly key: Float64Array;
  /** Pieces there are of each sort, and the key of all of them. */
  readonly counts: readonly number[];
  readonly all: number;
  /** The key of one piece of each sort. */
  readonly one: readonly number[];
  /** How many of each sort are in a block, block by block. */
  readonly inside: Uint8Array;
  /**
   * The two it is put together of, the second taken from -1 where one lies over the other; of a piece alone, its sort
   * taken from -1, and 1 where it is turned.
   */
  readonly first: Int32Array;
  readonly second: Int32Array;
};

/** No more pieces of a size are told apart. */
const mostOfSort = 255;

/** True where what a block is made of is one whole number. @example areTold(sortsOf(stock)) */
export const areTold = (sorts: readonly Sort[]): boolean =>
  sorts.every(({ pieces }) => pieces.length <= mostOfSort) &&
  sorts.reduce((product, { pieces }) => product * (pieces.length + 1), 1) <= Number.MAX_SAFE_INTEGER;

/**
 * No blocks yet.
 *
 * @param sorts such as `areTold` says yes to @param room blocks at most
 * @example noBlocks(sortsOf(stock), 1000).n // 0
 */
export function noBlocks(sorts: readonly Sort[], room: number): Blocks {
  const list = () => new Float64Array(room);
  const counts = sorts.map(({ pieces }) => pieces.length);
  const one: number[] = [];
  let ways = 1;
  for (const count of counts) {
    one.push(ways);
    ways *= count + 1;
  }
  return {
    n: 0,
    ...{ w: list(), h: list(), area: list(), key: list() },
    ...{ counts, all: ways - 1, one },
    inside: new Uint8Array(room * sorts.length),
    ...{ first: new Int32Array(room), second: new Int32Array(room) },
  };
}

/** A piece alone, as given or turned. */
export function addPiece(blocks: Blocks, sort: number, { w, h }: Sort, isTurned: boolean): number {
  const own = blocks.n;
  blocks.w[own] = isTurned ? h : w;
  blocks.h[own] = isTurned ? w : h;
  blocks.area[own] = w * h;
  blocks.key[own] = blocks.one[sort] ?? 0;
  blocks.inside[own * blocks.counts.length + sort] = 1;
  blocks.first[own] = -1 - sort;
  blocks.second[own] = isTurned ? 1 : 0;
  blocks.n += 1;
  return own;
}

/** Whether there are pieces enough for two blocks. */
export function areEnough({ key, all, counts, inside }: Blocks, a: number, b: number): boolean {
  if ((key[a] ?? 0) + (key[b] ?? 0) > all) return false; // of the last sort there are not
  const [x, y] = [a * counts.length, b * counts.length];
  for (let k = 0; k < counts.length; k += 1)
    if ((inside[x + k] ?? 0) + (inside[y + k] ?? 0) > (counts[k] ?? 0)) return false;
  return true;
}

/** Two blocks that are put together: side by side, or one over the other. */
export type Join = { readonly a: number; readonly b: number; readonly along: typeof alongX | typeof alongY };

/** Puts two together; undefined where there is room for no more blocks. */
export function join(blocks: Blocks, { a, b, along }: Join): number | undefined {
  const { n: own, w, h, area, key, inside, counts } = blocks;
  if (own === w.length) return undefined;
  const [aw, ah, bw, bh] = [w[a] ?? 0, h[a] ?? 0, w[b] ?? 0, h[b] ?? 0];
  w[own] = along === alongX ? aw + bw : Math.max(aw, bw);
  h[own] = along === alongX ? Math.max(ah, bh) : ah + bh;
  area[own] = (area[a] ?? 0) + (area[b] ?? 0);
  key[own] = (key[a] ?? 0) + (key[b] ?? 0);
  const [to, x, y] = [own * counts.length, a * counts.length, b * counts.length];
  for (let k = 0; k < counts.length; k += 1) inside[to + k] = (inside[x + k] ?? 0) + (inside[y + k] ?? 0);
  blocks.first[own] = a;
  blocks.second[own] = along === alongX ? b : -1 - b;
  blocks.n += 1;
  return own;
}

/** How many of each sort are in a block: a view. */
export const insideOf = ({ inside, counts }: Blocks, block: number): Uint8Array =>
  inside.subarray(block * counts.length, (block + 1) * counts.length);

/** A block as it lies, its pieces taken off the end of what is `left` of their sorts. */
export function nestOfBlock(blocks: Blocks, block: number, left: readonly number[][]): Nest {
  const [a, b] = [blocks.first[block] ?? 0, blocks.second[block] ?? 0];
  if (a < 0) return { what: 2 * (left[-1 - a]?.pop() ?? 0) + b, of: [] };
  const both = [a, b < 0 ? -1 - b : b].map((one) => nestOfBlock(blocks, one, left));
  const row = rowOf(b < 0 ? alongY : alongX, both);
  if (!row) throw new RangeError('nestOfBlock: a block of nothing');
  return row;
}
