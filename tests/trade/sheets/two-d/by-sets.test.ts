import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { bySets, isForSets } from '../../../../src/trade/sheets/two-d/by-sets';
import { diceOf } from '../../../../src/trade/sheets/two-d/dice';
import { costOf, sheetsOf } from '../../../../src/trade/sheets/two-d/plan';
import { emptyState } from '../../../../src/trade/sheets/two-d/state';
import { kindsOf, stockOf } from '../../../../src/trade/sheets/two-d/stock';
import type { TwoD } from '../../../../src/trade/sheets/two-d/two-d';
import { runs } from '../../../runs';
import { leastSheets } from './brute';
import { cutUp } from './cut-up';
import { few } from './few';
import { laid } from './instances';
import { faultsOf } from './verify';

const stateOf = (problem: TwoD) => emptyState(stockOf(problem), kindsOf(problem), diceOf(1));

/** All it finds out: the best bound, and every plan. */
function found(problem: TwoD, known: number) {
  const state = stateOf(problem);
  const plans: ReturnType<typeof sheetsOf>[] = [];
  let bound = 0;
  for (const one of bySets(state, known, 3e8)) {
    if (one && 'bound' in one) bound = Math.max(bound, one.bound);
    if (one && 'laid' in one) plans.push(sheetsOf(state, problem));
  }
  return { bound, plans };
}

/** Three or four sheets cut up into three to five pieces each, some of them turned, all a little smaller than cut. */
const cutFrom = fc
  .record({
    turn: fc.boolean(),
    sheets: fc.array(
      fc.array(fc.double({ min: 0, max: 3.99, noNaN: true }), { minLength: 2, maxLength: 4 }),
      { minLength: 3, maxLength: 4 },
    ),
    less: fc.array(fc.integer({ min: 0, max: 6 }), { minLength: 40, maxLength: 40 }),
  })
  .map(({ turn, sheets, less }) => {
    const pieces = sheets
      .flatMap((figures) => cutUp({ w: 100, h: 60 }, figures))
      .map(({ w, h }, k) => ({ w: Math.max(1, w - (less[k] ?? 0)), h: Math.max(1, h - (less[k + 1] ?? 0)) }))
      .map(({ w, h }, k) => ({ ...(turn && k % 2 === 0 ? { w: h, h: w } : { w, h }), count: 1, turn }));
    return { cut: sheets.length, problem: { sheets: [{ w: 100, h: 60, cost: 1 }], pieces } };
  });

// A sheet of 10 x 10 and pieces of 6 x 5 that may be turned. Two lie one over the other, 6 x 10, and beside them 4 is
// left: too narrow for a third. Turned, two lie side by side, 10 x 6, and over them 4 is left; one each way is 11 wide
// or 11 high. So two a sheet: five pieces need three sheets, though their area, 150, is less than two have.
const five: TwoD = { sheets: [{ w: 10, h: 10, cost: 7 }], pieces: [{ w: 6, h: 5, count: 5, turn: true }] };

describe('sheets of any sets of pieces', () => {
  test('five pieces, two a sheet at the most, need three sheets; and three do', () => {
    expect(found(five, 9).bound).toBe(3);
    const plan = laid(five, 0, 50);
    expect([plan.cost, plan.bound, plan.proved]).toEqual([21, 21, true]);
  });

  test('no bound is above the fewest sheets there are, tried every way, and every plan can be cut', () => {
    fc.assert(
      fc.property(few, (problem) => {
        const [sheet = { w: 0, h: 0 }] = problem.sheets;
        const least = leastSheets(sheet, problem.pieces);
        const { bound, plans } = found(problem, 9);
        expect(bound).toBeLessThanOrEqual(least);
        expect(bound).toBeGreaterThanOrEqual(1);
        for (const sheets of plans) {
          expect(
            faultsOf(problem, {
              sheets,
              cost: costOf(problem, sheets),
              bound: 1,
              proved: sheets.length === 1,
            }),
          ).toEqual([]);
          expect(sheets.length).toBeGreaterThanOrEqual(least);
        }
      }),
      { numRuns: runs(60) },
    );
  });

  test('no bound is above the sheets that the pieces were cut from, and a plan takes no fewer than the bound', () => {
    let met = 0;
    fc.assert(
      fc.property(cutFrom, ({ cut, problem }) => {
        const { bound, plans } = found(problem, 9);
        expect(bound).toBeLessThanOrEqual(cut);
        for (const sheets of plans) expect(sheets.length).toBeGreaterThanOrEqual(bound);
        if (bound === cut) met += 1;
      }),
      { numRuns: runs(25) },
    );
    expect(met).toBeGreaterThan(5);
  });
});

describe('isForSets', () => {
  test('is for one kind of sheet, no groups, six pieces a sheet and 48 sizes at the most', () => {
    const piece = { w: 6, h: 5, count: 1, turn: true };
    const of = (count: number, sizes = 1): TwoD => ({
      ...five,
      pieces: Array.from({ length: sizes }, () => ({ ...piece, count })),
    });
    expect(isForSets(stateOf(of(6)), 1)).toBe(true);
    expect(isForSets(stateOf(of(7)), 1)).toBe(false);
    expect(isForSets(stateOf(of(1, 48)), 24)).toBe(true);
    expect(isForSets(stateOf(of(1, 49)), 24)).toBe(false);
    expect(isForSets(stateOf({ ...five, sheets: [...five.sheets, ...five.sheets] }), 3)).toBe(false);
    expect(isForSets(stateOf({ ...five, pieces: [{ ...piece, together: 1 }] }), 1)).toBe(false);
  });
});
