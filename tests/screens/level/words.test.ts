import { expect, test } from 'vitest';
import * as words from '../../../src/screens/level/words';
import { l } from '../../trade/grooves/sample';

test('of two feet in a row one is left and one right; of more each has its number', () => {
  expect(words.footName({ row: 'front', number: 1 }, 2)).toBe('Front left');
  expect(words.footName({ row: 'back', number: 2 }, 2)).toBe('Back right');
  expect(words.footName({ row: 'middle', number: 3 }, 3)).toBe('Middle 3 from the left');
});

test('one foot and several are told apart', () => {
  expect(words.missing(1)).toBe('1 foot still to be read.');
  expect(words.missing(3)).toBe('3 feet still to be read.');
});

test('a shim too thick wants a scribed base, a foot past its end says which end', () => {
  expect(words.over('Back left', l('3/4'), l('1/8'))).toBe(
    'Back left: 1/8 over the 3/4 that shims are sound for. Scribe a base to the floor instead.',
  );
  expect(words.past('Back left', l('1/16'))).toBe('Back left: 1/16 past its longest.');
  expect(words.past('Back left', l('-1/16'))).toBe('Back left: 1/16 under its shortest.');
});
