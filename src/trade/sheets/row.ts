import { equals, isPositive, type Length, subtract, zero } from '../../length/length';
import { type Branch, type CutBranch, halvesOf, type Rect } from './tree';

/** Cuts the same way one after the other: what each takes off, and what is left after the last. */
export type Row = {
  readonly way: CutBranch['way'];
  readonly items: readonly { at: Length; branch: Branch }[];
  readonly rest: Branch;
};

/**
 * The cuts the same way from a branch on, however they are nested.
 *
 * @example rowOf(tree, kerf).items.length
 */
export function rowOf(tree: CutBranch, kerf: Length): Row {
  const { way } = tree;
  const items: { at: Length; branch: Branch }[] = [];
  const take = (branch: Branch, at: Length): void => {
    // the blade ran off the edge there, unless it trims one
    if (!isPositive(at) && !(branch.is === 'waste' && equals(at, zero))) return;
    if (branch.is !== 'cut' || branch.way !== way) {
      items.push({ at, branch });
      return;
    }
    take(branch.near, branch.at);
    take(branch.far, subtract(subtract(at, branch.at), kerf));
  };
  let rest: Branch = tree;
  while (rest.is === 'cut' && rest.way === way) {
    take(rest.near, rest.at);
    rest = rest.far;
  }
  return { way, items, rest };
}

/** A row as a tree: each item cut off what is still there. */
export const chainOf = (items: Row['items'], rest: Branch, way: Row['way']): Branch =>
  items.reduceRight<Branch>((far, { at, branch }) => ({ is: 'cut', way, at, near: branch, far }), rest);

/**
 * The same pieces with every row cut one item after the other, each at its own size: alike ones share a setting,
 * where a cut after two of them would want one of its own.
 *
 * @example straightened(sheet, kerf).is
 */
export function straightened(sheet: { readonly size: Rect; readonly tree: Branch }, kerf: Length): Branch {
  const { size, tree } = sheet;
  if (tree.is !== 'cut') return tree;
  const row = rowOf(tree, kerf);
  const straight = (branch: Branch, at: Length): Branch =>
    straightened(
      { size: row.way === 'rip' ? { ...size, wide: at } : { ...size, long: at }, tree: branch },
      kerf,
    );
  const items = row.items.map(({ at, branch }) => ({ at, branch: straight(branch, at) }));
  const over = items.reduce((rest, { at }) => halvesOf(rest, { way: row.way, at }, kerf).far, size);
  return chainOf(items, straight(row.rest, row.way === 'rip' ? over.wide : over.long), row.way);
}
