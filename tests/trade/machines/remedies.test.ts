import { describe, expect, test } from 'vitest';
import type { Need } from '../../../src/trade/machines/limits';
import { remediesFor } from '../../../src/trade/machines/remedies';
import { l } from '../../length/write-figures';

const rip = (thickness: string, width = '10'): Need => ({
  cut: 'rip',
  width: l(width),
  length: l('40'),
  thickness: l(thickness),
});

describe('remediesFor: a blade that stands too low', () => {
  const shop = { capacity: l('30'), tableHeight: l('2') };

  // 2 1/2 + 1/8 = 2 5/8 is over 2; half of it, 1 5/16, is not (1/8 through: common practice)
  test('stock 2 1/2 under a blade that stands 2: two passes, 1 5/16 high each', () =>
    expect(remediesFor(rip('2 1/2'), shop)).toContainEqual({ code: 'two-passes', each: l('1 5/16') }));

  test('not for stock that two passes do not part, nor where the fence is short as well', () => {
    const codes = (need: Need) => remediesFor(need, shop).map(({ code }) => code);
    expect(codes(rip('4'))).not.toContain('two-passes');
    expect(codes(rip('2 1/2', '34'))).not.toContain('two-passes');
  });

  test('a hand tool is never named', () =>
    expect(remediesFor(rip('4'), shop).map(({ code }) => code)).toEqual(['relief-cut']));
});
