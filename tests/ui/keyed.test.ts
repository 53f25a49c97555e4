import { describe, expect, test } from 'vitest';
import type { SlotKey } from '../../src/length/keypad-slot';
import {
  begun,
  givenBy,
  type Keyed,
  pressed,
  shownIn,
  typed,
  unitBeside,
  type Wanted,
} from '../../src/ui/keyed';
import { l } from '../length/write-figures';

const length: Wanted = { fill: 'length', tape: '1/32' };
const metric: Wanted = { fill: 'length', tape: '1 mm' };
const count: Wanted = { fill: 'count', tape: '1/64' };
const digit = (d: number): SlotKey => ({ key: 'digit', digit: d });
const erase: SlotKey = { key: 'erase' };

const press = (from: Keyed, wanted: Wanted, ...keys: readonly SlotKey[]): Keyed =>
  keys.reduce((at, key) => pressed(at, key, wanted) ?? at, from);
const open = (wanted: Wanted, draft = '') => begun(wanted, draft);
const nothing = { is: 'nothing' };
const left = (keyed: Keyed, wanted: Wanted) => {
  const given = givenBy(keyed, wanted);
  return given.is === 'length' || given.is === 'count' ? given.value : given.is;
};

describe('a blank left', () => {
  test('untouched keeps what it held', () => {
    expect(givenBy(open(length), length)).toEqual(nothing);
    expect(givenBy(open(count), count)).toEqual(nothing);
  });

  test('with keys gives what they show', () => {
    const keyed = press(open(length), length, digit(2), digit(4), { key: 'fraction', sixteenths: 8 });
    expect(left(keyed, length)).toEqual(l('24 1/2'));
    expect(shownIn(keyed)).toBe('24 1/2');
  });

  test('emptied by erase is emptied', () => {
    expect(givenBy(press(open(length), length, erase), length)).toEqual({ is: 'length', value: undefined });
    expect(givenBy(press(open(count), count, erase), count)).toEqual({ is: 'count', value: undefined });
  });

  test('with text that reads gives the text, in the unit of the tape', () => {
    expect(left(typed(open(length), '5 1/2'), length)).toEqual(l('5 1/2'));
    expect(left(typed(open(metric), '254'), metric)).toEqual(l('10'));
    expect(left(press(open(metric), metric, digit(2), digit(5), digit(4)), metric)).toEqual(l('10'));
  });

  test.each(['5 1/', 'width', '-1/2'])('with “%s” is not left: it reads as no figure', (text) =>
    expect(givenBy(typed(open(length), text), length)).toEqual({ is: 'unread' }),
  );

  test('a figure below nothing reads where one is wanted', () =>
    expect(left(typed(open(length), '-1/2'), { ...length, signed: true })).toEqual(l('-1/2')));
});

describe('keys and keyboard write in one field', () => {
  test.each([
    ['5', '51', '51'],
    ['13 7/16', '131 7/16', '131 7/16'],
    ["5' 3", "5' 31", '5 ft 31'],
  ])('“%s” and the key 1 are “%s”', (text, shown, read) => {
    const keyed = press(typed(open(length), text), length, digit(1));
    expect(shownIn(keyed)).toBe(shown);
    expect(left(keyed, length)).toEqual(l(read));
  });

  test('text goes on from keys, and what is taken out again is out', () => {
    const keyed = press(open(length), length, digit(7));
    expect(left(typed(keyed, '75'), length)).toEqual(l('75'));
    expect(left(typed(keyed, ''), length)).toBeUndefined();
    expect(shownIn(typed(keyed, ''))).toBe('');
  });

  test('erase takes the last sign off a text that no keys make', () =>
    expect(shownIn(press(typed(open(length), "5' x"), length, erase))).toBe("5' "));

  test('a fraction goes to a typed whole number', () => {
    const keyed = press(typed(open(length), '13'), length, { key: 'fraction', sixteenths: 7 });
    expect([shownIn(keyed), left(keyed, length)]).toEqual(['13 7/16', l('13 7/16')]);
  });
});

describe('the unit beside the field', () => {
  test('is that of the tape, or stands in the field', () => {
    expect(unitBeside(open(length), length)).toBe('in');
    expect(unitBeside(open(metric), metric)).toBe('mm');
    expect(
      unitBeside(press(open(length), length, digit(1), digit(8), { key: 'mm' }), length),
    ).toBeUndefined();
    expect(unitBeside(typed(open(metric), '18"'), metric)).toBeUndefined();
  });
});

describe('a draft', () => {
  test('of a length is in the field again, and keys go on from it', () => {
    const again = open(length, '5 1/');
    expect(shownIn(again)).toBe('5 1/');
    expect(left(press(again, length, digit(3)), length)).toEqual(l('5 1/3'));
  });

  test('of a count is on its keys again; what is no count is not', () => {
    expect(left(open(count, '12'), count)).toBe(12);
    expect(shownIn(open(count, '5 1/2'))).toBe('');
  });
});

test('a count has three digits at most', () => {
  const full = press(open(count), count, digit(1), digit(2), digit(3));
  expect(pressed(full, digit(4), count)).toBeUndefined();
  expect(left(full, count)).toBe(123);
});
