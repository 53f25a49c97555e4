import { expect, test } from 'vitest';
import { isFresh, lastGap } from '../../../src/screens/bank/fitted-reading';
import type { Fitted } from '../../../src/trade/fronts/bank';
import { l, w } from '../../trade/grooves/sample';
import { firstColumn, twoFronts } from './sample';

test.each<[string, Fitted, boolean]>([
  ['nothing read', {}, false],
  ['read and not used', { left: l('12 1/8') }, true],
  ['read and used', { left: l('12 1/8'), usedLeft: l('12 1/8') }, false],
  ['read again since', { left: l('12 5/32'), usedLeft: l('12 1/8') }, true],
  ['read at the right alone since', { left: l('12'), usedLeft: l('12'), right: l('12 1/8') }, true],
])('isFresh: %s', (_, fitted, fresh) => {
  const bank = { ...twoFronts, columns: { 1: { fitted: { 1: fitted } } } };
  expect(isFresh(bank, 1, 1)).toBe(fresh);
});

test('the last gap is under the lowest front, fitted upward over the top one', () => {
  const up = { ...twoFronts, order: 'up' } as const;
  expect(w(lastGap(twoFronts, firstColumn(twoFronts), 'left'))).toBe('3/32');
  expect(w(lastGap(up, firstColumn(up), 'right'))).toBe('1/8');
});
