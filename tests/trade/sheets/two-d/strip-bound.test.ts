import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { sheetLowerBound } from '../../../../src/trade/sheets/two-d/bound';
import { laySheets } from '../../../../src/trade/sheets/two-d/lay-sheets';
import { stripBound } from '../../../../src/trade/sheets/two-d/strip-bound';
import type { TwoD } from '../../../../src/trade/sheets/two-d/two-d';
import { runs } from '../../../runs';

function bounded(problem: TwoD, beaten: number): number {
  const search = stripBound(problem, beaten);
  for (;;) {
    const { value, done } = search.next();
    if (done) return value;
  }
}

function laid(problem: TwoD, effort: number) {
  const search = laySheets(problem, { seed: 1, effort });
  for (;;) {
    const { value, done } = search.next();
    if (done && value.ok) return value.value;
    if (done) throw new Error('no plan');
  }
}

/** In eighths, kerf added: thirty trays 18 11/16 by 17 1/2, and five box bottoms 15 5/8 by 15, on sheets 96 by 48. */
const trays: TwoD = {
  sheets: [{ w: 769, h: 385, cost: 1 }],
  pieces: [
    { w: 151, h: 141, count: 30, turn: false },
    { w: 126, h: 121, count: 5, turn: false },
  ],
};

describe('a bound by strips', () => {
  test('ten trays fill a sheet but for strips no bottom goes in: three sheets do not do, and four are proved', () => {
    expect(sheetLowerBound(trays)).toBe(3);
    expect(bounded(trays, 3)).toBe(4);
    expect(laid(trays, 60)).toMatchObject({ cost: 4, bound: 4, proved: true });
  });

  test('says nothing where pieces may be turned, or sheets differ', () => {
    const turned = { ...trays, pieces: trays.pieces.map((p) => ({ ...p, turn: true })) };
    expect(bounded(turned, 3)).toBe(0);
    expect(bounded({ ...trays, sheets: [...trays.sheets, { w: 800, h: 400, cost: 2 }] }, 3)).toBe(0);
  });

  test('is never above a plan', () => {
    const side = fc.integer({ min: 3, max: 40 });
    fc.assert(
      fc.property(
        fc.array(fc.tuple(side, side, fc.integer({ min: 1, max: 4 })), { minLength: 1, maxLength: 8 }),
        (pieces) => {
          const problem: TwoD = {
            sheets: [{ w: 40, h: 40, cost: 7 }],
            pieces: pieces.map(([w, h, count]) => ({ w, h, count, turn: false })),
          };
          expect(bounded(problem, 0)).toBeLessThanOrEqual(laid(problem, 20).cost);
        },
      ),
      { numRuns: runs(60) },
    );
  });
});
