import { expect, test } from 'vitest';
import * as words from '../../../src/screens/shared/square-words';
import { l } from '../../length/write-figures';
import { said } from '../said';

test('each diagonal is called by its own ends, and the top goes to one side', () => {
  expect(words.diagonalNames.frontA).not.toBe(words.diagonalNames.frontB);
  expect(words.pushTo('left')).toBe('Push the top to the left by');
  expect(words.pushAndUntil('right', '1/4', '74 27/32')).toBe(
    'Push the top to the right by 1/4, until each diagonal reads 74 27/32.',
  );
  expect(said(words.slip({ wide: '30', high: '48', frontA: '56 1/2', frontB: '56 5/8' }))).toBe(
    'Outside 30 × 48. From low left to high right it reads 56 1/2, from low right to high left 56 5/8.',
  );
});

test('a diagonal that cannot be says between what it lies', () => {
  const error = { code: 'cannot-be', which: 'A', least: l('18'), most: l('78') } as const;
  expect(words.rackingText(error)).toBe(
    'That diagonal cannot be: with this width and height it lies between 18 and 78.',
  );
});
