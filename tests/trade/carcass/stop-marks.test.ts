import { expect, test } from 'vitest';
import { sizeAt } from '../../../src/trade/carcass/part';
import { stopMarks } from '../../../src/trade/carcass/stop-marks';
import { given } from '../../../src/trade/sums/sum';
import { l } from '../../length/write-figures';

const front = { length: sizeAt(given('width-said', l('15 9/16')), '1/32'), end: 'left' };

// 17/64 lies half way between two marks and goes to 9/32, at either end: 15 9/16 − 9/32 = 15 9/32
test('a groove stopped alike at both ends has marks alike', () => {
  const marks = stopMarks({ from: l('17/64'), to: l('15 19/64') }, front, '1/32');
  expect(marks).toEqual({ from: l('9/32'), to: l('15 9/32'), end: 'left' });
});

test('one that runs out at the end it is measured from begins at 0; one that runs through has no marks', () => {
  const out = stopMarks({ from: l('0'), to: l('12 1/2') }, front, '1/32');
  expect(out).toEqual({ from: l('0'), to: l('12 1/2'), end: 'left' });
  expect(stopMarks({}, front, '1/32')).toBeUndefined();
});
