import { expect, test } from 'vitest';
import { biscuitsFor } from '../../../src/trade/fasteners/biscuits';
import { l } from '../../length/write-figures';

// #20 is 2 1/4 long, 57.15: half of it and 6 is less than 50. (430 - 100) over 150 goes up to three. Common practice.
test('in a metric shop the first slot stands at 50, and a joint is 12 longer than its biscuit', () => {
  const plan = {
    part: l('18 mm'),
    mate: l('18 mm'),
    most: l('150 mm'),
    leave: l('5 mm'),
    units: 'mm',
  } as const;
  const found = biscuitsFor({ ...plan, run: l('430 mm') });
  if (!found.ok) throw new Error(found.error.code);
  expect([found.value.no, found.value.slotLong]).toEqual(['20', l('69.15 mm')]);
  expect(found.value.row.marks).toEqual(['50 mm', '160 mm', '270 mm', '380 mm'].map(l));
  // 69 is .15 under 57.15 + 12
  const short = biscuitsFor({ ...plan, run: l('69 mm') });
  expect(short.ok && short.value.refused).toEqual([{ no: '20', lacks: 'run', by: l('0.15 mm') }]);
});
