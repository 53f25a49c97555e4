import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { laySheets } from '../../../../src/trade/sheets/two-d/lay-sheets';
import { better, leftStep, measuresOf } from '../../../../src/trade/sheets/two-d/measures';
import type { Laid, Tree, TwoD } from '../../../../src/trade/sheets/two-d/two-d';
import { runs } from '../../../runs';
import { leastSheets } from './brute';
import { faultsOf } from './verify';

const options = { seed: 1, effort: 20 };

/** Everything yielded, and what came of it. */
function run(problem: TwoD, given = options) {
  const plans: Laid[] = [];
  const all = laySheets(problem, given);
  for (;;) {
    const { done, value } = all.next();
    if (done) return { plans, result: value };
    if (value) plans.push(value);
  }
}

function laid(problem: TwoD, given = options): Laid {
  const { result } = run(problem, given);
  if (!result.ok) throw new Error(result.error.code);
  return result.value;
}

function piecesIn(tree: Tree): number {
  return tree.is === 'cut' ? piecesIn(tree.a) + piecesIn(tree.b) : tree.is === 'piece' ? 1 : 0;
}

describe('worked examples', () => {
  // Example 1 of sheets in sixteenths: sheet 48 3/8 less trims of 3/16 is 48; strips 17 3/4; kerf 1/8, added to both.
  test('Example 1 of sheets: two strips of 17 3/4 come from a sheet of 48, 12 1/4 is left', () => {
    const sheets = [{ w: 96 * 16 + 2, h: 48 * 16 + 2, cost: 1 }];
    const strip = { w: 96 * 16 + 2, h: 17.75 * 16 + 2, turn: false };
    const two = laid({ sheets, pieces: [{ ...strip, count: 2 }] });
    expect([two.cost, two.proved]).toEqual([1, true]);
    // What is left carries a kerf too, as everything here does.
    expect(measuresOf(two.sheets)).toEqual({ left: (96 * 16 + 2) * (12.25 * 16 + 2), settings: 1, cuts: 2 });
    expect(laid({ sheets, pieces: [{ ...strip, count: 3 }] }).cost).toBe(2);
  });

  // Example 1 of sheets: 15 11/12 in 24ths is 382, a kerf of 1/8 is 3, 48 is 1152.
  test('Example 1 of sheets: three strips of 15 11/12 come from 48 with two kerfs and nothing over', () => {
    const sheets = [{ w: 2307, h: 1152 + 3, cost: 1 }];
    const three = laid({ sheets, pieces: [{ w: 2307, h: 382 + 3, count: 3, turn: false }] });
    expect([three.cost, three.proved, measuresOf(three.sheets)]).toEqual([
      1,
      true,
      { left: 0, settings: 1, cuts: 2 },
    ]);
  });
});

describe('errors', () => {
  test('a piece longer than any sheet is named', () => {
    const sheets = [{ w: 10, h: 5, cost: 1 }];
    const pieces = [
      { w: 5, h: 10, count: 1, turn: true },
      { w: 5, h: 10, count: 1, turn: false },
    ];
    expect(run({ sheets, pieces }).result).toEqual({
      ok: false,
      error: { code: 'no-sheet-takes', piece: 1 },
    });
  });

  test('sheets that run out are said with how many pieces are left', () => {
    const problem = {
      sheets: [{ w: 10, h: 5, count: 1, cost: 1 }],
      pieces: [{ w: 5, h: 5, count: 5, turn: false }],
    };
    expect(run(problem).result).toEqual({ ok: false, error: { code: 'sheets-run-out', left: 3 } });
  });

  test('pieces to lie together that do not go on one sheet are named, by area or by their shape', () => {
    const sheets = [{ w: 10, h: 10, cost: 1 }];
    const of = (w: number, count: number) => ({
      sheets,
      pieces: [{ w, h: 6, count, turn: false, together: 7 }],
    });
    const wanted = { ok: false, error: { code: 'together-too-large', together: 7 } };
    expect(run(of(10, 2)).result).toEqual(wanted);
    expect(run(of(6, 2)).result).toEqual(wanted);
  });

  test('nothing to cut takes no sheet', () => {
    const none = laid({ sheets: [{ w: 10, h: 10, cost: 1 }], pieces: [] });
    expect(none).toEqual({ sheets: [], cost: 0, bound: 0, proved: true });
  });
});

describe('choices', () => {
  test('a dearer kind of which there is none left changes nothing of what is proved of the one there is', () => {
    const sizes = '17x56 69x24 30x30 62x54 52x18 39x49 47x24 27x57 63x53 66x55 24x28 59x31 16x52 62x42';
    const pieces = sizes.split(' ').map((size) => {
      const [w = 0, h = 0] = size.split('x').map(Number);
      return { w, h, count: 1, turn: true };
    });
    const sheet = { w: 100, h: 60, cost: 1 };
    const alone = laid({ sheets: [sheet], pieces });
    const beside = laid({ sheets: [{ ...sheet, cost: 9, count: 0 }, sheet], pieces });
    expect(alone.proved).toBe(true);
    expect([beside.cost, beside.bound, beside.proved]).toEqual([alone.cost, alone.bound, alone.proved]);
  });

  test('a scrap that is cheaper is used before a sheet', () => {
    const sheets = [
      { w: 96, h: 48, cost: 100 },
      { w: 30, h: 30, count: 1, cost: 1 },
    ];
    const plan = laid({ sheets, pieces: [{ w: 20, h: 10, count: 2, turn: true }] });
    expect([plan.cost, plan.proved, plan.sheets.map((s) => s.kind)]).toEqual([1, true, [1]]);
  });

  test('pieces that belong together lie on one sheet though another has room sooner', () => {
    const problem = {
      sheets: [{ w: 10, h: 10, cost: 1 }],
      pieces: [
        { w: 10, h: 6, count: 2, turn: false },
        { w: 10, h: 3, count: 2, turn: false, together: 1 },
        { w: 10, h: 4, count: 1, turn: false, together: 1 },
      ],
    };
    const plan = laid(problem);
    expect([plan.cost, faultsOf(problem, plan)]).toEqual([3, []]);
  });

  test('what is left stays one piece, and equal widths share a setting', () => {
    const problem = {
      sheets: [{ w: 96, h: 48, cost: 1 }],
      pieces: [{ w: 24, h: 12, count: 8, turn: true }],
    };
    expect(measuresOf(laid(problem, { seed: 1, effort: 400 }).sheets)).toEqual({
      left: 96 * 48 - 8 * 24 * 12,
      settings: 2,
      cuts: 8,
    });
  });
});

/** Small problems of every kind. */
const problems: fc.Arbitrary<TwoD> = fc.record({
  sheets: fc.array(
    fc
      .record({
        w: fc.integer({ min: 10, max: 30 }),
        h: fc.integer({ min: 10, max: 30 }),
        cost: fc.integer({ min: 1, max: 5 }),
      })
      .chain((s) =>
        fc.oneof(
          fc.constant(s),
          fc.integer({ min: 1, max: 9 }).map((count) => ({ ...s, count })),
        ),
      ),
    { minLength: 1, maxLength: 3 },
  ),
  pieces: fc.array(
    fc
      .record({
        w: fc.integer({ min: 1, max: 12 }),
        h: fc.integer({ min: 1, max: 12 }),
        count: fc.integer({ min: 1, max: 6 }),
        turn: fc.boolean(),
      })
      .chain((p) =>
        fc.oneof(
          { weight: 4, arbitrary: fc.constant(p) },
          fc.integer({ min: 0, max: 2 }).map((together) => ({ ...p, together })),
        ),
      ),
    { minLength: 1, maxLength: 8 },
  ),
});

describe('laySheets', () => {
  test('every plan it yields can be cut, and none is worse than the one before', () => {
    fc.assert(
      fc.property(problems, fc.integer({ min: 0, max: 99 }), (problem, seed) => {
        const { plans, result } = run(problem, { seed, effort: 15 });
        for (const plan of plans) expect(faultsOf(problem, plan)).toEqual([]);
        const ranks = plans.map((p) => ({ ...measuresOf(p.sheets), cost: p.cost }));
        for (const [k, rank] of ranks.entries()) {
          const before = ranks[k - 1];
          if (before) expect(better(before, rank, leftStep(problem))).toBe(false);
        }
        if (result.ok) expect(result.value).toEqual(plans.at(-1));
      }),
      { numRuns: runs(60) },
    );
  });

  test('the same seed and effort give the same plans', () => {
    fc.assert(
      fc.property(problems, fc.integer({ min: 0, max: 99 }), (problem, seed) => {
        expect(run(problem, { seed, effort: 8 })).toEqual(run(problem, { seed, effort: 8 }));
      }),
      { numRuns: runs(20) },
    );
  });

  test('no way of cutting up to four pieces takes fewer sheets', () => {
    const side = fc.integer({ min: 1, max: 7 });
    const piece = fc.record({ w: side, h: side, turn: fc.boolean() });
    fc.assert(
      fc.property(fc.array(piece, { minLength: 1, maxLength: 4 }), (all) => {
        const sheet = { w: 8, h: 7 };
        const problem = { sheets: [{ ...sheet, cost: 1 }], pieces: all.map((p) => ({ ...p, count: 1 })) };
        const plan = laid(problem, { seed: 1, effort: 10 });
        const least = leastSheets(sheet, all);
        expect([plan.cost, faultsOf(problem, plan)]).toEqual([least, []]);
        expect(plan.bound).toBeLessThanOrEqual(least);
      }),
      { numRuns: runs(60) },
    );
  });

  test('sides of millions of units are laid as exactly as small ones', () => {
    const big = 2 ** 21 + 1;
    const small = { sheets: [{ w: 96, h: 48, cost: 1 }], pieces: [{ w: 23, h: 15, count: 12, turn: true }] };
    const scaled = {
      sheets: small.sheets.map((s) => ({ ...s, w: s.w * big, h: s.h * big })),
      pieces: small.pieces.map((p) => ({ ...p, w: p.w * big, h: p.h * big })),
    };
    const plan = laid(scaled);
    expect([faultsOf(scaled, plan), plan.cost]).toEqual([[], laid(small).cost]);
    expect(plan.sheets.reduce((sum, s) => sum + piecesIn(s.tree), 0)).toBe(12);
  });

  test('a small job stops long before its effort is used up', () => {
    const problem = { sheets: [{ w: 96, h: 48, cost: 1 }], pieces: [{ w: 23, h: 15, count: 9, turn: true }] };
    let breaks = 0;
    for (const plan of laySheets(problem, { seed: 1, effort: 1_000_000 })) if (!plan) breaks += 1;
    expect(breaks).toBeLessThan(3000);
  });
});
