import { expect, test } from 'vitest';
import { InlineMark, MarkAndRest } from '../../../src/screens/shared/mark-and-rest';
import { l } from '../../trade/grooves/sample';
import { said } from '../said';

const scant = { value: l('21 3/4'), rest: l('-1/64') };
const exact = { value: l('21 3/4'), rest: l('0') };

test('a mark of a list is spoken with what rounding left', () => {
  expect(said(<MarkAndRest mark={scant} tape="1/32" />)).toBe('21 and 3/4 inches, scant by 0.016');
  expect(said(<MarkAndRest mark={exact} tape="1/32" />)).toBe('21 and 3/4 inches');
});

test('a mark in a sentence is told with what rounding left, and an exact one alone', () => {
  expect(said(<InlineMark mark={scant} tape="1/32" />)).toBe('21 3/4 scant 0.016');
  expect(said(<InlineMark mark={exact} tape="1/32" />)).toBe('21 3/4');
});
