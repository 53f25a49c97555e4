import { expect, test } from 'vitest';
import { figureIn } from '../../src/length/metric-figures';
import { l } from './write-figures';

// Common practice, no source: what a metric shop has in place of each, round in millimetres.
test.each([
  ['1/64', '0.4 mm'],
  ['1/32', '0.8 mm'],
  ['1/16', '1.5 mm'],
  ['1/8', '3 mm'],
  ['3/16', '5 mm'],
  ['1/4', '6 mm'],
  ['3/8', '10 mm'],
  ['3/4', '20 mm'],
  ['1', '25 mm'],
  ['1 1/4', '32 mm'],
  ['1 1/2', '40 mm'],
  ['96', '2440 mm'],
  ['48', '1220 mm'],
])('%s is %s in a job in millimetres, and itself in one in inches', (inch, metric) => {
  expect(figureIn('mm', l(inch))).toEqual(l(metric));
  expect(figureIn('in', l(inch))).toEqual(l(inch));
});

test('what is not in the list is as it is', () => {
  expect(figureIn('mm', l('11/16'))).toEqual(l('11/16'));
  expect(figureIn('mm', l('0'))).toEqual(l('0'));
});
