import { expect, test } from 'vitest';
import { ratio } from '../../../src/length/length';
import { isLess, isMore, lesser, minus, product, shareOf, total } from '../../../src/trade/loads/ratios';

test('products, sums and shares are exact, and none is 1 and 0', () => {
  expect([product(), product(ratio(2n, 3n), ratio(3n, 4n))].map((x) => x.toFraction())).toEqual(['1', '1/2']);
  expect([total([]), total([ratio(1n, 3n), ratio(1n, 6n)])].map((x) => x.toFraction())).toEqual(['0', '1/2']);
  expect([minus(ratio(1n), ratio(3n)), shareOf(ratio(1n), ratio(3n))].map((x) => x.toFraction())).toEqual([
    '-2',
    '1/3',
  ]);
  expect(lesser(ratio(2n), ratio(1n)).toFraction()).toBe('1');
  expect(() => shareOf(ratio(1n), ratio(0n))).toThrow(RangeError);
});

test('nothing is neither more nor less than nothing', () => {
  const [a, b, c] = [ratio(-1n, 9n), ratio(0n), ratio(1n, 9n)];
  expect([a, b, c].map(isMore)).toEqual([false, false, true]);
  expect([a, b, c].map(isLess)).toEqual([true, false, false]);
});
