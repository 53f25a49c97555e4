import { describe, expect, test } from 'vitest';
import { fromMillimetres, inches, zero } from '../../../src/length/length';
import type { Tape } from '../../../src/length/tape';
import { aloud, cardinal } from '../../../src/screens/shared/aloud-words';
import { l } from '../../length/write-figures';

const said = (value: string, rest = zero, tape: Tape = '1/32') => aloud({ value: l(value), rest }, tape);

describe('aloud', () => {
  test.each([
    ['17 1/2', 'seventeen and a half'],
    ['3/4', 'three quarters'],
    ['1/8', 'an eighth'],
    ['1 1/4', 'one and a quarter'],
    ['20 5/16', 'twenty and five sixteenths'],
    ['64 1/32', 'sixty-four and one thirty-second'],
    ['37 47/64', 'thirty-seven and forty-seven sixty-fourths'],
    ['96', 'ninety-six'],
    ['0', 'zero'],
    ['-1/16', 'minus one sixteenth'],
    ['-2 3/8', 'minus two and three eighths'],
  ])('%s', (value, words) => expect(said(value)).toBe(words));

  test('what rounding left is said in thousandths, one in one', () => {
    expect(said('17 1/2', inches(-3n, 1000n))).toBe('seventeen and a half, scant by three thousandths');
    expect(said('17 1/2', inches(1n, 1000n))).toBe('seventeen and a half, strong by one thousandth');
    expect(said('5', inches(11n, 1000n))).toBe('five, strong by eleven thousandths');
    expect(said('5', inches(1n, 10_000n))).toBe('five, on the mark');
  });

  test('decimals digit by digit, and in millimetres hundredths', () => {
    expect(said('17 503/1000', zero, '0.001')).toBe('seventeen point five zero three inches');
    expect(aloud({ value: fromMillimetres(4355n, 10n), rest: zero }, '1/2 mm')).toBe(
      'four hundred thirty-five point five millimetres',
    );
    expect(aloud({ value: fromMillimetres(18n), rest: fromMillimetres(12n, 100n) }, '1/2 mm')).toBe(
      'eighteen millimetres, strong by twelve hundredths',
    );
  });
});

describe('cardinal', () => {
  test.each([
    [13, 'thirteen'],
    [40, 'forty'],
    [100, 'one hundred'],
    [219, 'two hundred nineteen'],
    [1632, 'one thousand six hundred thirty-two'],
    [20_000, 'twenty thousand'],
  ])('%i', (n, words) => expect(cardinal(n)).toBe(words));
});
