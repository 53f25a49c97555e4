import { expect, test } from 'vitest';
import * as words from '../../../src/screens/bank/opening-words';
import { l } from '../../trade/grooves/sample';
import { said } from '../said';

test('every place of an opening has a name of its own, in the question and in the log', () => {
  const places = ['left', 'right', 'front', 'back'] as const;
  expect(new Set(places.map(words.ask)).size).toBe(4);
  expect(words.ask('left')).toBe('Opening, high, at the left');
  expect(words.measured('back')).toBe('Opening measured: wide, at the back');
});

test('what is uneven is said by how much', () => {
  expect(words.outOfSquare(l('1/16'))).toMatch(/^Out of square by 1\/16: .*the lower side\.$/);
  expect(words.notParallel(l('3/64'))).toMatch(/^Front and back differ by 3\/64: /);
});

test('problems and the way out of them make one line; the reckoned opening is wide by high', () => {
  expect(words.again(['Say how wide the opening is.', 'Say how high the opening is.'])).toBe(
    'Say how wide the opening is. Say how high the opening is. Measure it again here.',
  );
  expect(said(words.reckoned('17 1/2', '30'))).toBe('worked out 17 1/2 × 30');
});
