import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { rootTo } from '../../src/length/diagonal';
import {
  absolute,
  add,
  atMost,
  compare,
  equals,
  fromMillimetres,
  half,
  howMany,
  inches,
  isNegative,
  isPositive,
  isZero,
  type Length,
  less,
  longest,
  negate,
  numerator,
  over,
  ratio,
  shortest,
  subtract,
  sum,
  times,
  toMillimetres,
  zero,
} from '../../src/length/length';
import { type Rounding, roundTo, toWhole } from '../../src/length/round';
import { fromStored, toStored } from '../../src/length/stored';
import { fromOtherEnd, grainOf, markAt, tapes } from '../../src/length/tape';
import { remainder, spoken, writeDecimal, writeLength, writeMark, writeShown } from '../../src/length/write';
import { runs } from '../runs';
import { l, w } from './write-figures';

const whole = fc.bigInt({ min: -(10n ** 12n), max: 10n ** 12n });
const positive = fc.bigInt({ min: 1n, max: 10n ** 6n });

describe('lengths', () => {
  test('Example 1 of length: 18 mm keeps its exact value, and is not 23/32', () => {
    expect(w(fromMillimetres(18n))).toBe('90/127');
    expect(toMillimetres(inches(1n)).toFraction()).toBe('127/5');
    expect(w(subtract(l('23/32'), l('18 mm')))).toBe('41/4064'); // 10.1 thousandths apart: two sheets, not one
  });

  test('the everyday steps do what they say', () => {
    const [one, two, three] = [inches(1n), inches(2n), inches(3n)];
    expect(
      [subtract(one, l('1/4')), half(inches(9n)), times(l('3/4'), 6n), over(inches(9n), 2n)].map(w),
    ).toEqual(['3/4', '4 1/2', '4 1/2', '4 1/2']);
    expect([w(negate(three)), w(absolute(negate(three))), w(sum([one, two])), w(sum([]))]).toEqual([
      '-3',
      '3',
      '3',
      '0',
    ]);
    expect([equals(inches(2n, 4n), l('1/2')), less(one, two), less(two, two), atMost(two, two)]).toEqual([
      true,
      true,
      false,
      true,
    ]);
    expect([w(longest(one, three, two)), w(shortest(two, one)), compare(one, two)]).toEqual(['3', '1', -1]);
    expect([isNegative(l('-1/8')), isNegative(zero), isPositive(zero), isZero(zero)]).toEqual([
      true,
      false,
      false,
      true,
    ]);
    expect(numerator(l('-3/4'))).toBe(-3n);
    expect(w(howMany(inches(9n), two) as unknown as typeof one)).toBe('4 1/2');
  });

  test('a denominator of 0 is a mistake in the program', () => {
    expect(() => inches(1n, 0n)).toThrow(RangeError);
    expect(() => over(inches(1n), 0n)).toThrow(RangeError);
    expect(() => howMany(inches(1n), inches(0n))).toThrow(RangeError);
  });

  test('sums agree with cross-multiplied whole numbers', () => {
    fc.assert(
      fc.property(whole, positive, whole, positive, (a, b, c, d) => {
        const total = add(inches(a, b), inches(c, d));
        expect(total.s * total.n * b * d).toBe((a * d + c * b) * total.d);
        const product = times(inches(a, b), ratio(c, d));
        expect(product.s * product.n * b * d).toBe(a * c * product.d);
      }),
      { numRuns: runs(1000) },
    );
  });
});

describe('roundTo', () => {
  const ways: readonly Rounding[] = ['halfExpand', 'floor', 'ceil'];

  test.each([
    ['5/64', 'halfExpand', '3/32', '-1/64'],
    ['-5/64', 'halfExpand', '-3/32', '1/64'],
    ['5/64', 'floor', '1/16', '1/64'],
    ['-5/64', 'floor', '-3/32', '1/64'],
    ['5/64', 'ceil', '3/32', '-1/64'],
    ['-5/64', 'ceil', '-1/16', '-1/64'],
  ] as const)('%s to a 32nd, %s, is %s and leaves %s', (x, mode, value, rest) => {
    const found = roundTo(l(x), inches(1n, 32n), mode);
    expect([w(found.value), w(found.rest)]).toEqual([value, rest]);
  });

  test('value and rest make the length again, the rest is under a grain, and each way keeps its side', () => {
    fc.assert(
      fc.property(whole, positive, positive, fc.constantFrom(...ways), (n, d, g, mode) => {
        const grain = inches(1n, g);
        const x = inches(n, d);
        const { value, rest } = roundTo(x, grain, mode);
        expect(add(value, rest).equals(x)).toBe(true);
        expect(value.mul(g).d).toBe(1n);
        const twice = rest.abs().mul(2n).compare(grain);
        if (mode === 'halfExpand') expect(twice).toBeLessThanOrEqual(0);
        if (mode === 'halfExpand' && twice === 0)
          expect(less(value.abs() as typeof x, x.abs() as typeof x)).toBe(false);
        if (mode === 'floor') expect(rest.s >= 0n || rest.n === 0n).toBe(true);
        if (mode === 'ceil') expect(rest.s <= 0n || rest.n === 0n).toBe(true);
        expect(less(rest.abs() as typeof x, grain)).toBe(true);
      }),
      { numRuns: runs(1500) },
    );
  });

  test('a grain of nothing is a mistake in the program', () => {
    expect(() => roundTo(inches(1n), inches(0n), 'floor')).toThrow(RangeError);
  });

  test('toWhole agrees with long division worked apart', () => {
    fc.assert(
      fc.property(whole, positive, (n, d) => {
        const down = n >= 0n ? n / d : -((-n + d - 1n) / d);
        expect(toWhole(ratio(n, d), 'floor')).toBe(down);
        const twice = 2n * (n < 0n ? -n : n);
        const away = (twice + d) / (2n * d);
        expect(toWhole(ratio(n, d), 'halfExpand')).toBe(n < 0n ? -away : away);
      }),
      { numRuns: runs(1500) },
    );
  });
});

describe('markAt', () => {
  test.each([
    ['36 973/1016', '1/32', '36 31/32', 'scant', '0.011'],
    ['18 7/64', '1/16', '18 1/8', 'scant', '0.016'],
    ['18 7/64', '1/32', '18 1/8', 'scant', '0.016'],
    ['13 57/128', '1/64', '13 29/64', 'scant', '0.008'],
    ['18 253/2032', '1/32', '18 1/8', 'on the mark', ''],
  ] as const)('%s on a %s tape is %s %s %s', (x, tape, mark, word, by) => {
    const found = markAt(l(x), tape);
    expect(writeLength(found.value)).toBe(mark);
    expect(remainder(found.rest)).toEqual({ word, by });
  });

  test('an exact mark has nothing to say', () => {
    expect(remainder(markAt(l('18 7/64'), '1/64').rest)).toBeUndefined();
  });

  test.each(tapes)('every mark of a %s tape is its own mark', (tape) => {
    fc.assert(
      fc.property(fc.bigInt({ min: -5000n, max: 5000n }), (k) => {
        const x = times(grainOf(tape), k);
        expect(markAt(x, tape).value.equals(x)).toBe(true);
      }),
      { numRuns: runs(1000) },
    );
  });
});

describe('fromOtherEnd', () => {
  test('Example 5 of length: both marks of a 64 1/4 side meet: rounding each apart would be a sixteenth too much', () => {
    const mark = markAt(l('21 13/32'), '1/16');
    const other = fromOtherEnd(l('64 1/4'), mark, '1/16');
    expect([writeMark(mark, '1/16'), writeMark(other, '1/16')]).toEqual([
      '21 7/16 (scant 0.031)',
      '42 13/16 (strong 0.031)',
    ]);
  });

  test('mark and other end add up to the rounded length, their remainders to what that left', () => {
    fc.assert(
      fc.property(positive, positive, fc.constantFrom(...tapes), (n, m, tape) => {
        const length = inches(n, 977n);
        const mark = markAt(inches(m, 1009n), tape);
        const other = fromOtherEnd(length, mark, tape);
        const whole = markAt(length, tape);
        expect(add(mark.value, other.value).equals(whole.value)).toBe(true);
        expect(add(mark.rest, other.rest).equals(whole.rest)).toBe(true);
        expect(add(other.value, other.rest).equals(subtract(length, inches(m, 1009n)))).toBe(true);
      }),
      { numRuns: runs(1000) },
    );
  });
});

describe('writing', () => {
  test.each([
    ['13 7/16', '13 7/16'],
    ['3/4', '3/4'],
    ['0', '0'],
    ['-1/8', '-1/8'],
    ['64', '64'],
  ])('%s is written %s', (x, text) => expect(writeLength(l(x))).toBe(text));

  test('a metric tape writes millimetres', () => {
    expect(writeLength(fromMillimetres(18n), '1 mm')).toBe('18 mm');
    expect(writeLength(fromMillimetres(37n, 2n), '1/2 mm')).toBe('18.5 mm');
  });

  // 177/500 is on no tape: .354; 127 mm is 5 inches, and 23/32 of one is 18.25625 mm
  test.each([
    ['23/32', 'in', '23/32'],
    ['177/500', 'in', '0.354'],
    ['1/80', 'in', '0.013'],
    ['1/128', 'in', '0.008'],
    ['18 mm', 'in', '18 mm'],
    ['5', 'mm', '127 mm'],
    ['23/32', 'mm', '18.26 mm'],
    ['18.2 mm', 'mm', '18.2 mm'],
  ] as const)('%s on a screen in %s is %s', (x, units, text) => expect(writeShown(l(x), units)).toBe(text));

  test('a screen shows no fraction that no tape has', () => {
    fc.assert(
      fc.property(fc.bigInt(1n, 4000n), fc.bigInt(1n, 4000n), (n, d) => {
        const x = inches(n, d);
        expect(writeShown(x, 'in')).toMatch(/^(\d+ )?(\d+\/(2|4|8|16|32|64)|\d+|\d+\.\d{3}|[\d.]+ mm)$/);
        expect(writeShown(x, 'mm')).toMatch(/^[\d.]+ mm$/);
      }),
      { numRuns: runs(300) },
    );
  });

  test('thousandths are the nearest', () => {
    expect([writeDecimal(l('47/64')), writeDecimal(l('1/64')), writeDecimal(l('-0.0005'))]).toEqual([
      '0.734',
      '0.016',
      '-0.001',
    ]);
  });

  test('a mark is spoken once, remainder and all', () => {
    const { value, rest } = markAt(l('13 57/128'), '1/16');
    expect(spoken(value, rest)).toBe('13 and 7/16 inches, strong by 0.008');
    expect(spoken(l('3'))).toBe('3 inches');
    expect(spoken(l('0.734'), undefined, '0.001')).toBe('0.734 inches');
    expect(spoken(l('-3/4'))).toBe('minus 3/4 inches');
  });
});

describe('stored lengths', () => {
  test('what was written reads back to the same', () => {
    fc.assert(
      fc.property(whole, positive, (n, d) => {
        const back = fromStored(toStored(inches(n, d)));
        expect(back.ok && back.value.equals(inches(n, d))).toBe(true);
      }),
      { numRuns: runs(1000) },
    );
  });

  test.each(['', '1/0', '1/', '/2', '1.5', '01', '1e9', ' 1', '1 1/2', '+1', '1/-2', 'NaN', '9'.repeat(61)])(
    '“%s” is no stored length',
    (text) => expect(fromStored(text).ok).toBe(false),
  );
});

test('rootTo: a square below nothing has no root, and a grain is more than nothing', () => {
  expect(() => rootTo(ratio(-25n), inches(1n, 64n))).toThrow(RangeError);
  expect(() => rootTo(ratio(25n), inches(0n))).toThrow(RangeError);
  expect(rootTo(ratio(0n), inches(1n, 64n)).equals(0n)).toBe(true);
});

test('fractions of a run add up whatever their denominators', () => {
  const parts: readonly Length[] = ['1/3', '1/7', '11/21', '18 mm', '109/127'].map(l);
  expect(w(sum(parts))).toBe('2 72/127');
});
