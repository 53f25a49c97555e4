import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { add, equals, inches, isPositive, type Length, less, subtract } from '../../../src/length/length';
import { checkPool } from '../../../src/trade/sheets/check-pool';
import { laidSheetsOf } from '../../../src/trade/sheets/laid-sheet';
import { layProblemOf } from '../../../src/trade/sheets/lay-problem';
import { leastRough, type RoughPiece } from '../../../src/trade/sheets/pieces';
import type { Pool } from '../../../src/trade/sheets/pool';
import { refit, solve } from '../../../src/trade/sheets/solve';
import type { SheetStock } from '../../../src/trade/sheets/stock';
import { placesOf, withBranch } from '../../../src/trade/sheets/tree';
import { afterWrongCut, stillGood, wrongCutProblem } from '../../../src/trade/sheets/wrong-cut';
import { runs } from '../../runs';
import { cutApart } from './verify';

const n = (whole: number, num = 0, den = 1): Length =>
  add(inches(BigInt(whole)), inches(BigInt(num), BigInt(den)));
const kerf = n(0, 1, 8);
const eighths = (min: number, max: number) => fc.integer({ min, max }).map((k) => inches(BigInt(k), 8n));
const ended = <T, R>(search: Generator<T, R>): R => {
  for (;;) {
    const { value, done } = search.next();
    if (done) return value as R;
  }
};

const stocks = fc.record({
  kind: fc.constantFrom('sheet', 'stick' as const),
  trim: fc.constantFrom(n(0), kerf, n(0, 1, 2), n(1)),
  grain: fc.constantFrom('long', 'wide', 'none' as const),
  places: fc.array(fc.tuple(eighths(0, 760), eighths(1, 60)), { maxLength: 2 }),
  offcut: fc.boolean(),
});

type Given = { readonly [K in 'kind' | 'trim' | 'grain' | 'places' | 'offcut']: unknown } & {
  readonly kind: 'sheet' | 'stick';
  readonly trim: Length;
  readonly grain: 'long' | 'wide' | 'none';
  readonly places: readonly (readonly [Length, Length])[];
  readonly offcut: boolean;
};

function stockOf({ kind, trim, grain, places }: Given): SheetStock {
  const stick = kind === 'stick';
  const bad = stick ? places.flatMap(([from, long]) => [from, add(from, long)]) : [];
  return {
    id: 'a',
    name: 'A',
    kind,
    long: n(96),
    wide: stick ? n(5) : n(48),
    trim,
    grain: stick ? 'long' : grain,
    have: bad.length > 0 ? 1 : 0,
    noMore: bad.length > 0,
    bad,
  };
}

test('wherever any cut comes out, no piece lies in a trim or on a bad place, none is too small, none is there twice', () => {
  const share = fc.integer({ min: 1, max: 99 });
  fc.assert(
    fc.property(
      stocks,
      fc.array(fc.tuple(eighths(40, 300), eighths(8, 200)), { minLength: 1, maxLength: 7 }),
      fc.tuple(fc.nat(60), fc.boolean(), share),
      (given, sizes, [which, near, part]) => {
        const stock = stockOf(given as Given);
        const stick = stock.kind === 'stick';
        const pieces = sizes.map(([long, wide], k): RoughPiece => {
          const own = { long, wide: stick && less(n(5), wide) ? n(2) : wide };
          const finished = { long: subtract(own.long, n(0, 1, 4)), wide: subtract(own.wide, n(0, 1, 4)) };
          const id = `p${k}`;
          return {
            id: `${id}/1`,
            part: id,
            copy: '1',
            name: { of: { role: 'board', named: id } },
            stuff: 'a',
            thickness: undefined,
            finished,
            ...own,
            lies: 'along',
          };
        });
        const left = { id: 'o', stock: 'a', long: n(70), wide: stick ? n(5) : n(40) };
        const pool: Pool = {
          id: 'a',
          kind: stock.kind,
          stocks: [given.offcut ? { ...stock, have: 0, noMore: true } : stock],
          lefts: given.offcut ? [left] : [],
          pieces,
        };
        fc.pre(checkPool(pool, kerf).length === 0);
        const problem = layProblemOf(pool, kerf);
        const solved = ended(solve(problem.two, { seed: 1, effort: 5 }));
        fc.pre(solved.ok);
        const sheet = solved.ok ? laidSheetsOf(solved.value.sheets, problem)[0] : undefined;
        fc.pre(sheet !== undefined);
        if (!sheet) return;
        const cuts = placesOf(sheet, kerf).filter((p) => p.branch.is === 'cut');
        fc.pre(cuts.length > 0);
        const place = cuts[which % cuts.length];
        if (place?.branch.is !== 'cut') return;
        const whole = place.branch.way === 'rip' ? place.size.wide : place.size.long;
        const came = near
          ? add(place.branch.at, inches(BigInt(part - 50), 200n))
          : (whole.mul(inches(BigInt(part), 100n)) as Length);
        fc.pre(isPositive(came) && !less(whole, came));
        const wrong = { cut: place.branch, size: place.size, from: place.from, at: came };
        const wanted = new Map(pieces.map((p) => [p.id, p]));
        const at = { stock, whole: sheet.size, kerf, wanted, offcut: given.offcut };
        const good = stillGood(wrong, at);
        const again = good ? undefined : wrongCutProblem(wrong, at);
        const branch =
          good ??
          (again &&
            afterWrongCut(
              wrong,
              { problem: again, sheets: ended(refit(again.two, { seed: 1, effort: 5 })).laid?.sheets },
              at,
            ));
        if (!branch) throw new Error('no branch');
        const found = cutApart({ size: sheet.size, tree: withBranch(sheet.tree, place.path, branch) }, kerf);
        expect(new Set(found.map((f) => f.piece)).size).toBe(found.length);
        const off = given.offcut ? n(0) : less(n(0), stock.trim) ? subtract(stock.trim, n(0, 1, 16)) : n(0);
        for (const f of found) {
          const least = leastRough(wanted.get(f.piece) ?? (pieces[0] as RoughPiece));
          const own = f.turned ? { long: f.size.wide, wide: f.size.long } : f.size;
          expect([less(own.long, least.long), less(own.wide, least.wide)]).toEqual([false, false]);
          const to = add(f.from.long, f.size.long);
          expect(less(f.from.long, off) || less(subtract(sheet.size.long, off), to)).toBe(false);
          if (!stick) {
            const side = add(f.from.wide, f.size.wide);
            expect(less(f.from.wide, off) || less(subtract(sheet.size.wide, off), side)).toBe(false);
          }
          if (!given.offcut)
            for (let k = 0; k < stock.bad.length; k += 2) {
              const [from, end] = [stock.bad[k] ?? n(0), stock.bad[k + 1] ?? n(0)];
              expect(less(f.from.long, end) && less(from, to)).toBe(false);
            }
        }
        // a cut that came out as meant changes nothing
        if (equals(came, place.branch.at)) expect(good).toBeDefined();
      },
    ),
    { numRuns: runs(150) },
  );
});
