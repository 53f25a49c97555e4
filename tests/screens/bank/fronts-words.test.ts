import { expect, test } from 'vitest';
import * as words from '../../../src/screens/bank/fronts-words';
import { l } from '../../trade/grooves/sample';
import { said } from '../said';

test('the fronts of a bank are told by height and gap; by the gap alone while no height is known', () => {
  expect(words.sub(l('30 1/2'), l('3/32'))).toBe('30 1/2 high, 3/32 gaps');
  expect(words.sub(undefined, l('2 mm'))).toBe('2 mm gaps');
});

test('a column of one front is not a column of fronts', () => {
  expect(words.drawing(1)).toBe('Column of 1 front, to scale');
  expect(words.drawing(5)).toBe('Column of 5 fronts, to scale');
});

test('edges say which end they are read from, and what strong and scant look like', () => {
  expect(said(words.edges('bottom', '17 3/8'))).toBe(
    'Edges from the bottom. Fronts are 17 3/8 wide. + strong, − scant.',
  );
});
