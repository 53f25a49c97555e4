import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { asInches, inches, times, zero } from '../../../src/length/length';
import { aroundFronts, bandFeet, bandLines } from '../../../src/trade/buying/edging';
import { runs } from '../../runs';
import { l, w } from '../grooves/sample';
import { n, twoFronts } from './sample';

const banded = { fromBlank: true, band: l('1/16') } as const;

describe('bandLines', () => {
  const line = (width: string, height: string, over = {}) =>
    bandLines([{ name: 'Drawers', fronts: twoFronts(width, height, over), thick: l('23/32') }]);

  test('two fronts 17 × 10 have 108 inches of edge: with a tenth over 9.9 feet, so 10', () => {
    expect(w(aroundFronts(twoFronts('17', '20', banded)))).toBe('108');
    expect(line('17', '20', banded).map((x) => [x.id, n(x.amount), x.unit])).toEqual([
      ['edging/1~16x23~32', '10', 'foot'],
    ]);
  });

  test('120 inches and a tenth are eleven feet to the letter, and stay eleven', () => {
    expect(line('20', '20', banded).map((x) => n(x.amount))).toEqual(['11']);
    expect(n(bandFeet(inches(7681n, 64n)))).toBe('12');
  });

  test('no band said, or none of nothing, or fronts not off a blank: no line', () => {
    expect(line('17', '20', { fromBlank: true })).toEqual([]);
    expect(line('17', '20', { fromBlank: true, band: zero })).toEqual([]);
    expect(line('17', '20', { band: l('1/16') })).toEqual([]);
  });

  test('banks with one band share a line; a thicker band has its own', () => {
    const of = (name: string, band: string) => ({
      name,
      fronts: twoFronts('17', '20', { fromBlank: true, band: l(band) }),
      thick: l('23/32'),
    });
    const found = bandLines([of('Left', '1/16'), of('Right', '1/16'), of('Low', '1/8')]);
    // 216 inches and a tenth: 19.8 feet
    expect(found.map((x) => [x.name, n(x.amount)])).toEqual([
      ['Left, Right', '20'],
      ['Low', '10'],
    ]);
  });

  test('the feet bought always cover the edges and their tenth, less than a foot over', () => {
    fc.assert(
      fc.property(fc.bigInt({ min: 0n, max: 10n ** 6n }), (k) => {
        const want = inches(k * 11n, 64n * 10n);
        const over = times(asInches(bandFeet(inches(k, 64n))), 12n).sub(want);
        expect(over.gte(0n) && over.lt(12n)).toBe(true);
      }),
      { numRuns: runs(200) },
    );
  });
});
