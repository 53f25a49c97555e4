import type { Change } from '../../store/entry';
import { editLayout, editOffcut, editSheet, type Job, type PlanSheet } from '../../store/job';
import { liftedFirst } from '../../trade/sheets/carry';
import { type LaidSheet, laidSheetsOf, wasteNamed } from '../../trade/sheets/laid-sheet';
import { type LayProblem, sheetCost } from '../../trade/sheets/lay-problem';
import type { SheetStock } from '../../trade/sheets/stock';
import { type Branch, piecesIn } from '../../trade/sheets/tree';
import type { Laid } from '../../trade/sheets/two-d/two-d';
import { carryOf, type PoolView } from './view';

/**
 * The fewest whole sheets any plan takes: of the bound, what pieces left over could make up at most is taken off. Not
 * known where sheets cost differently.
 */
export function leastSheets({ bound }: Pick<Laid, 'bound'>, problem: LayProblem): number | undefined {
  if (!problem.samePrice) return undefined;
  const spare = problem.two.sheets.reduce(
    (n, s) => n + (s.cost < sheetCost ? (s.count ?? 0) * s.cost : 0),
    0,
  );
  const whole = Math.max(0, ...problem.two.sheets.filter((s) => s.cost >= sheetCost).map((s) => s.cost));
  return whole === 0 ? 0 : Math.max(0, Math.ceil((bound - spare) / whole));
}

/** Whole sheets of a plan; pieces left over do not count. */
export const sheetCount = (laid: Laid, problem: LayProblem): number =>
  laid.sheets.filter(({ kind }) => !problem.grounds[kind]?.left && !problem.grounds[kind]?.run).length;

/** Whether no plan takes fewer whole sheets, or costs less where prices differ. */
export const isProved = (laid: Laid, problem: LayProblem): boolean =>
  laid.proved || leastSheets(laid, problem) === sheetCount(laid, problem);

type At = {
  readonly job: Job;
  readonly stocks: ReadonlyMap<string, SheetStock>;
  readonly newId: () => string;
};

/** A tree as it will be cut: what is too heavy is halved first, what is too small to keep is waste. */
export function readyTree(sheet: LaidSheet, problem: LayProblem, { job, stocks }: Omit<At, 'newId'>): Branch {
  const { kerf } = problem;
  const stock = stocks.get(sheet.stock);
  const kind = stock?.kind ?? 'sheet';
  const named = { size: sheet.size, tree: wasteNamed(sheet, { kerf, kind }) };
  return kind === 'sheet' && stock?.thickness
    ? liftedFirst(named, { thick: stock.thickness, most: carryOf(job), kerf })
    : named.tree;
}

/** Sheets of a plan numbered within their stock; those begun keep their numbers, and the new ones fill the gaps. */
function numbered(sheets: readonly LaidSheet[], begun: readonly PlanSheet[]): readonly number[] {
  const taken = new Map<string, Set<number>>();
  for (const sheet of begun)
    if (!sheet.left) taken.set(sheet.stock, (taken.get(sheet.stock) ?? new Set()).add(sheet.no));
  return sheets.map((sheet) => {
    if (sheet.left || sheet.run) return 1;
    const used = taken.get(sheet.stock) ?? new Set();
    let no = 1;
    while (used.has(no)) no += 1;
    taken.set(sheet.stock, used.add(no));
    return no;
  });
}

/** The changes that take a plan up: sheets not begun make room for the new ones. */
export function takePlan(
  view: PoolView,
  { laid, problem }: { readonly laid: Laid; readonly problem: LayProblem },
  at: At,
): readonly Change[] {
  const sheets = laidSheetsOf(laid.sheets, problem);
  const begun = view.sheets.filter((sheet) => !view.fresh.includes(sheet));
  const numbers = numbered(sheets, begun);
  const least = leastSheets(laid, problem);
  return [
    ...view.fresh.flatMap(({ id }) => editSheet(id, { gone: true })),
    ...sheets.flatMap((sheet, k) =>
      editSheet(at.newId(), {
        stock: sheet.stock,
        no: numbers[k] ?? 1,
        ...(sheet.left ? { left: sheet.left } : {}),
        ...(sheet.run ? { run: sheet.run } : {}),
        long: sheet.size.long,
        wide: sheet.size.wide,
        kerf: problem.kerf,
        tree: readyTree(sheet, problem, at),
      }),
    ),
    ...editLayout(view.pool.id, {
      proved: begun.length === 0 && isProved(laid, problem),
      least: begun.length === 0 ? least : undefined,
      pieces: sheets.reduce((n, { tree }) => n + piecesIn(tree).length, 0),
    }),
  ];
}

/** What is kept of a cut sheet: an offcut of its stock. */
export const keepLeftover = (
  id: string,
  sheet: PlanSheet,
  size: { readonly long: PlanSheet['size']['long']; readonly wide: PlanSheet['size']['long'] },
): readonly Change[] => editOffcut(id, { stock: sheet.stock, length: size.long, width: size.wide });
