import { expect, test } from 'vitest';
import * as words from '../../../src/screens/bank/ask-words';

test('the floors of a bay are counted where there are several', () => {
  expect(words.floor('rail', 1, 1)).toBe('middle rail');
  expect([1, 2].map((no) => words.floor('fixed', no, 2))).toEqual(['fixed shelf 1', 'fixed shelf 2']);
});

test('without shelves they stand on the bottom, or on the rail of a frame', () =>
  expect([words.bottom(false), words.bottom(true)]).toEqual(['the bottom', 'the bottom rail']));

test('no two choices of a blank read alike', () => {
  for (const { choices } of Object.values(words.choices)) {
    expect(new Set(choices.map(({ label }) => label)).size).toBe(choices.length);
  }
});
