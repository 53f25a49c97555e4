import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { isForPatterns } from '../../../../src/trade/sheets/two-d/by-patterns';
import { diceOf } from '../../../../src/trade/sheets/two-d/dice';
import { emptyState } from '../../../../src/trade/sheets/two-d/state';
import { kindsOf, stockOf } from '../../../../src/trade/sheets/two-d/stock';
import type { TwoD } from '../../../../src/trade/sheets/two-d/two-d';
import { runs } from '../../../runs';
import { laid } from './instances';
import { faultsOf } from './verify';

// Sixty sheets of 100 x 60, cut up without waste. Thirty in two strips: 35 high of 40 + 33 + 27 = 100, and 25 high of
// 50 + 50. Thirty in three columns: 45 wide of 3 x 20 = 60, 31 wide of 2 x 30, 24 wide and 60 high: 45 + 31 + 24 = 100.
const sixty = (turn: boolean): TwoD => ({
  sheets: [{ w: 100, h: 60, cost: 1 }],
  pieces: [
    { w: 40, h: 35, count: 30, turn },
    { w: 33, h: 35, count: 30, turn },
    { w: 27, h: 35, count: 30, turn },
    { w: 50, h: 25, count: 60, turn },
    { w: 45, h: 20, count: 90, turn },
    { w: 31, h: 30, count: 60, turn },
    { w: 24, h: 60, count: 30, turn },
  ],
});

const many = fc
  .record({
    w: fc.integer({ min: 20, max: 200 }),
    h: fc.integer({ min: 20, max: 100 }),
    pieces: fc.array(
      fc.record({
        w: fc.double({ min: 0.05, max: 1, noNaN: true }),
        h: fc.double({ min: 0.05, max: 1, noNaN: true }),
        count: fc.integer({ min: 8, max: 20 }),
        turn: fc.boolean(),
      }),
      { minLength: 2, maxLength: 5 },
    ),
  })
  .map(
    ({ w, h, pieces }): TwoD => ({
      sheets: [{ w, h, cost: 3 }],
      pieces: pieces.map((p) => ({ ...p, w: Math.ceil(p.w * w), h: Math.ceil(p.h * h) })),
    }),
  );

const stateOf = (problem: TwoD) => emptyState(stockOf(problem), kindsOf(problem), diceOf(1));

describe('many equal pieces', () => {
  test.each([false, true])('330 pieces cut from sixty sheets go onto sixty again, turned: %s', (turn) => {
    const problem = sixty(turn);
    const plan = laid(problem, 60, 400);
    expect(faultsOf(problem, plan)).toEqual([]);
    expect([plan.cost, plan.proved]).toEqual([60, true]);
  });

  test('a plan stands up to a check from outside, and the same seed and effort give the same plan', () => {
    fc.assert(
      fc.property(many, (problem) => {
        const plan = laid(problem, 0, 20);
        expect(faultsOf(problem, plan)).toEqual([]);
        expect(laid(problem, 0, 20)).toEqual(plan);
      }),
      { numRuns: runs(40) },
    );
  });
});

describe('isForPatterns', () => {
  const problem = sixty(false);

  test('is for one kind of sheet, no groups, and eight of a kind in the mean', () => {
    expect(isForPatterns(stateOf(problem))).toBe(true);
    expect(isForPatterns(stateOf({ ...problem, sheets: [...problem.sheets, ...problem.sheets] }))).toBe(
      false,
    );
    const together = problem.pieces.map((p, k) => (k === 0 ? { ...p, together: 1 } : p));
    expect(isForPatterns(stateOf({ ...problem, pieces: together }))).toBe(false);
    const few = (count: number) => problem.pieces.map((p) => ({ ...p, count }));
    expect(isForPatterns(stateOf({ ...problem, pieces: few(8) }))).toBe(true);
    expect(isForPatterns(stateOf({ ...problem, pieces: few(7) }))).toBe(false);
  });
});
