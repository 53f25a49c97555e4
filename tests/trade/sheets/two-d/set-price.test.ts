import fc from 'fast-check';
import { expect, test } from 'vitest';
import { meterOf } from '../../../../src/trade/sheets/one-d/meter';
import { type Priced, pricedSets } from '../../../../src/trade/sheets/two-d/set-price';
import { setsOn } from '../../../../src/trade/sheets/two-d/set-sizes';
import { kindsOf, stockOf } from '../../../../src/trade/sheets/two-d/stock';
import type { TwoD } from '../../../../src/trade/sheets/two-d/two-d';
import { runs } from '../../../runs';
import { comeOut } from './brute';
import { choices, few } from './few';

/** Asks for all sets, the meter at nought; `until` when it is to stop. */
function priced(problem: TwoD, prices: readonly number[], until = 1e9) {
  const stock = stockOf(problem);
  const [sheet = { w: 0, h: 0 }] = kindsOf(problem);
  const meter = meterOf(1e9);
  const sets = setsOn(stock, sheet, meter);
  const asked = {
    prices: Float64Array.from(prices),
    left: stock.count,
    room: sheet.w * sheet.h,
    meter,
    until,
  };
  const all = pricedSets({ ...asked, stock, sets });
  let step = all.next();
  while (!step.done) step = all.next();
  const found: Priced = step.value;
  return { ...found, sets };
}

test('the dearest set is as dear as the dearest of all choices that come out of a sheet', () => {
  let dear = 0;
  fc.assert(
    fc.property(
      few,
      fc.array(fc.integer({ min: 0, max: 12 }), { minLength: 4, maxLength: 4 }),
      (problem, of) => {
        const prices = problem.pieces.map((_, k) => (of[k] ?? 0) / 10);
        const { found, most, all, sets } = priced(problem, prices);
        const [sheet = { w: 0, h: 0 }] = problem.sheets;
        const worth = (pieces: readonly number[]) => pieces.reduce((sum, k) => sum + (prices[k] ?? 0), 0);
        const can = choices([...problem.pieces.keys()]).filter((set) =>
          comeOut(
            sheet,
            set.flatMap((k) => problem.pieces[k] ?? []),
          ),
        );
        const dearest = Math.max(...can.map(worth));
        expect(all).toBe(true);
        expect(most).toBeCloseTo(Math.max(1, dearest), 6);
        for (const { pieces } of found)
          expect(worth(pieces.map((rank) => sets.pieces[rank] ?? 0))).toBeGreaterThan(1);
        if (dearest > 1) dear += 1;
      },
    ),
    { numRuns: runs(150) },
  );
  expect(dear).toBeGreaterThan(20);
});

test('stopped before all were looked at, it does not say that there is none dearer', () => {
  const pieces = Array.from({ length: 8 }, (_, k) => ({ w: 9 + k, h: 10, count: 1, turn: true }));
  const problem = { sheets: [{ w: 40, h: 40, cost: 1 }], pieces };
  const prices = pieces.map(() => 0.3);
  expect(priced(problem, prices).all).toBe(true);
  expect(priced(problem, prices, 2000).all).toBe(false);
});
