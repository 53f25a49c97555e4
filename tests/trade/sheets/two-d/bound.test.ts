import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { sheetLowerBound } from '../../../../src/trade/sheets/two-d/bound';
import { counted, type Dual, dropped, dualsFor, steps } from '../../../../src/trade/sheets/two-d/dual';
import { leastCost, leastCostQuick } from '../../../../src/trade/sheets/two-d/sheet-count-bound';
import { runs } from '../../../runs';

const one = (w: number, h: number) => [{ w, h, cost: 1 }];

describe('sheetLowerBound', () => {
  test('the area says two sheets', () => {
    expect(sheetLowerBound({ sheets: one(4, 4), pieces: [{ w: 4, h: 3, count: 2, turn: false }] })).toBe(2);
  });

  test('two pieces of more than half each way share no sheet though their area would fit', () => {
    expect(sheetLowerBound({ sheets: one(10, 10), pieces: [{ w: 6, h: 6, count: 2, turn: true }] })).toBe(2);
  });

  test('a piece that fits no sheet has no bound, nor have sheets that cannot hold all', () => {
    expect(sheetLowerBound({ sheets: one(4, 4), pieces: [{ w: 5, h: 1, count: 1, turn: true }] })).toBe(
      Number.POSITIVE_INFINITY,
    );
    const sheets = [{ w: 4, h: 4, count: 1, cost: 1 }];
    expect(sheetLowerBound({ sheets, pieces: [{ w: 4, h: 4, count: 2, turn: false }] })).toBe(
      Number.POSITIVE_INFINITY,
    );
  });

  test('a cheap sheet counts only as often as there is one', () => {
    const sheets = [
      { w: 4, h: 4, count: 1, cost: 1 },
      { w: 4, h: 4, cost: 10 },
    ];
    expect(sheetLowerBound({ sheets, pieces: [{ w: 4, h: 4, count: 3, turn: false }] })).toBe(21);
  });
});

describe('dual feasible functions', () => {
  const holds = (f: Dual, room: number, sizes: readonly number[]): boolean => {
    let sum = 0;
    let values = 0;
    for (const x of sizes) {
      if (sum + x > room) break;
      sum += x;
      values += f(x);
    }
    return values <= f(sum) && f(sum) <= f(room);
  };

  test('sizes that fit have values that fit, in the whole room and in any part of it', () => {
    const sizes = fc.array(fc.integer({ min: 1, max: 60 }), { minLength: 1, maxLength: 12 });
    fc.assert(
      fc.property(fc.integer({ min: 2, max: 120 }), sizes, fc.nat(), (room, list, pick) => {
        const small = 1 + (pick % Math.floor(room / 2));
        const all = [
          ...dualsFor(room, list),
          steps(room, 1 + (pick % 9)),
          dropped(room, small),
          counted(room, small),
        ];
        for (const f of all) expect(holds(f, room, list)).toBe(true);
      }),
      { numRuns: runs(300) },
    );
  });
});

describe('leastCost', () => {
  test('whole sheets cost more than parts of sheets', () => {
    const kinds = [
      { holds: 6, count: 1, cost: 2 },
      { holds: 5, count: 9, cost: 2 },
    ];
    expect(leastCost(kinds, 12)).toBe(6);
  });

  test('it is the least that trying every number of each kind finds, and the quick bound is never above it', () => {
    const kind = fc.record({
      holds: fc.integer({ min: 0, max: 9 }),
      count: fc.integer({ min: 0, max: 3 }),
      cost: fc.integer({ min: 1, max: 9 }),
    });
    fc.assert(
      fc.property(
        fc.array(kind, { minLength: 1, maxLength: 4 }),
        fc.integer({ min: 0, max: 60 }),
        (kinds, need) => {
          const sums = kinds.reduce<readonly (readonly [number, number])[]>(
            (all, k) =>
              all.flatMap(([h, c]) =>
                Array.from({ length: k.count + 1 }, (_, n) => [h + n * k.holds, c + n * k.cost] as const),
              ),
            [[0, 0]],
          );
          const least = Math.min(
            Number.POSITIVE_INFINITY,
            ...sums.flatMap(([h, c]) => (h >= need ? [c] : [])),
          );
          expect(leastCost(kinds, need)).toBe(least);
          expect(leastCostQuick(kinds, need)).toBeLessThanOrEqual(least);
        },
      ),
      { numRuns: runs(300) },
    );
  });
});
