import { expect, test } from 'vitest';
import { joinLines } from '../../../src/trade/buying/joins';
import { l } from '../../length/write-figures';

test('a line for each size of dowel and each number of biscuit, every place in it', () => {
  const dowel = { thick: l('5/16'), long: l('1 1/2') };
  const lines = joinLines([
    { place: 'Bottom', count: 8, is: dowel },
    { place: 'Frame', count: 6, is: '20' },
    { place: 'Shelves', count: 16, is: dowel },
    { place: 'Top', count: 8, is: { ...dowel, long: l('2') } },
  ]);
  expect(lines.map(({ id, group, amount }) => [id, group, Number(amount.n)])).toEqual([
    ['dowels/5~16x3~2', 'dowels', 24], // 8 + 16
    ['biscuits/20', 'biscuits', 6],
    ['dowels/5~16x2', 'dowels', 8],
  ]);
});
