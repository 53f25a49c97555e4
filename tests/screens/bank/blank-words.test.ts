import { expect, test } from 'vitest';
import { blankErrorText, slips } from '../../../src/screens/bank/blank-words';
import { l } from '../../trade/grooves/sample';

test('the figure runs true, or slips by so much', () => {
  expect(slips(l('0'))).toMatch(/^The figure runs true over every joint\. Cut from the top down/);
  expect(slips(l('1/8'))).toMatch(/^The figure slips 1\/8 at each joint\. Cut from the top down/);
});

test('what keeps fronts from one blank is said by how much', () => {
  expect(blankErrorText({ code: 'kerf-missing' })).toContain('Enter the kerf');
  expect(blankErrorText({ code: 'core-gone', front: 2, by: l('1/4') })).toContain('front 2: 1/4 too thick');
  expect(blankErrorText({ code: 'negative', what: 'between', by: l('1/16') })).toContain(
    'gap between the fronts is 1/16 below 0',
  );
});
