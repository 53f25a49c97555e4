import { describe, expect, test } from 'vitest';
import { insideOf, type Sort } from '../../../../src/trade/sheets/two-d/blocks';
import { type Pace, tightBlocks } from '../../../../src/trade/sheets/two-d/tight-blocks';

const sort = (w: number, h: number, count: number, turn = false, k = 0): Sort => ({
  w,
  h,
  turn,
  pieces: Array.from({ length: count }, () => k),
});

/** What is on the blocks that fill a sheet of 10 x 10, and how many are made. */
function made(sorts: readonly Sort[], spare: number, pace: Pace = { waste: 0.1, each: 100 }, until = 1e9) {
  const making = tightBlocks({ sorts, sheet: { w: 10, h: 10 }, spare, pace }, { work: 0, until });
  let step = making.next();
  while (!step.done) step = making.next();
  const { blocks, full } = step.value;
  return { full: full.map((block) => [...insideOf(blocks, block)]), n: blocks.n, blocks };
}

describe('blocks of little waste', () => {
  test('four quarters fill the sheet, one choice of pieces once however it is put together', () => {
    expect(made([sort(5, 5, 4)], 0).full).toEqual([[4]]);
  });

  test('halves and quarters: every way to fill the sheet, and nothing less', () => {
    const { full } = made([sort(10, 5, 2), sort(5, 5, 4)], 0);
    expect(full.map(String).sort()).toEqual(['0,4', '1,2', '2,0']);
  });

  test('a piece is turned where it may be', () => {
    // 6 x 10 and 4 x 10 stand side by side; the second comes lying
    expect(made([sort(6, 10, 1), sort(10, 4, 1, true, 1)], 0).full).toEqual([[1, 1]]);
    expect(made([sort(6, 10, 1), sort(10, 4, 1, false, 1)], 0).full).toEqual([]);
  });

  test('what is spared may stay empty, the fullest first, and no more', () => {
    // 10 x 10 alone; two of 10 x 4.9, 98 of 100
    const sorts = [sort(10, 10, 1), sort(10, 4.9, 2, false, 1)];
    expect(made(sorts, 2.1).full).toEqual([
      [1, 0],
      [0, 2],
    ]);
    expect(made(sorts, 1.9).full).toEqual([[1, 0]]);
  });

  test('no block wastes more than its part, and none is larger than the sheet', () => {
    const { blocks, n } = made([sort(5, 4, 3), sort(4, 3, 3), sort(3, 2.5, 3)], 30, {
      waste: 0.06,
      each: 50,
    });
    expect(n).toBeGreaterThan(10);
    for (let k = 0; k < n; k += 1) {
      const [w, h, area] = [blocks.w[k] ?? 0, blocks.h[k] ?? 0, blocks.area[k] ?? 0];
      expect(w * h - area).toBeLessThanOrEqual(0.06 * area + 1e-9);
      expect(Math.max(w, h)).toBeLessThanOrEqual(10);
    }
  });

  test('it ends where its work does', () => {
    const pieces = [sort(5, 5, 4)];
    expect(made(pieces, 0, undefined, 0)).toMatchObject({ full: [], n: 1 });
  });
});
