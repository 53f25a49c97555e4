import { add, equals, type Length, type Ratio, zero } from '../../length/length';
import { slabWeight } from '../loads/stuff';
import { chainOf, type Row, rowOf } from './row';
import { type Branch, type CutBranch, halvesOf, type Rect } from './tree';

/** What there is to carry: thickness of the sheet, inches, and pounds one person may. */
type Carry = { readonly thick: Length; readonly most: Ratio; readonly kerf: Length };

/** What a rectangle of sheet weighs, pounds: an estimate. */
export const weightOf = (size: Rect, { thick }: Pick<Carry, 'thick'>): Ratio =>
  slabWeight({ long: size.long, wide: size.wide, thick });

/** Whether one person can lift it. @example liftable(size, carry) */
export const liftable = (size: Rect, carry: Carry): boolean => weightOf(size, carry).lte(carry.most);

/**
 * Reorders the cuts of a sheet too heavy to carry, so that it first falls into halves one person can lift. The cuts of
 * a row can be made in any order, and a grid can be cut the other way first. The first cut as laid out stays where both
 * its halves can be lifted; else the cut whose heavier half is lightest comes first. A half still too heavy is cut by
 * the same rule; one that can be lifted is cut as laid out, from the edge on.
 *
 * @param sheet its size and tree; @param carry thickness, pounds, kerf
 * @example liftedFirst(sheet, carry).is // 'cut'
 */
export function liftedFirst(sheet: { readonly size: Rect; readonly tree: Branch }, carry: Carry): Branch {
  const { size, tree } = sheet;
  if (tree.is !== 'cut' || liftable(size, carry)) return tree;
  // what is trimmed off first comes first all the same: it makes the edge that is measured from
  const first = tree.near.is === 'waste' ? tree : lightest(splitsOf(tree, carry), size, carry);
  const { near, far } = halvesOf(size, first, carry.kerf);
  return {
    ...first,
    near: liftedFirst({ size: near, tree: first.near }, carry),
    far: liftedFirst({ size: far, tree: first.far }, carry),
  };
}

/** Every first cut the sheet can have without another piece coming out of it; as laid out first. */
function splitsOf(tree: CutBranch, { kerf }: Carry): readonly [CutBranch, ...CutBranch[]] {
  const rows = [rowOf(tree, kerf), ...crossedGrid(tree, kerf)];
  const splits = rows.flatMap((row) => row.items.flatMap((_, k) => splitAfter(row, k + 1, kerf) ?? []));
  return [tree, ...splits];
}

/** The row split after its k-th item; the near half ends with its own last item, uncut. */
function splitAfter({ way, items, rest }: Row, k: number, kerf: Length): CutBranch | undefined {
  const near = items.slice(0, k);
  const last = near[near.length - 1];
  if (!last) return undefined;
  const at = near.slice(0, -1).reduce((sum, item) => add(add(sum, item.at), kerf), last.at);
  return {
    is: 'cut',
    way,
    at,
    near: chainOf(near.slice(0, -1), last.branch, way),
    far: chainOf(items.slice(k), rest, way),
  };
}

/**
 * A row of rows cut alike is a grid: it can be cut across first. What is left after the rows is then left after each
 * part of them; where a piece is what remains, there is no grid.
 */
function crossedGrid(tree: CutBranch, kerf: Length): readonly Row[] {
  const outer = rowOf(tree, kerf);
  const inner = outer.items.map(({ branch }) => (branch.is === 'cut' ? rowOf(branch, kerf) : undefined));
  const [first] = inner;
  const alike = inner.every(
    (row) =>
      row &&
      row.items.length === first?.items.length &&
      row.items.every(({ at }, k) => equals(at, first.items[k]?.at ?? zero)),
  );
  if (!first || !alike || outer.rest.is === 'cut' || outer.rest.is === 'piece') return [];
  const across = (pick: (row: Row) => Branch): Branch => {
    const parts = inner.map((row) => pick(row ?? first));
    // nothing of it is wanted: it is not cut up
    if (parts.every(({ is }) => is === 'waste')) return { is: 'waste' };
    if (parts.every(({ is }) => is === 'waste' || is === 'left')) return { is: 'left' };
    const items = outer.items.map(({ at }, k) => ({ at, branch: parts[k] ?? outer.rest }));
    return chainOf(items, outer.rest, outer.way);
  };
  const items = first.items.map(({ at }, k) => ({
    at,
    branch: across((row) => row.items[k]?.branch ?? { is: 'left' }),
  }));
  return [{ way: first.way, items, rest: across((row) => row.rest) }];
}

function lightest(splits: readonly [CutBranch, ...CutBranch[]], size: Rect, carry: Carry): CutBranch {
  const heavier = (cut: CutBranch): Ratio => {
    const { near, far } = halvesOf(size, cut, carry.kerf);
    const [a, b] = [weightOf(near, carry), weightOf(far, carry)];
    return a.gt(b) ? a : b;
  };
  // as laid out where that will do: another order may split what was to be left whole
  const good = splits.find((cut) => heavier(cut).lte(carry.most));
  return good ?? splits.reduce((best, cut) => (heavier(cut).lt(heavier(best)) ? cut : best));
}
