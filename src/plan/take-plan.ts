import { editLayout, editOffcut, editSheet } from '../job/edits';
import type { Change } from '../job/entry';
import type { Job, PlanSheet } from '../job/job';
import type { Length } from '../length/length';
import { liftedFirst } from '../trade/sheets/carry';
import { type LaidSheet, laidSheetsOf, wasteNamed } from '../trade/sheets/laid-sheet';
import { type LayProblem, layProblemOf, sheetCost } from '../trade/sheets/lay-problem';
import { restsOn } from '../trade/sheets/rests-on';
import type { SheetStock } from '../trade/sheets/stock';
import { type Branch, type CutBranch, halvesOf, type Rect } from '../trade/sheets/tree';
import type { Laid } from '../trade/sheets/two-d/two-d';
import { carryOf, type PoolView } from './breakdown';

/**
 * The fewest whole sheets any plan takes: of the bound, what pieces left over could make up at most is taken off. Not
 * known where sheets cost differently.
 */
export function leastSheets({ bound }: Pick<Laid, 'bound'>, problem: LayProblem): number | undefined {
  if (!problem.samePrice || !problem.grid.exact) return undefined;
  const spare = problem.two.sheets.reduce(
    (n, s) => n + (s.cost < sheetCost ? (s.count ?? 0) * s.cost : 0),
    0,
  );
  const whole = Math.max(0, ...problem.two.sheets.filter((s) => s.cost >= sheetCost).map((s) => s.cost));
  return whole === 0 ? 0 : Math.max(0, Math.ceil((bound - spare) / whole));
}

/** Whole sheets of a plan; pieces left over do not count. */
export const sheetCount = (laid: Laid, problem: LayProblem): number =>
  laidSheetsOf(laid.sheets, problem).filter((sheet) => !sheet.left).length;

/** Whether no plan takes fewer whole sheets, or costs less where prices differ; never on a step that is not exact. */
export const isProved = (laid: Laid, problem: LayProblem): boolean =>
  problem.grid.exact && (laid.proved || leastSheets(laid, problem) === sheetCount(laid, problem));

type At = {
  readonly job: Job;
  readonly stocks: ReadonlyMap<string, SheetStock>;
  readonly newId: () => string;
};

/** A tree as it will be cut: what is too heavy is halved first, what is too small to keep is waste. */
function readyTree(sheet: LaidSheet, problem: LayProblem, { job, stocks }: Omit<At, 'newId'>): Branch {
  const stock = stocks.get(sheet.stock);
  return stock ? ready(sheet, { kerf: problem.kerf, stock, job }) : sheet.tree;
}

function ready(
  { size, tree }: { readonly size: Rect; readonly tree: Branch },
  { kerf, stock, job }: Omit<BranchAt, 'size'>,
): Branch {
  const lifted =
    stock.kind === 'sheet' && stock.thickness
      ? liftedFirst({ size, tree }, { thick: stock.thickness, most: carryOf(job), kerf })
      : tree;
  return wasteNamed({ size, tree: lifted }, { kerf, stock });
}

type BranchAt = {
  readonly size: Rect;
  readonly kerf: Length;
  readonly stock: SheetStock;
  readonly job: Job;
};

/** Both halves of a cut that is made already, as they will be cut on; in the order they stand in where `asItStands`. */
export function readyBranch(
  cut: CutBranch,
  { size, asItStands, ...at }: BranchAt & { readonly asItStands: boolean },
): CutBranch {
  const { near, far } = halvesOf(size, cut, at.kerf);
  const on = (half: { readonly size: Rect; readonly tree: Branch }) =>
    asItStands ? wasteNamed(half, at) : ready(half, at);
  return { ...cut, near: on({ size: near, tree: cut.near }), far: on({ size: far, tree: cut.far }) };
}

/** Sheets of a plan numbered within their stock; those begun keep their numbers, and the new ones fill the gaps. */
function numbered(sheets: readonly LaidSheet[], begun: readonly PlanSheet[]): readonly number[] {
  const taken = new Map<string, Set<number>>();
  for (const sheet of begun)
    if (!sheet.left) taken.set(sheet.stock, (taken.get(sheet.stock) ?? new Set()).add(sheet.no));
  return sheets.map((sheet) => {
    if (sheet.left) return 1;
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
        long: sheet.size.long,
        wide: sheet.size.wide,
        kerf: problem.kerf,
        tree: readyTree(sheet, problem, at),
      }),
    ),
    ...editLayout(view.pool.id, {
      proved: begun.length === 0 && isProved(laid, problem),
      least: begun.length === 0 ? least : undefined,
      rests: restsOn(view.pool, problem.kerf),
    }),
    ...begun.flatMap((sheet) => {
      const grown = view.outgrown.filter((o) => o.sheet === sheet.id);
      const tree = grown.reduce((branch, { piece }) => without(branch, piece), sheet.tree);
      return grown.length > 0 ? editSheet(sheet.id, { tree }) : [];
    }),
  ];
}

/** The tree with a piece taken out: its place is left over. */
const without = (tree: Branch, piece: string): Branch => {
  if (tree.is === 'piece') return tree.piece === piece ? { is: 'left' } : tree;
  return tree.is === 'cut'
    ? { ...tree, near: without(tree.near, piece), far: without(tree.far, piece) }
    : tree;
};

/** Whether a search still answers what is to be laid out: something may have been cut or changed while it ran. */
export function isCurrent(view: PoolView, problem: LayProblem, kerf: Length | undefined): boolean {
  if (!kerf || view.problems.length > 0 || view.toLay.pieces.length === 0) return false;
  const now = layProblemOf(view.toLay, kerf);
  const key = ({ two, rests, grounds, alike }: LayProblem) =>
    JSON.stringify([
      rests,
      two,
      grounds.map(({ stock, left }) => [stock.id, left?.id]),
      alike.map((pieces) => pieces.map(({ id }) => id)),
    ]);
  return key(now) === key(problem);
}

/** What is kept of a cut sheet: an offcut of its stock. */
export const keepLeftover = (
  id: string,
  sheet: PlanSheet,
  size: { readonly long: PlanSheet['size']['long']; readonly wide: PlanSheet['size']['long'] },
): readonly Change[] => editOffcut(id, { stock: sheet.stock, length: size.long, width: size.wide });
