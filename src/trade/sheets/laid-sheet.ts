import {
  add,
  equals,
  inches,
  isPositive,
  type Length,
  less,
  longest,
  subtract,
  zero,
} from '../../length/length';
import { fromSteps } from './grid';
import type { LayProblem } from './lay-problem';
import { type Ground, runsOf, trimOf } from './pool';
import { straightened } from './row';
import type { SheetStock } from './stock';
import { type Branch, halvesOf, placesOf, type Rect, type Way } from './tree';
import type { Laid, Tree } from './two-d/two-d';

/** A sheet, stick or offcut as it is to be cut: its whole size and how it falls apart. */
export type LaidSheet = {
  readonly stock: string;
  readonly left?: string;
  readonly size: Rect;
  readonly tree: Branch;
};

/** Less than this is not worth a place in the rack: of a sheet either way, of a stick its length. Common practice, no source. Inches. */
export const leastKept = { sheet: 3, stick: 12 };

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
  const runs = runsOf(stock, kerf);
  const from = (k: number): Branch => {
    const run = runs[k];
    if (!run) return { is: 'waste' };
    const own = laid.find(({ ground }) => ground.run && equals(ground.run, run.from))?.usable.tree;
    const good: Branch = {
      is: 'cut',
      way: 'cross',
      at: subtract(run.to, run.from),
      near: own ?? { is: 'left' },
      far: from(k + 1),
    };
    const begins = k === 0 ? zero : add(runs[k - 1]?.to ?? zero, kerf);
    const waste = subtract(subtract(run.from, begins), kerf);
    const tree = less(run.to, stock.long) ? good : good.near;
    return isPositive(run.from)
      ? { is: 'cut', way: 'cross', at: longest(zero, waste), near: { is: 'waste' }, far: tree }
      : tree;
  };
  return from(0);
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

/**
 * The whole sheet with its trims: the two edges measured from are cut true first, the two others only where a piece ends
 * on them.
 */
function withTrims(
  usable: { readonly size: Rect; readonly tree: Branch },
  { stock, left }: Ground,
  kerf: Length,
): { readonly size: Rect; readonly tree: Branch } {
  const from = trimOf(stock, kerf);
  if (left || !isPositive(from)) return usable;
  const ends = endsOn(usable, kerf);
  const long = trimmed(usable.tree, { way: 'cross', from, room: usable.size.long, past: ends.long, kerf });
  return {
    size: { long: stock.long, wide: stock.wide },
    tree:
      stock.kind === 'stick'
        ? long
        : trimmed(long, { way: 'rip', from, room: usable.size.wide, past: ends.wide, kerf }),
  };
}

/** Whether a piece ends on the far edge of what is usable, each way. */
function endsOn(usable: { readonly size: Rect; readonly tree: Branch }, kerf: Length) {
  const pieces = placesOf(usable, kerf).filter((p) => p.branch.is === 'piece');
  const reaches = (way: 'long' | 'wide') =>
    pieces.some(({ from, size }) => less(subtract(usable.size[way], kerf), add(from[way], size[way])));
  return { long: reaches('long'), wide: reaches('wide') };
}

type Trim = {
  readonly way: Way;
  readonly from: Length;
  readonly room: Length;
  readonly past: boolean;
  readonly kerf: Length;
};

function trimmed(tree: Branch, { way, from, room, past, kerf }: Trim): Branch {
  const inner: Branch = past ? { is: 'cut', way, at: room, near: tree, far: { is: 'waste' } } : tree;
  return { is: 'cut', way, at: subtract(from, kerf), near: { is: 'waste' }, far: inner };
}

/**
 * The tree with what is too small to keep called waste.
 *
 * @example wasteNamed(sheet, { kerf, kind: 'sheet' }).is
 */
export function wasteNamed(
  sheet: { readonly size: Rect; readonly tree: Branch },
  { kerf, kind }: { readonly kerf: Length; readonly kind: 'sheet' | 'stick' },
): Branch {
  const least = inches(BigInt(leastKept[kind]));
  const small = ({ long, wide }: Rect) => less(long, least) || (kind === 'sheet' && less(wide, least));
  const visit = (branch: Branch, size: Rect): Branch => {
    if (branch.is === 'left') return small(size) ? { is: 'waste' } : branch;
    if (branch.is !== 'cut') return branch;
    const { near, far } = halvesOf(size, branch, kerf);
    return { ...branch, near: visit(branch.near, near), far: visit(branch.far, far) };
  };
  return visit(sheet.tree, sheet.size);
}
