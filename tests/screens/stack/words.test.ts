import { describe, expect, test } from 'vitest';
import * as words from '../../../src/screens/stack/words';

describe('a pile of shims', () => {
  test.each([
    [{ pieces: ['2 × 1/8', '1 × 1/16'], short: undefined, within: true }, '2 × 1/8 + 1 × 1/16, exactly.'],
    [{ pieces: ['1 × 1/8'], short: '0.016', within: true }, '1 × 1/8, short by 0.016.'],
    [
      { pieces: [], short: '0.030', within: false },
      'No shim goes in, short by 0.030: no pile of these comes nearer without going over.',
    ],
  ])('%o', (pile, says) => expect(words.pile(pile)).toBe(says));
});

describe('a half-lap whose faces step', () => {
  const step = { by: '1/32', each: '1/64', other: '25/32' };

  test('too shallow, both are deepened', () =>
    expect(words.step({ ...step, felt: true, deepen: true })).toBe(
      'The faces step by 1/32, enough to feel. Both still uncut: deepen each by 1/64. One set cut: the other to 25/32.',
    ));

  test('too deep, both are made shallower; a small step is not felt', () =>
    expect(words.step({ ...step, felt: false, deepen: false })).toBe(
      'The faces step by 1/32. Both still uncut: make shallower each by 1/64. One set cut: the other to 25/32.',
    ));
});

test('the fewest pieces are called so only beside a stack that comes closer', () => {
  expect(words.fewest(false)).toBe('Between the outers');
  expect(words.fewest(true)).toBe('Fewest pieces');
});

test('a recipe without pieces is the outers alone', () => {
  expect(words.recipe([])).toBe('Recipe kept: the outers alone.');
  expect(words.recipe(['1/8', '0.005'])).toBe('Recipe kept: 1/8 + 0.005.');
});

test('each gap that may leave a ridge is named', () => {
  expect(words.ridges([2])).toMatch(/: gap 2\.$/);
  expect(words.ridges([2, 4])).toMatch(/: gap 2 and 4\.$/);
});
