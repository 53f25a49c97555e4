import { describe, expect, test } from 'vitest';
import { callIt, sumOfLengths } from '../../../src/screens/figure/lines';

const lines = [
  { id: 'a', name: 'Opening', text: '30 1/2' },
  { id: 'b', name: '', text: '#a ÷ #a' },
  { id: 'c', name: '', text: '3/4' },
];

describe('callIt', () => {
  test('a name, a place in the strip, or that the line is gone', () =>
    expect(['a', 'b', 'x'].map((id) => callIt(lines, id))).toEqual([
      'Opening',
      'line 2',
      'a line that is gone',
    ]));
});

describe('sumOfLengths', () => {
  test('adds the lengths, by reference, and no count', () =>
    expect(sumOfLengths(lines)).toEqual({
      is: 'op',
      op: '+',
      a: { is: 'line', id: 'a' },
      b: { is: 'line', id: 'c' },
    }));

  test('of a strip without a length there is none', () => expect(sumOfLengths([])).toBeUndefined());
});
