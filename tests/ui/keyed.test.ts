import { describe, expect, test } from 'vitest';
import type { SlotKey } from '../../src/length/keypad-slot';
import {
  begun,
  draftOf,
  givenBy,
  type Keyed,
  leftOver,
  pressed,
  typed,
  type Wanted,
} from '../../src/ui/keyed';
import { l } from '../length/write-figures';

const length: Wanted = { fill: 'length', tape: '1/32' };
const count: Wanted = { fill: 'count', tape: '1/64' };
const digit = (d: number): SlotKey => ({ key: 'digit', digit: d });

const press = (from: Keyed, wanted: Wanted, ...keys: readonly SlotKey[]): Keyed =>
  keys.reduce((at, key) => pressed(at, key, { wanted, draft: '' }) ?? at, from);
const open = (wanted: Wanted, draft = '') => begun(wanted, draft);
const nothing = { is: 'nothing' };

describe('a blank left', () => {
  test('untouched keeps what it held', () => {
    expect(givenBy(open(length), length)).toEqual(nothing);
    expect(givenBy(open(count), count)).toEqual(nothing);
  });

  test('with keys gives what they show', () => {
    const keyed = press(open(length), length, digit(2), digit(4), { key: 'fraction', sixteenths: 8 });
    expect(givenBy(keyed, length)).toEqual({ is: 'length', value: l('24 1/2') });
    expect(draftOf(keyed, length)).toBe('24 1/2');
  });

  test('emptied by erase is emptied', () => {
    expect(givenBy(press(open(length), length, { key: 'erase' }), length)).toEqual({
      is: 'length',
      value: undefined,
    });
    expect(givenBy(press(open(count), count, { key: 'erase' }), count)).toEqual({
      is: 'count',
      value: undefined,
    });
  });

  test('with text that reads gives the text, in the unit of the tape', () => {
    expect(givenBy(typed(open(length), '5 1/2'), length)).toEqual({ is: 'length', value: l('5 1/2') });
    const metric: Wanted = { fill: 'length', tape: '1 mm' };
    expect(givenBy(typed(open(metric), '254'), metric)).toEqual({ is: 'length', value: l('10') });
  });

  test.each(['5 1/', 'width', '-1/2'])('with “%s” is not left: it reads as no figure', (text) =>
    expect(givenBy(typed(open(length), text), length)).toEqual({ is: 'unread' }),
  );

  test('a figure below nothing reads where one is wanted', () =>
    expect(givenBy(typed(open(length), '-1/2'), { ...length, signed: true })).toEqual({
      is: 'length',
      value: l('-1/2'),
    }));
});

describe('of keys and text the one used last counts', () => {
  const both = typed(press(open(length), length, digit(7)), '5');

  test('text after keys, and keys after text', () => {
    expect(givenBy(both, length)).toEqual({ is: 'length', value: l('5') });
    expect(givenBy(press(both, length, digit(1)), length)).toEqual({ is: 'length', value: l('71') });
  });

  test('text taken out again leaves the keys', () =>
    expect(givenBy(typed(both, ''), length)).toEqual({ is: 'length', value: l('7') }));

  test('text not used stays a draft', () => {
    expect(leftOver(both)).toBe('');
    expect(leftOver(press(both, length, digit(1)))).toBe('5');
  });
});

describe('a draft', () => {
  test('of a length is in the field again, until a key is pressed', () => {
    const again = open(length, '5 1/');
    expect(again.typing).toBe('5 1/');
    expect(pressed(again, digit(3), { wanted: length, draft: '5 1/' })?.typing).toBe('');
  });

  test('of a count is on its keys again; what is no count is not', () => {
    expect(givenBy(open(count, '12'), count)).toEqual({ is: 'count', value: 12 });
    expect(draftOf(open(count, '5 1/2'), count)).toBe('');
  });
});

test('a count has three digits at most', () => {
  const full = press(open(count), count, digit(1), digit(2), digit(3));
  expect(pressed(full, digit(4), { wanted: count, draft: '' })).toBeUndefined();
  expect(givenBy(full, count)).toEqual({ is: 'count', value: 123 });
});
