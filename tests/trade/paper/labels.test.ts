import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { add, atMost, inches, subtract, times, zero } from '../../../src/length/length';
import { labelsOn } from '../../../src/trade/paper/labels';
import { sheetOf } from '../../../src/trade/paper/sheet';
import { runs } from '../../runs';

const length = (least: number, most: number) =>
  fc.integer({ min: least * 64, max: most * 64 }).map((n) => inches(BigInt(n), 64n));

describe('labelsOn', () => {
  test('what is laid out lies on the sheet, one more row or column does not', () => {
    const sheet = sheetOf.letter;
    fc.assert(
      fc.property(length(1, 10), length(1, 10), length(0, 1), length(0, 1), (across, long, gap, margin) => {
        const grid = labelsOn({ sheet, margin, label: { across, long }, gap, count: 7 });
        fc.pre(grid.ok);
        const { turned, columns, rows, pages } = grid.value;
        const [wide, high] = (turned ? [sheet.long, sheet.across] : [sheet.across, sheet.long]).map((side) =>
          subtract(side, times(margin, 2n)),
        );
        const taken = (n: number, each: typeof gap) => add(times(each, BigInt(n)), times(gap, BigInt(n - 1)));
        expect(atMost(taken(columns, across), wide ?? zero)).toBe(true);
        expect(atMost(taken(rows, long), high ?? zero)).toBe(true);
        expect(atMost(taken(columns + 1, across), wide ?? zero)).toBe(false);
        expect(atMost(taken(rows + 1, long), high ?? zero)).toBe(false);
        expect(pages * columns * rows).toBeGreaterThanOrEqual(7);
        expect((pages - 1) * columns * rows).toBeLessThan(7);
      }),
      { numRuns: runs(300) },
    );
  });
});
