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
});
