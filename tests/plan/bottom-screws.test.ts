import { expect, test } from 'vitest';
import { editBank, editJob, editStock } from '../../src/job/edits';
import type { Change } from '../../src/job/entry';
import { bottomScrew, bottomsToBuy } from '../../src/plan/bottom-screws';
import { l, w } from '../trade/grooves/sample';
import { worked } from './job-of';

/** Two boxes 14 9/16 wide inside; what holds their bottoms of 1/4. */
function bankOf(bottomHow: 'slid-in' | 'captured', ...said: readonly Change[]) {
  const { plan } = worked([
    ...editStock('half', { used: l('1/2') }),
    ...editStock('quarter', { used: l('1/4') }),
    ...editBank('d', { width: l('16 9/16'), height: l('24'), depth: l('20'), count: 2, boxDeep: l('16') }),
    ...editBank('d', { frontStock: 'half', sideStock: 'half', boxBottomStock: 'quarter', bottomHow }),
    ...said,
  ]);
  const bank = plan.banks.get('d');
  if (!bank) throw new Error('no bank');
  return bank;
}
const shelf = ['1', '1 1/2', '1 1/4'].map(l);

// through 1/4, an edge wants 1 (common practice, no source): 1 1/4 at the least, and that is taken
test('the screw bites an inch into the edge of the back', () => {
  const { drawers } = bankOf('slid-in');
  const screw = bottomScrew(drawers?.ok ? drawers.value.drawers : [], shelf);
  expect([screw?.least, screw?.pick, screw?.bite].map(w)).toEqual(['1 1/4', '1 1/4', '1']);
});

// 15 wide is three screws, two boxes six
test('those of all boxes are bought together; captured bottoms want none', () => {
  const bought = (how: 'slid-in' | 'captured') =>
    bottomsToBuy(bankOf(how), 'Drawers, bottoms', shelf).map((s) => [s.bank, w(s.long), s.each]);
  expect(bought('slid-in')).toEqual([['Drawers, bottoms', '1 1/4', 6]]);
  expect(bought('captured')).toEqual([]);
});

// through 6, an edge wants 25 in a metric shop, not 25.4 (common practice, no source): 31 does
test('in a metric shop it bites 25 into the edge', () => {
  const metric = [...editJob({ tape: '1 mm' }), ...editStock('quarter', { used: l('6 mm') })];
  const { bank, drawers } = bankOf('slid-in', ...metric);
  const lengths = ['30 mm', '31 mm', '35 mm'].map(l);
  const all = drawers?.ok ? drawers.value.drawers : [];
  expect(bottomScrew(all, lengths, bank.units)?.pick).toEqual(l('31 mm'));
});
