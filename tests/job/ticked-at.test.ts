import { expect, test } from 'vitest';
import { fold } from '../../src/job/log';
import { tickedAt } from '../../src/job/ticked-at';
import { l } from '../length/write-figures';
import { tap } from './phones';

const { ticks } = fold(tap([], 'anna', [{ kind: 'tick', op: 'cut/a', figure: '3/16' }]));

test('a tick stands for its own figure alone, however that is reckoned', () => {
  expect(tickedAt(ticks, 'cut/a', l('3/16'))).toBe(true);
  expect(tickedAt(ticks, 'cut/a', l('6/32'))).toBe(true);
  expect(tickedAt(ticks, 'cut/a', l('1/4'))).toBe(false);
  expect(tickedAt(ticks, 'cut/b', l('3/16'))).toBe(false);
});
