import { expect, test } from 'vitest';
import { noLines } from '../../../src/length/evaluate';
import { type Key, look, press } from '../../../src/length/keypad';
import { blank } from '../../../src/length/keypad-state';
import type { Tape } from '../../../src/length/tape';
import { unitOnPad } from '../../../src/screens/figure/unit-on-pad';

/** `1 8 × 2`: one key a word. */
const onPad = (keys: string, tape: Tape) => {
  const all = keys.split(' ').filter(Boolean).map(keyOf);
  const state = all.reduce((at, key) => {
    const next = press(at, key, tape);
    return next.ok ? next.value : at;
  }, blank);
  return unitOnPad(look(state, noLines), tape);
};

function keyOf(word: string): Key {
  if (/^\d$/.test(word)) return { key: 'digit', digit: Number(word) };
  if (word === 'mm' || word === 'equals') return { key: word };
  return { key: 'op', op: word as '+' };
}

test('before a key is pressed the pad says what it takes', () => {
  expect(onPad('', '1/32')).toBe('in');
  expect(onPad('', '1/2 mm')).toBe('mm');
  expect(onPad('1 8 +', '1 mm')).toBe('mm');
});

test('a figure keyed says its unit once: millimetres stand with it', () => {
  expect(onPad('1 8', '1/32')).toBe('in');
  expect(onPad('1 8 mm', '1/32')).toBeUndefined();
  expect(onPad('1 8', '1 mm')).toBeUndefined();
  // the unit key of a metric pad goes over to inches
  expect(onPad('1 8 mm', '1 mm')).toBe('in');
});

test('what counts, and what may count, is in no unit; nor is a sum that is done', () => {
  expect(onPad('1 8 ×', '1/32')).toBeUndefined();
  expect(onPad('1 8 × 2', '1/32')).toBeUndefined();
  expect(onPad('1 8 + 2 equals', '1/32')).toBeUndefined();
});
