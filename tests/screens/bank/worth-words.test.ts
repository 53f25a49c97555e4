import { expect, test } from 'vitest';
import * as words from '../../../src/screens/bank/worth-words';
import { newBank } from '../../../src/trade/fronts/bank';
import { l } from '../../length/write-figures';

test('one low front, and several', () => {
  expect(words.low([3])).toMatch(/^Front 3 under 2 1\/2:/);
  expect(words.low([3, 4])).toMatch(/^Fronts 3, 4 under 2 1\/2:/);
});

test('an edge is wide at a side, high at an end', () => {
  expect(words.hangsPast('left', l('5/8'), l('1/2'))).toBe(
    'At the left the front covers 5/8 of an edge 1/2 wide: it hangs past.',
  );
  expect(words.hangsPast('top', l('5/8'), l('1/2'))).toContain('1/2 high');
});

test('a shelf in the way of drawers says where it stands and how it would not be', () => {
  const at = { from: l('13 1/2'), to: l('14 7/32') };
  expect(words.shelfAcross(at)).toBe(
    'A fixed shelf stands across the opening, 13 1/2 to 14 7/32 over its lower edge: no drawer passes it. A middle rail in front of it makes two openings, one under the shelf and one over it.',
  );
  expect(words.shelfAcross({ ...at, behind: { edge: 'lower', by: l('1/4') } })).toBe(
    'A fixed shelf stands 1/4 up into the opening, behind its lower edge: so much lower it is out of the way.',
  );
  expect(words.shelfAcross({ ...at, behind: { edge: 'upper', by: l('3/8') } })).toBe(
    'A fixed shelf hangs 3/8 down into the opening, behind its upper edge: so much higher it is out of the way.',
  );
});

test('what is left over comes at the end the fronts go on last', () => {
  expect(words.leftOver(l('1/64'), 'down', true)).toBe(
    'Less than one mark is left over: 1/64, in the gap at the bottom.',
  );
  expect(words.leftOver(l('1/4'), 'up', false)).toBe(
    'The heights given leave 1/4 over, in the gap at the top.',
  );
});

test('errors that could close the last gap are said to bind', () => {
  const errors = { frontTol: l('1/64'), worst: l('3/32'), likely: l('1/32') };
  expect(words.stackUp({ ...errors, binds: true })).toContain('off by 3/32, and could bind; likely 1/32');
  expect(words.stackUp({ ...errors, binds: false })).toContain('off by 3/32; likely 1/32');
});

test('a taper is seen or not', () => {
  expect(words.taper(l('1/16'), true)).toContain('which shows');
  expect(words.taper(l('1/64'), false)).toContain('not seen');
});

test('drawers of two banks that stand in each other: the upper box goes higher, the lower one is lower', () => {
  const other = { ...newBank('low'), name: 'Below' };
  const meets = { drawer: 3, over: true, other, no: 1, by: l('1/16'), fits: l('9/16') } as const;
  expect(words.meets(meets)).toBe(
    'Drawer 3 and what carries it stand 1/16 in drawer 1 of Below, under it: its box at least 9/16 over the lower edge of its front.',
  );
  expect(words.meets({ ...meets, over: false, other: newBank('up'), fits: l('5') })).toBe(
    'Drawer 3 and what lies over it stand 1/16 in drawer 1 of Drawers, over it: its box at most 5 high.',
  );
});
