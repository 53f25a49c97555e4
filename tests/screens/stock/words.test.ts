import { expect, test } from 'vitest';
import * as words from '../../../src/screens/stock/words';
import { said } from '../said';

test('the first reading of a sheet is called the first', () =>
  expect([0, 1, 4].map(words.readOnce)).toEqual(['First reading', 'Another reading', 'Another reading']));

test('the thickness parts are reckoned with is measured, or only planned', () => {
  expect(said(words.reckonedAt('0.709', true))).toBe('Parts of it are reckoned at 0.709, as measured.');
  expect(said(words.reckonedAt('0.719', false))).toBe('Parts of it are reckoned at 0.719, as planned.');
});

test('what is done to a sheet names it, also when it has no name', () => {
  expect(words.kindChosen('Maple', 'stick')).toBe('Maple is a stick');
  expect(words.removed('Birch')).toBe('Birch removed');
  expect(words.removed('')).toBe('Sheet removed');
});

test('an offcut is long along the face grain, and wide across it', () => {
  expect(`${words.sizes.length}: ${words.sizeAsked.length}`).toBe(
    'long: How long it is, along the face grain',
  );
  expect(`${words.sizes.width}: ${words.sizeAsked.width}`).toBe('wide: How wide it is, across the grain');
});
