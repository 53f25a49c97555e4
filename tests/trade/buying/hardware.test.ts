import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { asInches, inches, times, zero } from '../../../src/length/length';
import { aroundFronts, bandFeet, bandLines } from '../../../src/trade/buying/edging';
import { boxesFor, screwLines, screwsIn } from '../../../src/trade/buying/screws';
import { slideLines } from '../../../src/trade/buying/slides';
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

describe('slideLines', () => {
  test('one pair a drawer, a line for each length, longest trouble said', () => {
    const lines = slideLines([
      { name: 'Left', drawers: 5, long: l('16') },
      { name: 'Right', drawers: 3, long: l('16'), tooLong: l('1/4') },
      { name: 'Low', drawers: 1, long: l('17 11/16'), tooLong: l('1/8') },
    ]);
    expect(lines.map((x) => [x.id, n(x.amount), x.unit])).toEqual([
      ['slides/16', '8', 'pair'],
      ['slides/283~16', '1', 'pair'],
    ]);
    expect(lines.map((x) => x.why.code === 'slides' && w(x.why.tooLong))).toEqual(['1/4', '1/8']);
  });

  test('no drawers, no slides', () => {
    expect(slideLines([{ name: 'Left', drawers: 0, long: l('16') }])).toEqual([]);
  });
});

describe('screwLines', () => {
  test.each([
    [0, 0],
    [1, 50],
    [50, 50],
    [51, 100],
    [100, 100],
    [101, 150],
    [150, 150],
    [151, 200],
  ])('%i screws come in boxes of %i', (count, want) => expect(screwsIn(boxesFor(count))).toBe(want));

  test('every schedule of one length is counted before the boxes: 20 and 36 are one of a hundred', () => {
    const lines = screwLines([
      { words: 'fronts of Left', long: l('1'), pieces: 5, each: 4 },
      { words: 'fronts of Right', long: l('1'), pieces: 9, each: 4 },
      { words: 'cleats', long: l('2 1/2'), pieces: 1, each: 9 },
    ]);
    expect(lines.map((x) => [x.id, n(x.amount)])).toEqual([
      ['screws/1', '100'],
      ['screws/5~2', '50'],
    ]);
  });

  test('a schedule of none is no line', () => {
    expect(screwLines([{ words: 'fronts', long: l('1'), pieces: 0, each: 4 }])).toEqual([]);
    expect(screwLines([{ words: 'fronts', long: l('1'), pieces: 4, each: 0 }])).toEqual([]);
  });

  test('never fewer than counted, and never a box too many', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 5000 }), (count) => {
        const over = screwsIn(boxesFor(count)) - count;
        expect(over >= 0 && over < 50).toBe(true);
      }),
      { numRuns: runs(200) },
    );
  });
});
