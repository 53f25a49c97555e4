import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { inches, times } from '../../../src/length/length';
import { kerfFound } from '../../../src/trade/machines/kerf-test';
import { runs } from '../../runs';
import { between, l, refusal, spelled, value, w } from '../room/sample';

const board = { before: l('6'), cuts: 1, pieces: l('2'), rest: l('3 7/8') };

describe('kerfFound', () => {
  test('one cut: the board before less its two pieces', () => {
    // 6 - 2 - 3 7/8
    expect(w(value(kerfFound(board)))).toBe('1/8');
  });

  test('five cuts share what the board lost', () => {
    // 12 - 8 1/16 - 3 3/8 = 9/16, over 5: 9/80
    const five = { before: l('12'), cuts: 5, pieces: l('8 1/16'), rest: l('3 3/8') };
    expect(value(kerfFound(five)).toFraction()).toBe('9/80');
  });

  test('pieces as wide as the board, or wider, are no cut', () => {
    expect(refusal(kerfFound({ ...board, rest: l('4') }))).toEqual({ code: 'nothing-lost', by: '0' });
    expect(refusal(kerfFound({ ...board, rest: l('4 1/16') }))).toEqual({ code: 'nothing-lost', by: '1/16' });
  });

  test('no blade takes less than 1/32 or more than 1/4; just those can be', () => {
    expect(refusal(kerfFound({ ...board, rest: l('3 63/64') }))).toEqual({
      code: 'too-narrow',
      kerf: '1/64',
      by: '1/64',
      limit: '1/32',
    });
    expect(refusal(kerfFound({ ...board, rest: l('3 5/8') }))).toEqual({
      code: 'too-wide',
      kerf: '3/8',
      by: '1/8',
      limit: '1/4',
    });
    expect(
      spelled(['3 31/32', '3 3/4'].map((rest) => value(kerfFound({ ...board, rest: l(rest) })))),
    ).toEqual(['1/32', '1/4']);
  });

  test('millimetres have limits of their own: .8 to 6.4', () => {
    // 100 - 50 - 49.3 = .7 and 100 - 50 - 43.5 = 6.5
    const mm = (x: bigint) => inches(x * 5n, 127n * 10n);
    const at = (rest: bigint) => ({ before: mm(1000n), cuts: 1, pieces: mm(500n), rest: mm(rest) });
    expect(refusal(kerfFound(at(493n), 'mm'))).toMatchObject({ code: 'too-narrow' });
    expect(refusal(kerfFound(at(435n), 'mm'))).toMatchObject({ code: 'too-wide' });
    expect(kerfFound(at(468n), 'mm').ok).toBe(true);
  });

  test('nothing read as nothing, and no cut, are refused', () => {
    expect(refusal(kerfFound({ ...board, pieces: l('0') }))).toEqual({
      code: 'not-positive',
      what: 'pieces',
    });
    expect(refusal(kerfFound({ ...board, cuts: 0 }))).toEqual({ code: 'no-cut' });
  });

  test('strips cut with a blade give that blade back', () => {
    const strips = fc.array(between(1, 8), { minLength: 1, maxLength: 12 });
    const kerfs = fc.bigInt({ min: 4n, max: 32n }).map((n) => inches(n, 128n));
    fc.assert(
      fc.property(strips, kerfs, between(1, 20), (widths, kerf, rest) => {
        const pieces = widths.reduce((all, x) => all.add(x) as typeof x, l('0'));
        const before = pieces.add(rest).add(times(kerf, BigInt(widths.length))) as typeof rest;
        expect(value(kerfFound({ before, cuts: widths.length, pieces, rest })).equals(kerf)).toBe(true);
      }),
      { numRuns: runs(200) },
    );
  });
});
