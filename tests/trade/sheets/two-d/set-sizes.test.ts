import fc from 'fast-check';
import { expect, test } from 'vitest';
import { meterOf } from '../../../../src/trade/sheets/one-d/meter';
import { diceOf } from '../../../../src/trade/sheets/two-d/dice';
import { layNests, piecesOn } from '../../../../src/trade/sheets/two-d/nest';
import { sheetsOf } from '../../../../src/trade/sheets/two-d/plan';
import { type PieceSet, setsOn } from '../../../../src/trade/sheets/two-d/set-sizes';
import { emptyState } from '../../../../src/trade/sheets/two-d/state';
import { kindsOf, stockOf } from '../../../../src/trade/sheets/two-d/stock';
import type { TwoD } from '../../../../src/trade/sheets/two-d/two-d';
import { runs } from '../../../runs';
import { comeOut } from './brute';
import { few } from './few';
import { faultsOf } from './verify';

/** The set of all pieces, one after the other in rank; nothing as soon as one finds no room. */
function setOfAll(problem: TwoD): { readonly set?: PieceSet; readonly sets: ReturnType<typeof setsOn> } {
  const stock = stockOf(problem);
  const [sheet] = kindsOf(problem);
  if (!sheet) throw new Error('no sheet');
  const sets = setsOn(stock, sheet, meterOf(1e9));
  let set = sets.none;
  for (const [rank, piece] of sets.pieces.entries())
    for (let k = 0; k < (stock.count[piece] ?? 0); k += 1) {
      const takes = sets.takes(set, rank);
      if (takes === undefined) throw new Error('too much for so few');
      if (!takes) return { sets };
      set = sets.plus(set, rank);
    }
  return { set, sets };
}

test('a sheet takes a set where some way of cutting it brings all pieces out, and no other', () => {
  const seen = { taken: 0, not: 0 };
  fc.assert(
    fc.property(few, (problem) => {
      const { set } = setOfAll(problem);
      const [sheet = { w: 0, h: 0 }] = problem.sheets;
      const pieces = problem.pieces.flatMap((p) => Array.from({ length: p.count }, () => p));
      expect(set !== undefined).toBe(comeOut(sheet, pieces));
      seen[set ? 'taken' : 'not'] += 1;
    }),
    { numRuns: runs(150) },
  );
  expect(Math.min(seen.taken, seen.not)).toBeGreaterThan(15);
});

test('as it says a set lies, it can be cut from one sheet, every piece once', () => {
  fc.assert(
    fc.property(few, (problem) => {
      const { set, sets } = setOfAll(problem);
      fc.pre(set !== undefined);
      const nest = sets.nest(set);
      const stock = stockOf(problem);
      expect(piecesOn(nest)).toHaveLength(stock.total);
      const state = emptyState(stock, kindsOf(problem), diceOf(1));
      layNests(state, [nest], new Int32Array(problem.pieces.length));
      expect(
        faultsOf(problem, { sheets: sheetsOf(state, problem), cost: 1, bound: 1, proved: true }),
      ).toEqual([]);
    }),
    { numRuns: runs(150) },
  );
});

// 60 x 40: three of 20 x 40 stand side by side and a fourth finds no room; laid down, 40 x 20, two lie one over the
// other, and a third of them stands up beside: 40 + 20 = 60.
test('a fourth strip of 20 by 40 finds no room beside three on 60 by 40', () => {
  const piece = { w: 20, h: 40, count: 4, turn: true };
  const sets = setsOn(
    stockOf({ sheets: [{ w: 60, h: 40, cost: 1 }], pieces: [piece] }),
    { w: 60, h: 40 },
    meterOf(1e9),
  );
  const two = sets.plus(sets.plus(sets.none, 0), 0);
  expect(sets.takes(two, 0)).toBe(true);
  expect(sets.takes(sets.plus(two, 0), 0)).toBe(false);
});

// Every part of a set is looked at, and its parts are twice as many with each piece: of a hundred pieces 1 x 1 that go
// on 10 x 10, no set is so large that a phone cannot hold its parts.
test('how many small pieces a sheet takes is left open long before their parts are more than a phone holds', () => {
  const piece = { w: 1, h: 1, count: 100, turn: false };
  const sheet = { w: 10, h: 10, cost: 1 };
  const sets = setsOn(stockOf({ sheets: [sheet], pieces: [piece] }), sheet, meterOf(1e9));
  let set = sets.none;
  while (sets.takes(set, 0)) set = sets.plus(set, 0);
  expect(sets.takes(set, 0)).toBeUndefined();
  expect(set.pieces.length).toBeGreaterThan(6);
  expect(set.sizes.length).toBeLessThanOrEqual(5000);
});
