import { add, isNegative, type Length, subtract, zero } from '../../length/length';

/** A rectangle of sheet: along the sheet's long side, and across it. Inches. */
export type Rect = { readonly long: Length; readonly wide: Length };

/** `rip`: the cut runs the long way, measured across the sheet. `cross`: it runs across, measured along it. */
export type Way = 'rip' | 'cross';

/**
 * How a sheet falls apart, in cuts from edge to edge. `at`: what is kept between the edge measured from and the kerf;
 * `far` is what lies beyond the kerf. A piece fills its rectangle; `turned`: its length lies across the sheet.
 */
export type Branch =
  | {
      readonly is: 'cut';
      readonly way: Way;
      readonly at: Length;
      readonly near: Branch;
      readonly far: Branch;
    }
  | { readonly is: 'piece'; readonly piece: string; readonly turned: boolean }
  | { readonly is: 'left' }
  /** Trimmed off, or too small to keep. */
  | { readonly is: 'waste' };

export type CutBranch = Extract<Branch, { readonly is: 'cut' }>;

/** A branch where it lies: `path` is `r`, then `n` or `f` for each cut on the way to it. */
export type Place = {
  readonly path: string;
  readonly branch: Branch;
  readonly size: Rect;
  /** Of its corner nearest the edges measured from. */
  readonly from: Rect;
};

/** What lies beyond a cut; nothing when the blade runs off the edge. */
const beyond = (whole: Length, at: Length, kerf: Length): Length => {
  const rest = subtract(subtract(whole, at), kerf);
  return isNegative(rest) ? zero : rest;
};

/** The two rectangles a cut makes of one. @example halvesOf({ long, wide }, cut, kerf).far.wide */
export function halvesOf(
  size: Rect,
  { way, at }: Pick<CutBranch, 'way' | 'at'>,
  kerf: Length,
): { readonly near: Rect; readonly far: Rect } {
  return way === 'rip'
    ? { near: { ...size, wide: at }, far: { ...size, wide: beyond(size.wide, at, kerf) } }
    : { near: { ...size, long: at }, far: { ...size, long: beyond(size.long, at, kerf) } };
}

/**
 * Every branch of a sheet with its size and place, each before what it is cut into.
 *
 * @param sheet its size, and the whole tree; @param kerf inches, > 0
 * @example placesOf(sheet, kerf).filter((p) => p.branch.is === 'left')
 */
export function placesOf(
  sheet: { readonly size: Rect; readonly tree: Branch },
  kerf: Length,
): readonly Place[] {
  const found: Place[] = [];
  const visit = (place: Place): void => {
    found.push(place);
    const { branch, size, from, path } = place;
    if (branch.is !== 'cut') return;
    const { near, far } = halvesOf(size, branch, kerf);
    const on = add(branch.at, kerf);
    visit({ path: `${path}n`, branch: branch.near, size: near, from });
    visit({
      path: `${path}f`,
      branch: branch.far,
      size: far,
      from:
        branch.way === 'rip' ? { ...from, wide: add(from.wide, on) } : { ...from, long: add(from.long, on) },
    });
  };
  visit({ path: 'r', branch: sheet.tree, size: sheet.size, from: { long: zero, wide: zero } });
  return found;
}

/** Names of the pieces in a branch, near before far. @example piecesIn(tree).length */
export const piecesIn = (branch: Branch): readonly string[] =>
  branch.is === 'cut'
    ? [...piecesIn(branch.near), ...piecesIn(branch.far)]
    : branch.is === 'piece'
      ? [branch.piece]
      : [];

/** The branch at a path, or undefined. @example branchAt(tree, 'rnf') */
export function branchAt(tree: Branch, path: string): Branch | undefined {
  return [...path.slice(1)].reduce<Branch | undefined>(
    (branch, step) => (branch?.is === 'cut' ? (step === 'n' ? branch.near : branch.far) : undefined),
    tree,
  );
}

/** The tree with another branch at a path. @example withBranch(tree, 'rf', { is: 'left' }) */
export function withBranch(tree: Branch, path: string, branch: Branch): Branch {
  if (path.length <= 1) return branch;
  if (tree.is !== 'cut') return tree;
  const rest = `r${path.slice(2)}`;
  return path[1] === 'n'
    ? { ...tree, near: withBranch(tree.near, rest, branch) }
    : { ...tree, far: withBranch(tree.far, rest, branch) };
}
