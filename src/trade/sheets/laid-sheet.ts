import {
  equals,
  inches,
  isPositive,
  type Length,
  less,
  longest,
  shortest,
  subtract,
  zero,
} from '../../length/length';
import { fromSteps } from './grid';
import type { LayProblem } from './lay-problem';
import { type Ground, runsOf, trimOf } from './pool';
import { straightened } from './row';
import { freed, trimmedTo } from './sound';
import type { SheetStock } from './stock';
import { type Branch, halvesOf, type Rect, type Way } from './tree';
import type { Laid, Tree } from './two-d/two-d';

/** A sheet, stick or offcut as it is to be cut: its whole size and how it falls apart. */
export type LaidSheet = {
  readonly stock: string;
  readonly left?: string;
  readonly size: Rect;
  readonly tree: Branch;
};

/**
 * Less than this is not worth a place in the rack: of a sheet either way, of a stick its length, and its width unless
 * the whole stick is narrower. Common practice, no source. Inches.
 */
const leastKept = { sheet: 3, stick: 12, stickWide: 1 };

/**
 * What the search found, as sheets with their cuts in exact inches.
 *
 * @param sheets as found, each with its tree; @param problem that was searched
 * @example laidSheetsOf(laid.sheets, problem)[0].tree.is // 'cut'
 */
export function laidSheetsOf(sheets: Laid['sheets'], problem: LayProblem): readonly LaidSheet[] {
  const left = problem.alike.map((pieces) => [...pieces]);
  const name = (piece: number): string => {
    const next = left[piece]?.shift();
    if (!next) throw new RangeError('laidSheetsOf: a piece too many');
    return next.id;
  };
  const found = sheets.map(({ kind, tree }) => {
    const ground = problem.grounds[kind];
    if (!ground) throw new RangeError('laidSheetsOf: no such sheet');
    const rough = { size: ground.usable, tree: branchOf(tree, { problem, ground, name }) };
    const usable = { size: ground.usable, tree: straightened(rough, problem.kerf) };
    return { ground, usable };
  });
  const sticks = new Set(found.flatMap(({ ground }) => (ground.run ? [ground.stock] : [])));
  return [
    ...found
      .filter(({ ground }) => !ground.run)
      .map(({ ground, usable }) => ({
        stock: ground.stock.id,
        ...(ground.left ? { left: ground.left.id } : {}),
        ...withTrims(usable, ground, problem.kerf),
      })),
    ...[...sticks].map((stock) => ({
      stock: stock.id,
      size: { long: stock.long, wide: stock.wide },
      tree: stickTree(
        stock,
        found.filter(({ ground }) => ground.stock === stock),
        problem.kerf,
      ),
    })),
  ];
}

type LaidGround = { readonly ground: Ground; readonly usable: { readonly tree: Branch } };

/** A stick with bad places from end to end: what is bad is cut away, each good run between is cut as laid. */
function stickTree(stock: SheetStock, laid: readonly LaidGround[], kerf: Length): Branch {
  const own = (from: Length) =>
    laid.find(({ ground }) => ground.run && equals(ground.run, from))?.usable.tree;
  const runs = runsOf(stock, kerf).map(({ from, to }) => ({
    from,
    to,
    tree: own(from) ?? ({ is: 'left' } as const),
    past: less(to, stock.long),
  }));
  return freed(runs, { way: 'cross', kerf });
}

type At = { readonly problem: LayProblem; readonly ground: Ground; readonly name: (piece: number) => string };

function branchOf(tree: Tree, at: At): Branch {
  const { problem, ground } = at;
  const swapped = ground.stock.grain === 'wide' && !ground.left;
  if (tree.is === 'left') return { is: 'left' };
  // x runs along the grain: a piece in its own way lies along, unless the sheet's grain runs across its length
  if (tree.is === 'piece') {
    const across = problem.alike[tree.piece]?.[0]?.lies === 'across';
    return { is: 'piece', piece: at.name(tree.piece), turned: tree.turned !== (swapped !== across) };
  }
  const near = branchOf(tree.a, at);
  const far = branchOf(tree.b, at);
  if (near.is === 'left' && far.is === 'left') return { is: 'left' };
  const way: Way = tree.across !== swapped ? 'rip' : 'cross';
  const room = subtract(fromSteps(tree.at, problem.grid), problem.kerf);
  return { is: 'cut', way, at: longest(zero, room), near, far };
}

/** The whole sheet with its trims; a stick is trimmed at its ends. */
function withTrims(
  usable: { readonly size: Rect; readonly tree: Branch },
  { stock, left }: Ground,
  kerf: Length,
): { readonly size: Rect; readonly tree: Branch } {
  const trim = trimOf(stock, kerf);
  if (left || !isPositive(trim)) return usable;
  const size = { long: stock.long, wide: stock.wide };
  const from = { long: trim, wide: stock.kind === 'stick' ? zero : trim };
  return { size, tree: trimmedTo(size, { from, ...usable }, kerf) };
}

/**
 * The tree with what is too small to keep called waste.
 *
 * @example wasteNamed(sheet, { kerf, stock }).is
 */
export function wasteNamed(
  sheet: { readonly size: Rect; readonly tree: Branch },
  { kerf, stock }: { readonly kerf: Length; readonly stock: Pick<SheetStock, 'kind' | 'wide'> },
): Branch {
  const least = leastOf(stock);
  const small = ({ long, wide }: Rect) => less(long, least.long) || less(wide, least.wide);
  const visit = (branch: Branch, size: Rect): Branch => {
    if (branch.is === 'left') return small(size) ? { is: 'waste' } : branch;
    if (branch.is !== 'cut') return branch;
    const { near, far } = halvesOf(size, branch, kerf);
    return { ...branch, near: visit(branch.near, near), far: visit(branch.far, far) };
  };
  return visit(sheet.tree, sheet.size);
}

function leastOf({ kind, wide }: Pick<SheetStock, 'kind' | 'wide'>): Rect {
  const whole = (n: number) => inches(BigInt(n));
  return kind === 'sheet'
    ? { long: whole(leastKept.sheet), wide: whole(leastKept.sheet) }
    : { long: whole(leastKept.stick), wide: shortest(whole(leastKept.stickWide), wide) };
}
