import { expect, test } from 'vitest';
import { wentOut } from '../../../src/screens/shared/pictured-out-words';

test('a copy says how many pictures did not go along, one and several', () => {
  expect(wentOut('downloaded', 0)).toBe('It is in one file among the downloads, pictures and all.');
  expect(wentOut('downloaded', 1)).toBe(
    'It is in one file among the downloads. 1 picture is not whole on this phone and did not go along.',
  );
  expect(wentOut('shared', 2)).toBe(
    'It was shared. 2 pictures are not whole on this phone and did not go along.',
  );
  expect(wentOut('left', 3)).toBe('Cancelled; nothing saved.');
});
