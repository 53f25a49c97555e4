import { describe, expect, test } from 'vitest';
import * as words from '../../../src/screens/pictures/words';

const megabyte = 1024 * 1024;

describe('a picture that is not taken', () => {
  test('is said by how much, and what would do', () => {
    // 61.5 MB are 1.5 over the 60
    expect(words.refused({ code: 'too-big', size: 61.5 * megabyte })).toBe(
      'The file is 61.5 MB: 1.5 MB more than the 60 MB that are opened.',
    );
    // 200,000 bytes are 0.19 MB: 0.2 over the 100
    expect(words.refused({ code: 'too-much', bytes: 100 * megabyte + 200_000 })).toBe(
      'The pictures of the job would take 100.2 MB: 0.2 MB over the 100 MB there is for them. Delete some for good first.',
    );
    expect(words.refused({ code: 'too-many-pixels', wide: 30_000, high: 30_000 })).toBe(
      '30000 × 30000 pixels are too many: at most 64 million pixels, and 20000 along an edge. Set the camera to smaller pictures.',
    );
    expect(words.refused({ code: 'no-room', free: 12 * megabyte })).toContain('12 MB left');
    expect(words.refused({ code: 'not-decoded', type: 'heic' })).toContain('Save it as JPEG');
    expect(words.refused({ code: 'not-decoded', type: 'jpeg' })).toContain('is damaged');
    expect(words.refusedOf('IMG_4.heic', 'no')).toBe('IMG_4.heic: no');
  });

  test('says what of the job is kept all the same', () => {
    expect(words.refused({ code: 'full' })).toContain('The job itself is.');
  });
});

test('one and several', () => {
  expect([words.deleteAsks(1), words.deleteAsks(2)]).toEqual([
    'Delete 1 picture for good?',
    'Delete 2 pictures for good?',
  ]);
  expect([words.busy(0, 1), words.busy(1, 5)]).toEqual([
    'Scaling the picture down',
    'Scaling picture 2 of 5 down',
  ]);
  expect(words.alone(1)).toBe('One picture is in a single copy on this phone.');
  expect(words.idleSays(1)).toMatch(/^One picture .* takes room here\.$/);
});

test('what pictures take, of what they may', () => {
  expect(words.held(0, 0)).toBe('A job may have 300 pictures, 100 MB in all.');
  // 205 KB are 0.2002 MB: never less than it is
  expect(words.held(1, 205 * 1024)).toBe('1 of at most 300, 0.3 MB of at most 100 MB.');
});
