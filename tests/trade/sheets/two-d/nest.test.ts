import { describe, expect, test } from 'vitest';
import { diceOf } from '../../../../src/trade/sheets/two-d/dice';
import {
  layNests,
  type Nest,
  nestOf,
  piecesOn,
  rowOf,
  takeNest,
} from '../../../../src/trade/sheets/two-d/nest';
import { alongX, alongY } from '../../../../src/trade/sheets/two-d/packing';
import { emptyState } from '../../../../src/trade/sheets/two-d/state';
import { kindsOf, stockOf } from '../../../../src/trade/sheets/two-d/stock';

const piece = (n: number, turned = false): Nest => ({ what: 2 * n + (turned ? 1 : 0), of: [] });
const problem = {
  sheets: [{ w: 20, h: 10, cost: 1 }],
  pieces: [
    { w: 8, h: 4, count: 3, turn: true },
    { w: 6, h: 3, count: 2, turn: false },
  ],
};
// beside each other: two of the first, one above the other, and one turned; 8 + 4 = 12 by 8
const nest: Nest = { what: alongX, of: [{ what: alongY, of: [piece(0), piece(0)] }, piece(0, true)] };

describe('nests', () => {
  test('what is laid lies there, with what it needs and what it leaves', () => {
    const state = emptyState(stockOf(problem), kindsOf(problem), diceOf(1));
    layNests(state, [nest], Int32Array.of(0, 2));
    const [lay] = state.lays;
    expect(lay && nestOf(lay)).toEqual(nest);
    // 20 x 10 less three of 8 x 4 is 104; the two left are 2 x 18
    expect([lay?.nw[0], lay?.nh[0], lay?.free]).toEqual([12, 8, 104]);
    expect([state.cost, state.looseCount, state.looseArea]).toEqual([1, 2, 36]);
  });

  test('of what is wanted no more, the rest is taken: one alone is no row', () => {
    const left = Int32Array.of(1, 2);
    expect(takeNest(nest, left)).toEqual(piece(0));
    expect([...left]).toEqual([0, 2]);
    expect(takeNest(nest, left)).toBeUndefined();
  });

  test('a row in a row of the same way is part of it', () => {
    const inner: Nest = { what: alongX, of: [piece(0), piece(1)] };
    expect(rowOf(alongX, [inner, piece(1)])).toEqual({ what: alongX, of: [piece(0), piece(1), piece(1)] });
    expect(rowOf(alongY, [inner, piece(1)])).toEqual({ what: alongY, of: [inner, piece(1)] });
    expect(piecesOn(inner)).toEqual([0, 1]);
  });
});
