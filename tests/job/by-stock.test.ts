import { expect, test } from 'vitest';
import { byStock } from '../../src/job/by-stock';

test('what each piece is of is gathered, and an empty word says nothing', () => {
  expect(byStock({ name: 'Case', sideStock: 'a', boxFrontStock: 'b', topStock: '', note: '' })).toEqual({
    name: 'Case',
    stocks: { side: 'a', boxFront: 'b' },
  });
  expect(byStock({})).toEqual({ stocks: {} });
});
