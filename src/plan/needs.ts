import type { PlanSheet } from '../job/job';
import { atMost, type Length } from '../length/length';
import type { SheetNeed } from '../trade/buying/need';
import { layProblemOf } from '../trade/sheets/lay-problem';
import type { RoughPiece } from '../trade/sheets/pieces';
import type { SheetStock } from '../trade/sheets/stock';
import { piecesIn, placesOf, type Rect } from '../trade/sheets/tree';
import { sheetLowerBound } from '../trade/sheets/two-d/bound';
import { type Breakdown, isSettled, type PoolView } from './breakdown';
import { leastSheets } from './take-plan';

/** What sheets and sticks the job takes, by stock: as laid out, else at least so many. */
export const needsOf = ({ pools, kerf }: Breakdown): readonly SheetNeed[] =>
  pools.flatMap((view) =>
    isSettled(view) && view.sheets.length > 0 ? laidNeeds(view) : leastNeed(view, kerf),
  );

const needOf = (
  stock: SheetStock,
): Pick<SheetNeed, 'stock' | 'name' | 'kind' | 'long' | 'wide' | 'have'> => ({
  stock: stock.id,
  name: stock.name,
  kind: stock.kind,
  long: stock.long,
  wide: stock.wide,
  have: stock.have,
});

function laidNeeds({ pool, sheets, proof }: PoolView): readonly SheetNeed[] {
  const proved = proof.proved === true;
  return pool.stocks.flatMap((stock): readonly SheetNeed[] => {
    const own = sheets.filter((sheet) => sheet.stock === stock.id && !sheet.left);
    if (own.length === 0) return [];
    const spare = largestLeft(own, pool.pieces);
    return [
      {
        ...needOf(stock),
        count: new Set(own.map((sheet) => sheet.no)).size,
        how: proved ? 'proved' : 'laid',
        pieces: own.reduce((n, { tree }) => n + piecesIn(tree).length, 0),
        ...(spare ? { spare } : {}),
      },
    ];
  });
}

/** The largest piece left over that holds one part's worth. */
function largestLeft(sheets: readonly PlanSheet[], pieces: readonly RoughPiece[]): Rect | undefined {
  const holds = (size: Rect) => pieces.some((p) => atMost(p.long, size.long) && atMost(p.wide, size.wide));
  const left = sheets
    .flatMap((sheet) => placesOf(sheet, sheet.kerf))
    .filter(({ branch, size }) => branch.is === 'left' && holds(size))
    .map(({ size }) => size);
  const area = ({ long, wide }: Rect) => long.mul(wide);
  return left.reduce<Rect | undefined>((most, r) => (most && area(r).lte(area(most)) ? most : r), undefined);
}

/** Not laid out, or not any more: the bound says how many at least; where sheets differ, by the first. */
function leastNeed({ pool, problems, toLay }: PoolView, kerf: Length | undefined): readonly SheetNeed[] {
  const [stock] = pool.stocks;
  if (!kerf || !stock || problems.length > 0 || toLay.pieces.length === 0) return [];
  const all = { ...pool, lefts: [] };
  const problem = layProblemOf(all, kerf);
  const least = leastSheets({ bound: sheetLowerBound(problem.two) }, problem) ?? 1;
  return [{ ...needOf(stock), count: Math.max(1, least), how: 'least', pieces: pool.pieces.length }];
}
