import { expect, test } from 'vitest';
import type { Span } from '../../../src/trade/carcass/taken';
import { clearMove } from '../../../src/trade/joints/clear-move';
import { l, w } from '../../length/write-figures';

const spans = (...all: readonly string[]): readonly Span[] =>
  all.map((one) => {
    const [from = '', to = ''] = one.split('-');
    return [l(from), l(to)];
  });

// worked by hand: what is moved, what is in the way, how long the whole is
test.each([
  ['nothing is in the way', ['1-2'], ['3-4'], '0'],
  ['what only touches is clear', ['1-2'], ['2-4'], '0'],
  ['to the nearer side', ['3-4'], ['3 1/2-6'], '-1/2'],
  ['onward where that is less', ['3-4'], ['1-3 1/4'], '1/4'],
  ['past two that leave too little between them', ['3-4'], ['2-3 1/4', '4-5 1/4'], '-2'],
  ['into a gap that is just wide enough', ['3-4'], ['2-3 1/4', '4 1/4-5'], '1/4'],
  ['not over the near end', ['1/8-1 1/4'], ['1-2'], '1 7/8'],
  ['not over the far end', ['8 3/4-9 3/4'], ['7-9 1/4'], '-2 3/4'],
  ['all of them together', ['1-2', '3-4'], ['3 3/4-5'], '-1/4'],
  // onward the second is clear from 5 on, 2 more, but the first then lies in it until it is moved 4
  ['one after another through what is in the way', ['1-2', '3-4'], ['2 1/2-5'], '4'],
])('%s', (_, own, others, move) => {
  const found = clearMove(spans(...own), spans(...others), l('10'));
  expect(found && w(found)).toBe(move);
});

test('nowhere, where the rest is too short either way', () => {
  expect(clearMove(spans('3-5'), spans('1-9'), l('10'))).toBeUndefined();
});
