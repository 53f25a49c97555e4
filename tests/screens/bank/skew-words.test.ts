import { expect, test } from 'vitest';
import { endText } from '../../../src/screens/bank/skew-words';
import { l } from '../../trade/grooves/sample';

test('between the sides the last gap is a gap, or binds', () => {
  expect(endText(l('5/64'), 'inset', '1/32')).toBe('5/64');
  expect(endText(l('-1/64'), 'inset', '1/32')).toBe('binds by 1/64');
});

test('a front over the case covers its edge, or falls short of it', () => {
  expect(endText(l('-1/2'), 'overlay', '1/32')).toBe('covers 1/2');
  expect(endText(l('1/8'), 'overlay', '1/32')).toBe('short by 1/8');
});
