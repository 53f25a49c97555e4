import { shelfOf } from './block-shelf';
import { addPiece, areEnough, type Blocks, type Join, join, noBlocks, type Sort } from './blocks';
import { alongX, alongY } from './packing';
import type { Kind } from './stock';

/** How far blocks are made: waste of a block at most, as a part of its pieces, and blocks of about one area. */
export type Pace = { readonly waste: number; readonly each: number };

/** Work done, and where it ends. */
export type Work = { work: number; readonly until: number };

type Making = {
  readonly sorts: readonly Sort[];
  readonly sheet: Pick<Kind, 'w' | 'h'>;
  /** Area that may stay without a piece on all sheets together. */
  readonly spare: number;
  readonly pace: Pace;
};

/** `full`: those that fill a sheet but for what may be spared, one for each choice of pieces, the fullest first. */
export type Tight = { readonly blocks: Blocks; readonly full: readonly number[] };

/** Blocks kept at most. */
const room = 200_000;

/** Sides of two blocks put together may differ by so many times what may be wasted. Measured, no source. */
const uneven = 3;

/** Small blocks may waste as much as one of such a part of the sheet, and be as uneven. Measured, no source. */
const small = 32;

/** Work of a pair looked at, and of a block made. Measured, no source. */
const lookWork = 1.5;
const makeWork = 130;

/** Work between two breaks at which the caller may stop: a few milliseconds. */
const breakEvery = 200_000;

/**
 * Rectangles put together of pieces with little waste, from the small to the large, after Wang 1983: of about one area
 * the best alone are put together further.
 *
 * @param work counted up; ends the making at `until`
 * @returns the blocks, and those that fill a sheet
 * @example const { blocks, full } = yield* tightBlocks({ sorts, sheet, spare, pace }, work)
 */
export function* tightBlocks(making: Making, work: Work): Generator<undefined, Tight> {
  const { sorts, sheet, spare, pace } = making;
  const blocks = noBlocks(sorts, room);
  const whole = sheet.w * sheet.h;
  const least = Math.min(...sorts.map(({ w, h }) => w * h));
  const shelf = shelfOf(blocks, { each: pace.each, least, whole });
  const full = new Map<number, number>();
  const put = (block: number): void => {
    const [area, key] = [blocks.area[block] ?? 0, blocks.key[block] ?? 0];
    if (whole - area > spare) shelf.put(block);
    else if (!full.has(key)) full.set(key, block);
  };
  const wants = (area: number, waste: number): boolean =>
    waste <= spare &&
    waste <= pace.waste * (area + whole / small) &&
    (whole - area <= spare || shelf.wants(area, waste));
  const meet = meeting({ blocks, sheet, wants, put, work });
  const near = { w: nearOf(blocks.w, sheet.w, pace.waste), h: nearOf(blocks.h, sheet.h, pace.waste) };
  for (const block of singles(blocks, making)) put(block);
  let pause = work.work + breakEvery;
  for (const a of shelf.inOrder()) {
    if (work.work >= work.until || blocks.n === room) break;
    near.h.put(a);
    near.w.put(a);
    near.h.beside(a, (b) => meet({ a, b, along: alongX }));
    near.w.beside(a, (b) => meet({ a, b, along: alongY }));
    if (work.work < pause) continue;
    yield undefined;
    pause = work.work + breakEvery;
  }
  const areaOf = (block: number): number => blocks.area[block] ?? 0;
  return { blocks, full: [...full.values()].sort((a, b) => areaOf(b) - areaOf(a) || a - b) };
}

/** Every piece alone, each way that a sheet takes it. */
const singles = (blocks: Blocks, { sorts, sheet }: Making): readonly number[] =>
  sorts.flatMap((sort, k) => {
    const { w, h, turn, pieces } = sort;
    if (pieces.length === 0) return [];
    const asGiven = w <= sheet.w && h <= sheet.h ? [addPiece(blocks, k, sort, false)] : [];
    return turn && h <= sheet.w && w <= sheet.h ? [...asGiven, addPiece(blocks, k, sort, true)] : asGiven;
  });

type Meeting = Pick<Making, 'sheet'> & {
  readonly blocks: Blocks;
  readonly wants: (area: number, waste: number) => boolean;
  readonly put: (block: number) => void;
  readonly work: Work;
};

/** Puts two blocks together where that is wanted, and there are pieces enough. */
function meeting({ blocks, sheet, wants, put, work }: Meeting): (two: Join) => void {
  return (two) => {
    const { a, b, along } = two;
    work.work += lookWork;
    const [aw, ah, bw, bh] = [blocks.w[a] ?? 0, blocks.h[a] ?? 0, blocks.w[b] ?? 0, blocks.h[b] ?? 0];
    const w = along === alongX ? aw + bw : Math.max(aw, bw);
    const h = along === alongX ? Math.max(ah, bh) : ah + bh;
    if (w > sheet.w || h > sheet.h) return;
    const area = (blocks.area[a] ?? 0) + (blocks.area[b] ?? 0);
    if (!wants(area, w * h - area) || !areEnough(blocks, a, b)) return;
    work.work += makeWork;
    const made = join(blocks, two);
    if (made !== undefined) put(made);
  };
}

/** Blocks by one of their sides: those about as long as another. */
function nearOf(sides: Float64Array, longest: number, waste: number) {
  const part = uneven * waste;
  const step = Math.max(1, longest * part);
  const bins: number[][] = Array.from({ length: Math.floor(longest / step) + 1 }, () => []);
  return {
    put: (block: number): void => void bins[Math.floor((sides[block] ?? 0) / step)]?.push(block),
    beside: (block: number, meet: (other: number) => void): void => {
      const long = sides[block] ?? 0;
      const by = part * (long + longest / small);
      const [from, to] = [long - by, long + by];
      for (let bin = Math.max(0, Math.floor(from / step)); bin <= Math.floor(to / step); bin += 1)
        for (const other of bins[bin] ?? []) {
          const side = sides[other] ?? 0;
          if (side >= from && side <= to) meet(other);
        }
    },
  };
}
