import { expect, test } from 'vitest';
import { bottomScrews } from '../../../src/trade/boxes/bottom-screws';
import type { Bank } from '../../../src/trade/fronts/bank';
import { l, w } from '../grooves/sample';
import { drawersWith } from './joints/corner';

function rowOf(more: Partial<Bank>) {
  const made = drawersWith({ boxJoint: 'rabbeted', ...more });
  const [first] = made.ok ? made.value.drawers : [];
  if (!first) throw new Error('no drawer');
  return bottomScrews(first);
}

// Inside 14 9/16, two grooves of 1/4 less 1/16: 15 wide. Ends 1 1/2 leave 12: two steps of 6. The back is 1/2 thick,
// its far face 1/2 from the ends of the sides: its middle 3/4. The box is 11 11/16 − 3/8 − 1/4 = 11 1/16 over it.
test('a bottom slid in is screwed up into the middle of its back, no further apart than six inches', () => {
  const row = rowOf({ bottomHow: 'slid-in', frontIs: 'box' });
  expect(row?.marks.map(w)).toEqual(['1 1/2', '7 1/2', '13 1/2']);
  expect([row?.in, row?.through, row?.into].map(w)).toEqual(['3/4', '1/4', '11 1/16']);
});

// butted, the back is flush with the ends of the sides: half of 1/2
test('under a back flush with the ends of the sides, half of its thickness in', () => {
  expect(w(rowOf({ bottomHow: 'slid-in', boxJoint: 'butted' })?.in)).toBe('1/4');
});

test('a bottom that is captured wants none', () => {
  expect(rowOf({})).toBeUndefined();
  expect(rowOf({ backDado: l('1/4') })).toBeUndefined();
});
