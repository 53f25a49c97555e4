import { expect, test } from 'vitest';
import { gapBefore, pilesFor } from '../../../src/screens/bank/piles';
import { l, w } from '../../trade/grooves/sample';
import { firstColumn, twoFronts } from './sample';

const shims = ['1/16', '1/64'].map((size) => ({ size: l(size), count: 2 }));

test('fitted downward the first front closes the gap over it, the next the gap between', () => {
  const gap = (no: number) => gapBefore(twoFronts, firstColumn(twoFronts), no);
  expect([w(gap(1).left), w(gap(2).left), w(gap(2).right)]).toEqual(['1/8', '1/16', '1/16']);
});

test('fitted upward the lowest front closes the gap under it', () => {
  const up = { ...twoFronts, order: 'up' } as const;
  const gap = (no: number) => gapBefore(up, firstColumn(up), no);
  expect([w(gap(2).left), w(gap(1).left)]).toEqual(['3/32', '1/16']);
});

test('a pile at the right is told only where the gap differs there', () => {
  const alike = pilesFor({ left: l('1/16'), right: l('1/16') }, shims);
  expect(w(alike?.left.height)).toBe('1/16');
  expect(alike?.right).toBeUndefined();
  const apart = pilesFor({ left: l('1/16'), right: l('1/8') }, shims);
  expect([w(apart?.left.height), w(apart?.right?.height)]).toEqual(['1/16', '1/8']);
});

test('fronts that bind have no pile, and an empty drawer has none', () => {
  expect(pilesFor({ left: l('5/64'), right: l('-1/64') }, shims)).toBeUndefined();
  expect(pilesFor({ left: l('5/64'), right: l('5/64') }, [])).toBeUndefined();
});
