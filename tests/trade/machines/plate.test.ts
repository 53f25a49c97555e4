import { expect, test } from 'vitest';
import { plateAt } from '../../../src/trade/machines/plate';
import { l } from '../../length/write-figures';

test('over the end within its fence, else against a straightedge its base off the middle', () => {
  const shop = { plateFence: l('1 1/4'), plateBase: l('3/8') };
  expect(plateAt(l('1 1/4'), shop)).toEqual({ by: 'fence' });
  // 24 23/32 + 23/64 - 3/8 = 24 45/64
  expect(plateAt(l('25 5/64'), shop)).toEqual({ by: 'straightedge', at: l('24 45/64') });
});

test('not measured: the fence of any reaches an inch; how far the straightedge lies is not said', () => {
  expect(plateAt(l('23/64'), {})).toEqual({ by: 'fence' });
  expect(plateAt(l('1 1/64'), {})).toEqual({ by: 'straightedge' });
});
