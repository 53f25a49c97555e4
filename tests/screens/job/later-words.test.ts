import { expect, test } from 'vitest';
import * as words from '../../../src/screens/job/later-words';

test('changes since the last copy are counted', () =>
  expect([1, 2].map(words.sinceCopy)).toEqual([
    '1 change since the last copy out.',
    '2 changes since the last copy out.',
  ]));

test('what holds a newer version says what ends it', () => {
  expect(words.held['at-the-saw']).toMatch(/once the setting .* is left\.$/);
  expect(words.held['entry-open']).toMatch(/once the keys or the list .* are closed\.$/);
  expect(words.held['not-secured']).toMatch(/once both copies .* are complete\.$/);
});
