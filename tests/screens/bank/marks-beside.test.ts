import { expect, test } from 'vitest';
import { add } from '../../../src/length/length';
import { edgeMark } from '../../../src/screens/bank/marks-beside';
import { l, w } from '../../trade/grooves/sample';
import { twoFronts } from './sample';

const at = { bank: twoFronts, opening: l('24'), tape: '1/32' } as const;

test('an edge is rounded once: its marks from both ends meet', () => {
  const top = edgeMark(l('12 1/100'), { ...at, from: 'top' });
  const bottom = edgeMark(l('12 1/100'), { ...at, from: 'bottom' });
  expect(w(top.value)).toBe('12');
  expect(w(add(top.value, bottom.value))).toBe('24');
});

test('of fronts fitted upward an edge is rounded from the bottom', () => {
  const up = { ...at, bank: { ...twoFronts, order: 'up' } } as const;
  expect(w(edgeMark(l('23 1/32'), { ...up, from: 'bottom' }).value)).toBe('31/32');
});
