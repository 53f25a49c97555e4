import { describe, expect, test } from 'vitest';
import * as words from '../../../src/screens/figure/words';
import { said } from '../said';

describe('a graduation', () => {
  test.each([
    ['1/32', '1/32 in'],
    ['1/2 mm', '1/2 mm'],
    ['0.001', '0.001 in, for cutters'],
  ] as const)('%s is told as %s', (tape, says) => expect(words.tapeChoice(tape)).toBe(says));
});

describe('a line of the strip', () => {
  test('is called by its name, else by its place', () => {
    expect(words.lineCalled('Opening', 3)).toBe('Opening');
    expect(words.lineCalled('', 3)).toBe('line 3');
  });

  test('to be changed says how many lines follow it', () =>
    expect([0, 1, 2].map(words.changeIt)).toEqual([
      'Change it',
      'Change it: one line follows',
      'Change it: 2 lines follow',
    ]));

  test('answers are measured back from is let go by the same button', () => {
    expect(words.measureBack(false)).toBe('Measure answers back from it too');
    expect(words.measureBack(true)).toBe('Stop measuring back from it');
  });
});

test('an empty strip says how lines come to it', () => {
  expect(words.stripHint(0)).toBe('Each sum you finish with = stands here.');
  expect(words.stripHint(1)).toContain('every line built on it follows');
});

test('a count says what is left over', () =>
  expect(said(words.timesAnd('3/4'))).toBe('times, and 3/4 left over'));

describe('why there is no answer', () => {
  test('kinds that do not go together are named, and the swap that helps', () => {
    const error = { code: 'kinds', op: '+', a: 'length', b: 'number' } as const;
    expect(words.reckonText(error, () => '')).toBe(
      'A length plus a count is nothing to mark. A bare number after × or ÷ counts; swap it if it should measure.',
    );
  });

  test('a ring is told by the name of its line', () =>
    expect(words.reckonText({ code: 'ring', id: 'a' }, () => 'line 2')).toBe('Line 2 is built on itself.'));
});

describe('a typed line not read yet', () => {
  test('an empty one is no mistake', () => expect(words.parseText({ code: 'empty' }, '')).toBeUndefined());

  test('a bracket never opened is told by what stands before it', () =>
    expect(words.parseText({ code: 'bracket-not-open', at: 4 }, '3/4 )')).toBe(
      'The bracket after “3/4” was never opened.',
    ));

  test('a figure is quoted as it was typed', () =>
    expect(
      words.parseText(
        { code: 'bad-figure', at: 0, error: { code: 'zero-denominator', text: '1/0', at: 0 } },
        '1/0',
      ),
    ).toBe('“1/0” divides by zero.'));
});
