import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { boxesFor, screwLines, screwsIn } from '../../../src/trade/buying/screws';
import { runs } from '../../runs';
import { l } from '../grooves/sample';
import { n } from './sample';

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
      { bank: 'Left', long: l('1'), pieces: 5, each: 4 },
      { bank: 'Right', long: l('1'), pieces: 9, each: 4 },
      { bank: 'Low', long: l('2 1/2'), pieces: 1, each: 9 },
    ]);
    expect(lines.map((x) => [x.id, n(x.amount)])).toEqual([
      ['screws/1', '100'],
      ['screws/5~2', '50'],
    ]);
  });

  test('an 8 and a 10 of one length are two boxes, and neither is the box of which no number is said', () => {
    // 20 and 36 of one length would be one box of a hundred: 20 of an 8 are fifty, 36 of a 10 are fifty
    const lines = screwLines([
      { bank: 'Cleat', long: l('2'), gauge: 8, pieces: 1, each: 20, along: true },
      { bank: 'Base', long: l('2'), gauge: 10, pieces: 1, each: 36, along: true },
      { bank: 'Top', long: l('2'), gauge: 8, pieces: 1, each: 30, along: true },
      { bank: 'Drawers', long: l('2'), pieces: 1, each: 4 },
    ]);
    expect(lines.map((x) => [x.id, n(x.amount), x.name])).toEqual([
      ['screws/2~no8', '50', 'Cleat, Top'],
      ['screws/2~no10', '50', 'Base'],
      ['screws/2', '50', 'Drawers'],
    ]);
  });

  test('a schedule of none is no line', () => {
    expect(screwLines([{ bank: 'Left', long: l('1'), pieces: 0, each: 4 }])).toEqual([]);
    expect(screwLines([{ bank: 'Left', long: l('1'), pieces: 4, each: 0 }])).toEqual([]);
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
