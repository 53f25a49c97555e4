import { add, type Length, type Ratio, ratio } from '../../length/length';
import { sheetWeight } from '../boxes/contents';
import { chainOf, type Row, rowOf } from './row';
import { type Branch, type CutBranch, halvesOf, type Rect } from './tree';

/** What there is to carry: thickness of the sheet, inches, and pounds one person may. */
export type Carry = { readonly thick: Length; readonly most: Ratio; readonly kerf: Length };

/** What a rectangle of sheet weighs, pounds: an estimate. */
export const weightOf = (size: Rect, { thick }: Pick<Carry, 'thick'>): Ratio =>
  sheetWeight({ long: size.long, wide: size.wide, thick });

/** Whether one person can lift it. @example liftable(size, carry) */
export const liftable = (size: Rect, carry: Carry): boolean => weightOf(size, carry).lte(carry.most);

/**
 * The same pieces with a sheet too heavy to carry cut first where it falls into halves one can lift: a row of cuts the
 * same way can be made in any order, and the one that leaves the lighter heavier half comes first. Below that it is cut as
 * before, from the edge on.
 *
 * @param sheet its size and tree; @param carry thickness, pounds, kerf
 * @example liftedFirst(sheet, carry).is // 'cut'
 */
export function liftedFirst(sheet: { readonly size: Rect; readonly tree: Branch }, carry: Carry): Branch {
  const { size, tree } = sheet;
  if (tree.is !== 'cut' || liftable(size, carry)) return tree;
  // what is trimmed off first comes first all the same: it makes the edge that is measured from
  if (tree.near.is === 'waste' && tree.far.is === 'cut') {
    const { far } = halvesOf(size, tree, carry.kerf);
    return { ...tree, far: liftedFirst({ size: far, tree: tree.far }, carry) };
  }
  return bestFirst(rowOf(tree, carry.kerf), size, carry) ?? tree;
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

function bestFirst(row: Row, size: Rect, carry: Carry): Branch | undefined {
  let best: CutBranch | undefined;
  let lightest = ratio(1n << 40n);
  for (let k = 1; k <= row.items.length; k += 1) {
    const split = splitAfter(row, k, carry.kerf);
    if (!split) continue;
    const { near, far } = halvesOf(size, split, carry.kerf);
    const weights = [weightOf(near, carry), weightOf(far, carry)];
    const heavier = weights.reduce((a, b) => (a.gt(b) ? a : b));
    if (!heavier.lt(lightest)) continue;
    best = split;
    lightest = heavier;
  }
  return best;
}
