import { describe, expect, test } from 'vitest';
import * as words from '../../../src/screens/marks/facts-words';
import { l } from '../../length/write-figures';
import { said } from '../said';

describe('how far something is off', () => {
  test.each([
    ['3/32', '0.094, past its place'],
    ['-3/32', '-0.094, short of its place'],
    ['0', '0.000'],
  ])('the last of some steps by %s: %s', (off, says) => expect(words.offText(l(off))).toBe(says));

  test.each([
    ['1/32', 'the last is 0.031 past; cut the mate to this pitch'],
    ['-1/32', 'the last is 0.031 short; cut the mate to this pitch'],
  ])('the last as found by %s', (off, says) => expect(words.lastIsOff(l(off))).toBe(says));
});

test('pencil marks move away from the blade, back toward it, or stay', () => {
  expect(words.marksMove(undefined, 'bottom')).toBe('');
  expect(words.marksMove(l('0'), 'bottom')).toBe('they stay where they are.');
  expect(words.marksMove(l('1/64'), 'bottom')).toBe(
    'every mark moves 0.016 away from the blade, toward the bottom end.',
  );
  expect(words.marksMove(l('-1/64'), 'bottom')).toBe('every mark moves 0.016 back toward the blade.');
});

test('the sentence of another stack waits for its width', () => {
  expect(said(words.rebuilt(l('3/4'), 'blank', ''))).toBe(
    'These pencil marks belong to a stack 0.750 wide. Rebuilt to blank',
  );
  expect(said(words.rebuilt(l('3/4'), 'blank', 'they stay where they are.'))).toContain(
    'Rebuilt to blank they stay',
  );
});

test('one stop for two parts says which it is set for', () => {
  expect(said(words.oneStop('side', 'partition', '3/8'))).toBe(
    'One stop for both: set it for the side, and put a 3/8 spacer between the stop and the partition.',
  );
});

test('a pair of stopped grooves says that their stop changes sides', () => {
  expect(words.pair(true)).toContain('stop short of the front');
  expect(words.pair(false)).not.toContain('stop');
});
