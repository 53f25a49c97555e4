import { describe, expect, test } from 'vitest';
import * as words from '../../../src/screens/handover/words';

test('one code is held over at once, several until all their parts are there', () => {
  expect(words.lead(1)).toBe('Hold the other phone over this one.');
  expect(words.lead(7)).toBe('Hold the other phone over this one until it has all 7 parts.');
  expect(words.shown(1)).toBe('One code');
  expect(words.shown(7)).toBe('7 codes in turn');
});

test('a screen that may go dark says so', () => {
  expect(words.there(true)).toMatch(/This screen stays on\.$/);
  expect(words.there(false)).toMatch(/This screen may sleep: tap it now and then\.$/);
});

test('a file is named for its job, and says when it holds changes alone', () => {
  expect(words.fileName('Shell drawers', 'whole')).toBe('Shell drawers');
  expect(words.fileName('Shell drawers', 'changes')).toBe('Shell drawers, changes');
  expect(words.fileName('', 'whole')).toBe('Job');
});

test('photos without a code are counted from the second on', () => {
  expect(words.unreadPhotos(1)).toMatch(/^No code could be read\. Hold the phone/);
  expect(words.unreadPhotos(2)).toMatch(/^On 2 photos no code could be read\. Hold the phone/);
});

describe('a camera that shows nothing', () => {
  test.each(['refused', 'none', 'busy'] as const)('%s leads to a photo', (state) =>
    expect(words.cameraText(state)).toMatch(/photo of the code/),
  );
});

test('a code of a newer version says what to do, whichever part of it is newer', () => {
  const newer = words.codeText({ code: 'newer-code', version: 2 });
  expect(newer).toContain('Bring this one up to date first.');
  expect(words.codeText({ code: 'newer-bundle', version: 2 })).toBe(newer);
});
