import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { byBlocks, isForBlocks } from '../../../../src/trade/sheets/two-d/by-blocks';
import { diceOf } from '../../../../src/trade/sheets/two-d/dice';
import { costOf, sheetsOf } from '../../../../src/trade/sheets/two-d/plan';
import { emptyState, type State } from '../../../../src/trade/sheets/two-d/state';
import { kindsOf, stockOf } from '../../../../src/trade/sheets/two-d/stock';
import type { TwoD } from '../../../../src/trade/sheets/two-d/two-d';
import { runs } from '../../../runs';
import { cutUp } from './cut-up';
import { faultsOf } from './verify';

const stateOf = (problem: TwoD): State => emptyState(stockOf(problem), kindsOf(problem), diceOf(1));

/** Whether a plan of so many sheets is found; it has to be one the saw can cut, and to place every piece. */
function isFound(problem: TwoD, sheets: number): boolean {
  const state = stateOf(problem);
  const finding = byBlocks(state, sheets, 6e7);
  let step = finding.next();
  while (!step.done) step = finding.next();
  if (!step.value) {
    expect([state.cost, state.looseCount]).toEqual([0, state.stock.total]);
    return false;
  }
  const laid = sheetsOf(state, problem);
  const cost = costOf(problem, laid);
  expect([state.looseCount, laid.length]).toEqual([0, sheets]);
  expect(faultsOf(problem, { sheets: laid, cost, bound: cost, proved: true })).toEqual([]);
  return true;
}

const piece = (w: number, h: number, count = 1, turn = false) => ({ w, h, count, turn });
const on = (w: number, h: number, pieces: TwoD['pieces']): TwoD => ({ sheets: [{ w, h, cost: 1 }], pieces });

// A sheet of 10 x 10: 6 wide and 4 wide along one side; the 6 cut over into 6 x 3 and 6 x 7, the 4 into two of 4 x 5.
const one = on(10, 10, [piece(6, 3), piece(6, 7), piece(4, 5, 2)]);

/** Two or three sheets cut up into three to nine pieces each: nothing is wasted but what falls off as too thin. */
const cutFrom = fc
  .record({
    turn: fc.boolean(),
    sheets: fc.array(
      fc.array(fc.double({ min: 0, max: 7.99, noNaN: true }), { minLength: 2, maxLength: 8 }),
      { minLength: 2, maxLength: 3 },
    ),
    less: fc.array(fc.integer({ min: 0, max: 2 }), { minLength: 40, maxLength: 40 }),
  })
  .map(({ turn, sheets, less }) => {
    const pieces = sheets
      .flatMap((figures) => cutUp({ w: 900, h: 500 }, figures))
      .map(({ w, h }, k) => ({ w: w - (less[k] ?? 0), h: h - (less[k + 1] ?? 0) }))
      .filter(({ w, h }) => w > 0 && h > 0)
      .map(({ w, h }, k) => (turn && k % 2 === 0 ? piece(h, w, 1, true) : piece(w, h, 1, turn)));
    return { cut: sheets.length, problem: on(900, 500, pieces) };
  });

describe('plans that leave almost nothing', () => {
  test('pieces a sheet was cut into, nothing lost, are put back on it', () => {
    expect(isFound(one, 1)).toBe(true);
  });

  test('equal pieces of several kinds are put together as one size; two sheets at once', () => {
    const many = on(12, 10, [piece(6, 5), piece(6, 5, 3), piece(12, 4), piece(4, 6, 3)]);
    expect(isFound(many, 2)).toBe(true);
  });

  test('where the area would do and the sizes do not, no plan is found, and nothing is laid', () => {
    expect(isFound(on(10, 10, [piece(6, 6), piece(8, 8)]), 1)).toBe(false);
    // a pinwheel: nothing is wasted, and no saw cuts it from edge to edge
    const pinwheel = on(5, 5, [piece(3, 2, 2), piece(2, 3, 2), piece(1, 1)]);
    expect(isFound(pinwheel, 1)).toBe(false);
  });

  test('much of what sheets were cut into is put back on as many', () => {
    let [asked, back] = [0, 0];
    fc.assert(
      fc.property(cutFrom, ({ cut, problem }) => {
        if (!isForBlocks(stateOf(problem), cut)) return;
        asked += 1;
        if (isFound(problem, cut)) back += 1;
      }),
      { numRuns: runs(40) },
    );
    expect(asked).toBeGreaterThan(12);
    expect(back).toBeGreaterThan(0.4 * asked);
  });
});

describe('isForBlocks', () => {
  test('is for one kind of sheet, no groups, and at most 0.03 of the sheets without a piece', () => {
    const all = piece(10, 10);
    const of = (pieces: TwoD['pieces'], more: Partial<TwoD> = {}) =>
      stateOf({ ...on(10, 10, pieces), ...more });
    expect(isForBlocks(of([all, piece(10, 9)]), 2)).toBe(false); // 0.05
    expect(isForBlocks(of([piece(10, 10, 3), piece(10, 9)]), 4)).toBe(true); // 0.025
    expect(isForBlocks(of([all, all]), 1)).toBe(false); // more than one holds
    expect(isForBlocks(of([all]), 0)).toBe(false);
    expect(isForBlocks(of([{ ...all, together: 1 }]), 1)).toBe(false);
    const sheet = { w: 10, h: 10, cost: 1 };
    expect(isForBlocks(of([all], { sheets: [sheet, { ...sheet, w: 11 }] }), 1)).toBe(false);
    expect(isForBlocks(of([all, all], { sheets: [{ ...sheet, count: 1 }] }), 2)).toBe(false); // not so many there
  });

  test('and where what a block is made of is one whole number', () => {
    const alone = Array.from({ length: 54 }, (_, k) => piece(100 - k, 10));
    const wide = (pieces: TwoD['pieces']) => {
      const area = pieces.reduce((sum, { w, h, count }) => sum + w * h * count, 0);
      return isForBlocks(stateOf(on(area, 1, pieces)), 1);
    };
    expect(wide(alone.slice(0, 52))).toBe(true); // 2^52 choices
    expect(wide(alone)).toBe(false); // 2^54
    expect(wide([piece(10, 10, 256)])).toBe(false); // of one size, a byte tells 255
  });
});
