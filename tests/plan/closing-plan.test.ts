import { expect, test } from 'vitest';
import type { Change } from '../../src/job/entry';
import { editAcross, editGap, editRoom, editStand } from '../../src/job/room-edits';
import { stripsToRip } from '../../src/plan/closing-plan';
import { installId } from '../../src/trade/setups/install-steps';
import { l } from '../length/write-figures';
import { spelled } from '../trade/room/sample';
import { caseDecided } from './carried-cabinet-case';
import { worked } from './job-of';

/** The case is 38 3/8 and twice 3/16 of frame: 38 3/4 wide. */
const walls = (right: string, apart = '40'): readonly Change[] => [
  ...editRoom({ apart: l(apart) }),
  ...editAcross('a', { at: l('0'), left: l('3/8'), right: l(right) }),
];
const edge = (side: 'left' | 'right'): readonly Change[] => [
  ...editGap('case', `${side}1`, { side, at: l('0'), gap: l('1/8') }),
  ...editGap('case', `${side}2`, { side, at: l('32'), gap: l('9/32') }),
];

/** The steps between level and anchor. */
function stepsOf(...changes: readonly (readonly Change[])[]): readonly string[] {
  const { operations } = worked([...caseDecided, ...changes.flat()]).plan;
  const ids = operations.map(({ id }) => id);
  return operations
    .slice(ids.indexOf(installId('case', 'level')) + 1, ids.indexOf(installId('case', 'anchor')))
    .map(({ what }) => what);
}

test('with nothing read of the walls a case is levelled, then anchored', () => {
  expect(stepsOf()).toEqual([]);
});

test('gaps down an edge ask for the scribe; plumb lines for a strip at each side that is not scribed', () => {
  expect(stepsOf(edge('left'))).toEqual(['scribe']);
  expect(stepsOf(walls('1 3/16'))).toEqual(['filler']);
  expect(stepsOf(walls('1 3/16'), edge('left'))).toEqual(['scribe', 'filler']);
  expect(stepsOf(walls('1 3/16'), edge('left'), edge('right'))).toEqual(['scribe']);
});

test('an edge that hangs over too little is not scribed: a strip goes there once the lines are read', () => {
  // 9/32 - 1/8 = 5/32 comes off, 1/8 hangs over
  const short = [...edge('left'), ...editStand('case', { hangLeft: l('1/8') })];
  expect(stepsOf(short)).toEqual([]);
  expect(stepsOf(walls('1 3/16'), short)).toEqual(['filler']);
});

test('a gap so wide that a stile is wanted is no strip', () => {
  // the left is scribed; at the right 60 + 1 3/16 - 38 3/4 less the little at the left: over 22
  expect(stepsOf(walls('1 3/16', '60'), edge('left'))).toEqual(['scribe']);
});

test('a strip is as wide as the case leaves it when its other edge closes to the wall', () => {
  const { job, plan } = worked([...caseDecided, ...walls('1'), ...edge('left')]);
  // read 1/8 off a wall 3/8 out of its line the edge stands at -1/4; pushed by 9/32 at -17/32, its far side at 38 7/32:
  // 41 - 38 7/32 = 2 25/32, and 1/8 over
  expect(spelled(stripsToRip(job, plan.worked))).toEqual([
    { of: 'case', side: 'right', wide: '2 29/32', long: '64 1/4' },
  ]);
  const other = worked([...caseDecided, ...walls('1'), ...edge('right')]);
  // the far side at 41 - 1/8 + 9/32 = 41 5/32, the near at 2 13/32; 2 13/32 + 3/8 = 2 25/32, and 1/8 over
  expect(spelled(stripsToRip(other.job, other.plan.worked))).toEqual([
    { of: 'case', side: 'left', wide: '2 29/32', long: '64 1/4' },
  ]);
});
