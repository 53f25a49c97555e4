import { expect, test } from 'vitest';
import { editBank } from '../../src/job/edits';
import { learnedOf } from '../../src/plan/look-back';
import { l } from '../trade/grooves/sample';
import { worked } from './job-of';

const { plan } = worked([
  ...editBank('a', { name: 'Upper', slideLong: l('16'), slideHigh: l('1 25/32') }),
  ...editBank('b', { name: 'Lower', slideLong: l('16'), clearance: l('17/32') }),
]);

test('what the drawers say and the shop does not, once each', () => {
  expect(learnedOf(plan, { slideThickness: l('1/2') })).toEqual([
    { field: 'slideLength', now: undefined, learned: l('16'), from: 'Upper' },
    { field: 'slideHeight', now: undefined, learned: l('1 25/32'), from: 'Upper' },
    { field: 'slideThickness', now: l('1/2'), learned: l('17/32'), from: 'Lower' },
  ]);
});

test('nothing where the shop says the same', () => {
  const shop = { slideLength: l('16'), slideHeight: l('1 25/32'), slideThickness: l('17/32') };
  expect(learnedOf(plan, shop)).toEqual([]);
});
