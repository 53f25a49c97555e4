import { expect, test } from 'vitest';
import { isDoubtful } from '../../../src/trade/machines/small-shop';
import { l } from '../../length/write-figures';

// common practice, no source: any sled has a stop two feet off
test('a blank figure is asked where a small machine would not do', () => {
  expect(isDoubtful({ field: 'stopReach', wants: l('48') })).toBe(true);
  expect(isDoubtful({ field: 'stopReach', wants: l('11 1/4') })).toBe(false);
  expect(isDoubtful({ field: 'bit', wants: l('1/2') })).toBe(true);
});
