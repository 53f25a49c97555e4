import { describe, expect, test } from 'vitest';
import { depthPasses } from '../../../src/trade/machines/depths';
import { l, w } from '../../length/write-figures';

describe('depthPasses', () => {
  // source of an eighth at a pass: two router manuals; never over a quarter: common practice, no source
  test.each([
    ['11/32', '1/8', 3, '11/96'],
    ['1/4', undefined, 2, '1/8'],
    ['1/8', '1/8', 1, '1/8'],
    ['1/2', '2', 2, '1/4'],
    ['1/2', '0', 4, '1/8'],
  ])('%s deep, %s at a pass: %i', (depth, pass, count, each) => {
    const passes = depthPasses(l(depth), pass === undefined ? undefined : l(pass));
    expect([passes.count, w(passes.each)]).toEqual([count, each]);
  });

  // 9.5 by 3 at a pass is four of 2.375; never over 6, whatever is said: common practice, no source
  test('in a metric shop 3 mm at a pass, 6 at most', () => {
    expect(depthPasses(l('9.5 mm'), undefined, 'mm')).toEqual({ count: 4, each: l('2.375 mm') });
    expect(depthPasses(l('12 mm'), l('20 mm'), 'mm')).toEqual({ count: 2, each: l('6 mm') });
  });
});
