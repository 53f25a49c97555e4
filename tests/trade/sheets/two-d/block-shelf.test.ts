import { expect, test } from 'vitest';
import { shelfOf } from '../../../../src/trade/sheets/two-d/block-shelf';
import { addPiece, join, noBlocks, type Sort } from '../../../../src/trade/sheets/two-d/blocks';
import { alongX, alongY } from '../../../../src/trade/sheets/two-d/packing';

const sorts: readonly Sort[] = [4, 3, 2].map((w, k) => ({ w, h: 4, turn: true, pieces: [k, k, k, k] }));
const begun = () => {
  const blocks = noBlocks(sorts, 50);
  return { blocks, alone: sorts.map((sort, k) => addPiece(blocks, k, sort, false)) };
};

test('of the same pieces one that is larger in no way takes the place of one that is larger in some', () => {
  const { blocks, alone } = begun();
  const shelf = shelfOf(blocks, { each: 10, least: 8, whole: 100 });
  const [a = 0, b = 0] = alone;
  const beside = join(blocks, { a, b, along: alongX }) ?? 0; // 7 x 4
  const again = join(blocks, { a: b, b: a, along: alongX }) ?? 0;
  const over = join(blocks, { a, b, along: alongY }) ?? 0; // 4 x 8
  for (const block of [beside, again, over]) shelf.put(block);
  expect([...shelf.inOrder()]).toEqual([beside, over]);
});

test('the small come first, of one area those of little waste, and no more than so many', () => {
  const { blocks, alone } = begun();
  const shelf = shelfOf(blocks, { each: 1, least: 8, whole: 100 });
  const [a = 0, b = 0, c = 0] = alone; // 16, 12 and 8
  const wasteful = join(blocks, { a: b, b: c, along: alongY }) ?? 0; // 3 x 8 for 20
  const neat = join(blocks, { a: b, b: c, along: alongX }) ?? 0; // 5 x 4 for 20
  for (const block of [wasteful, neat, a, c]) shelf.put(block);
  expect([...shelf.inOrder()]).toEqual([c, a, neat]);
});

test('what is put on a step while it is gone through comes too', () => {
  const { blocks, alone } = begun();
  const shelf = shelfOf(blocks, { each: 5, least: 8, whole: 1e6 });
  const [, b = 0, c = 0] = alone;
  shelf.put(c);
  const order = shelf.inOrder();
  expect(order.next().value).toBe(c);
  const close = join(blocks, { a: c, b: c, along: alongX }) ?? 0;
  blocks.area[close] = 8; // about the same area
  blocks.key[close] = 99;
  shelf.put(close);
  shelf.put(b);
  expect([...order]).toEqual([close, b]);
});
