import { expect, test } from 'vitest';
import { biscuitsFor } from '../../src/trade/fasteners/biscuits';
import { plateAt } from '../../src/trade/machines/plate';
import { l, w } from '../length/write-figures';

const joint = { run: l('11 1/4'), most: l('6'), leave: l('3/16') };
const found = (plan: Parameters<typeof biscuitsFor>[0]) => {
  const biscuits = biscuitsFor(plan);
  if (!biscuits.ok) throw new Error(biscuits.error.code);
  return biscuits.value;
};

// "Set the height of the fence on the biscuit joiner to one-half of the thickness of the material to be joined."
// Using a Biscuit Joiner, page 139 of a book on shelving (scribd.com/doc/236547401), not dated; seen. The 3/4 is
// that of its stock.
test('the middle of a slot stands at one half of the thickness', () => {
  expect(w(found({ ...joint, part: l('3/4'), mate: l('3/4') }).from)).toBe('3/8');
});

// "reference all cuts from the base of the biscuit joiner (rather than its fence) … When you assemble the joint with
// biscuits, the side's end and the bottom's underside should be dead flush." Woodworker's Journal, volume 32 no. 2,
// page 52, 2008 (zhurnalko.net); seen. That the base stands 3/8 off the middle is ours: it is measured.
test('cut off the base of the joiner, end and underside come flush: both slots stand the same off them', () => {
  const base = l('3/8');
  const { from } = found({ ...joint, part: l('23/32'), mate: l('23/32'), from: base });
  expect(w(from)).toBe('3/8');
  // off the end of a side a bottom on the floor stands at 0: 0 + 3/8, and the straightedge would lie at its end
  expect(plateAt(from, { plateFence: l('1/4'), plateBase: base })).toEqual({ by: 'straightedge' });
});

// "#20: 15/16 x 2 1/4 inches", "5/32 inch thick": Proper Spacing for Plate Joinery Biscuits (thesprucecrafts.com),
// not dated; seen. Half of it goes into each slot, 1/32 is ours.
test('a slot of #20 is half of its 15/16 deep, and 1/32', () => {
  const { no, slotDeep } = found({ ...joint, part: l('3/4'), mate: l('3/4') });
  expect([no, w(slotDeep)]).toEqual(['20', '1/2']);
});
