import { describe, expect, test } from 'vitest';
import {
  addPiece,
  areEnough,
  insideOf,
  join,
  nestOfBlock,
  noBlocks,
  sortsOf,
} from '../../../../src/trade/sheets/two-d/blocks';
import { alongX, alongY } from '../../../../src/trade/sheets/two-d/packing';
import { stockOf } from '../../../../src/trade/sheets/two-d/stock';

// the second and the last are of one size; none is wanted of the third
const stock = stockOf({
  sheets: [],
  pieces: [
    { w: 8, h: 4, count: 1, turn: true },
    { w: 6, h: 3, count: 2, turn: false },
    { w: 5, h: 5, count: 0, turn: true },
    { w: 6, h: 3, count: 1, turn: false },
  ],
});
const sorts = sortsOf(stock);

/** Each sort alone, and the first turned. */
function begun(room = 20) {
  const blocks = noBlocks(sorts, room);
  const [large, small] = sorts.map((sort, k) => addPiece(blocks, k, sort, false));
  const turned = sorts[0] ? addPiece(blocks, 0, sorts[0], true) : 0;
  return { blocks, large: large ?? 0, small: small ?? 0, turned };
}

describe('blocks', () => {
  test('pieces of one size are one sort, turned ways apart', () => {
    expect(sorts).toEqual([
      { w: 8, h: 4, turn: true, pieces: [0] },
      { w: 6, h: 3, turn: false, pieces: [1, 1, 3] },
    ]);
  });

  test('two side by side, and a third over them: sizes, pieces and area', () => {
    const { blocks, small, turned } = begun();
    const row = join(blocks, { a: turned, b: small, along: alongX }) ?? 0;
    expect([blocks.w[row], blocks.h[row], blocks.area[row]]).toEqual([10, 8, 50]);
    const over = join(blocks, { a: row, b: small, along: alongY }) ?? 0;
    expect([blocks.w[over], blocks.h[over], blocks.area[over]]).toEqual([10, 11, 68]);
    expect([...insideOf(blocks, over)]).toEqual([1, 2]);
  });

  test('no more pieces of a sort than there are, and then all have one key', () => {
    const { blocks, large, small } = begun();
    const two = join(blocks, { a: small, b: small, along: alongX }) ?? 0;
    const four = join(blocks, { a: two, b: large, along: alongY }) ?? 0;
    expect([areEnough(blocks, two, small), areEnough(blocks, two, two)]).toEqual([true, false]);
    expect([areEnough(blocks, large, large), areEnough(blocks, four, small)]).toEqual([false, true]);
    const all = join(blocks, { a: four, b: small, along: alongX }) ?? 0;
    expect(blocks.key[all]).toBe(blocks.all);
    expect(blocks.key[four]).not.toBe(blocks.all);
  });

  test('a block lies as it was put together, each piece by a number of its own sort', () => {
    const { blocks, small, turned } = begun();
    const row = join(blocks, { a: turned, b: small, along: alongX }) ?? 0;
    const long = join(blocks, { a: row, b: small, along: alongX }) ?? 0;
    const left = sorts.map(({ pieces }) => [...pieces]);
    expect(nestOfBlock(blocks, long, left)).toEqual({
      what: alongX,
      of: [
        { what: 1, of: [] },
        { what: 6, of: [] },
        { what: 2, of: [] },
      ],
    });
    expect(left).toEqual([[], [1]]);
  });

  test('with no room for one more none is made', () => {
    const { blocks, small, turned } = begun(4);
    expect(join(blocks, { a: turned, b: small, along: alongX })).toBe(3);
    expect(join(blocks, { a: turned, b: small, along: alongY })).toBeUndefined();
    expect(blocks.n).toBe(4);
  });
});
