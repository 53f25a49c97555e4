import { expect, test } from 'vitest';
import { slantScrewFor } from '../../../src/trade/fasteners/slant-screws';
import { l } from '../../length/write-figures';

const plan = { part: l('19 mm'), mate: l('19 mm'), inPlane: false, seat: l('15 mm'), head: l('8 mm') };

// (25 - 15) x .9659 = 9.659, under 10; (32 - 15) x .9659 = 16.4203, over 19 - 3. Common practice, no source.
test('in a metric shop a slant screw bites 10 and leaves 3 before its tip', () => {
  const found = slantScrewFor({ ...plan, lengths: ['25 mm', '32 mm'].map(l), units: 'mm' });
  expect(!found.ok && found.error).toEqual({
    code: 'none-fits',
    misses: [
      { long: l('32 mm'), misses: 'mate', by: l('0.4203 mm') },
      { long: l('25 mm'), misses: 'bite', by: l('0.341 mm') },
    ],
  });
  const thirty = slantScrewFor({ ...plan, lengths: ['25 mm', '30 mm'].map(l), units: 'mm' });
  expect(thirty.ok && thirty.value.bite).toEqual(l('14.4885 mm'));
});
