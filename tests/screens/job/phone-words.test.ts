import { describe, expect, test } from 'vitest';
import { lastCopied, opensLikeAnApp } from '../../../src/screens/job/phone-words';

describe('lastCopied', () => {
  const at = new Date(2026, 10, 2);
  const day = at.toLocaleDateString();

  test.each([
    [undefined, 1, 'Not copied out yet. One change made here.'],
    [undefined, 7, 'Not copied out yet. 7 changes made here.'],
    [at, 0, `Last copied out on ${day}. Nothing has changed since.`],
    [at, 1, `Last copied out on ${day}. One change since.`],
    [at, 2, `Last copied out on ${day}. 2 changes since.`],
  ])('%s, %i since', (when, since, says) => expect(lastCopied(when, since)).toBe(says));
});

test('no signal is needed only once the app is served from the phone', () => {
  expect(opensLikeAnApp(false)).toBe('It opens like any app.');
  expect(opensLikeAnApp(true)).toBe('It opens like any app, and works with no signal.');
});
