import { expect, test } from 'vitest';
import { meterOf } from '../../../../src/trade/sheets/one-d/meter';
import { piecesOn } from '../../../../src/trade/sheets/two-d/nest';
import { stockOf } from '../../../../src/trade/sheets/two-d/stock';
import { lyingOn, stripSheets } from '../../../../src/trade/sheets/two-d/strip-price';

const sheet = { w: 10, h: 7 };
const stock = stockOf({
  sheets: [],
  pieces: [
    { w: 5, h: 4, count: 9, turn: false },
    { w: 2, h: 1, count: 99, turn: false },
    { w: 3, h: 10, count: 9, turn: true },
  ],
});

/** The most a sheet handed back is worth. */
function most(prices: readonly number[], across: boolean): number {
  const asked = { prices: Float64Array.from(prices), left: stock.count, meter: meterOf(10) };
  const sheets = stripSheets(lyingOn(stock, sheet, across), asked);
  return Math.max(...sheets.map((nest) => piecesOn(nest).reduce((sum, p) => sum + (prices[p] ?? 0), 0)));
}

test('strips along x: one 4 high of two, and above it one 3 high of five stacks of three', () => {
  // 2 x 10, and 5 x 3 x 1; strips of the small alone are worth 7 x 5 = 35: as much, and no more
  expect(most([10, 1, 0], true)).toBe(35);
  expect(most([11, 1, 0], true)).toBe(2 * 11 + 5 * 3);
});

test('a piece that may be turned lies in the strip it fits: 10 along and 3 high, twice in a height of 7', () => {
  expect(most([0, 0, 1], true)).toBe(2);
  // strips along y: one 10 wide holds two of it, 3 + 3 of 7; or two of the first side by side and one of it, 4 + 3
  expect(most([1, 0, 5], false)).toBe(2 * 5);
  expect(most([6, 0, 5], false)).toBe(2 * 6 + 5);
});
