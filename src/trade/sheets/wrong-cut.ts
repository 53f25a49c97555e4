import { isPositive, type Length, less, subtract } from '../../length/length';
import { laidSheetsOf } from './laid-sheet';
import { type LayProblem, layProblemOf } from './lay-problem';
import type { RoughPiece } from './pieces';
import type { SheetStock } from './stock';
import { type Branch, type CutBranch, halvesOf, piecesIn, type Rect } from './tree';
import type { Laid } from './two-d/two-d';

/** A cut that came out elsewhere: the sheet has fallen into two other rectangles than meant. */
export type WrongCut = {
  readonly cut: CutBranch;
  readonly size: Rect;
  /** What is kept between the edge and the kerf, as it came out. Inches. */
  readonly at: Length;
};

export type WrongCutError =
  | { readonly code: 'not-a-cut' }
  /** Beyond the sheet that was cut. */
  | { readonly code: 'off-the-sheet'; readonly by: Length; readonly most: Length };

/** What is wrong with a figure given for a cut, or nothing. Inches. */
export function wrongCutError({ cut, size, at }: WrongCut): WrongCutError | undefined {
  const most = cut.way === 'rip' ? size.wide : size.long;
  if (!isPositive(at)) return { code: 'not-a-cut' };
  return less(most, at) ? { code: 'off-the-sheet', by: subtract(at, most), most } : undefined;
}

type At = {
  readonly stock: SheetStock;
  readonly kerf: Length;
  /** The pieces as they are wanted, by id. */
  readonly wanted: ReadonlyMap<string, RoughPiece>;
};

const along = (size: Rect, stock: SheetStock): Rect =>
  stock.grain === 'wide' ? { long: size.wide, wide: size.long } : size;

/**
 * The rest of a sheet after a wrong cut as a problem of its own: two rectangles, and the pieces that were to come out of
 * them.
 *
 * @example wrongCutProblem(wrong, at).two.sheets.length // 2
 */
export function wrongCutProblem(wrong: WrongCut, { stock, kerf, wanted }: At): LayProblem {
  const { near, far } = halvesOf(wrong.size, { way: wrong.cut.way, at: wrong.at }, kerf);
  const pieces = piecesIn(wrong.cut).flatMap((id) => wanted.get(id) ?? []);
  const lefts = [
    { id: 'near', stock: stock.id, ...along(near, stock) },
    { id: 'far', stock: stock.id, ...along(far, stock) },
  ];
  // no whole sheet: only what lies on the bench
  const none = { ...stock, have: 0, noMore: true };
  const free = pieces.map(({ together: _, ...piece }) => piece);
  return layProblemOf({ id: stock.id, kind: stock.kind, stocks: [none], lefts, pieces: free }, kerf);
}

/** A tree read with its sides the other way round. */
const flipped = (branch: Branch): Branch => {
  if (branch.is === 'piece') return { ...branch, turned: !branch.turned };
  if (branch.is !== 'cut') return branch;
  return {
    ...branch,
    way: branch.way === 'rip' ? 'cross' : 'rip',
    near: flipped(branch.near),
    far: flipped(branch.far),
  };
};

/**
 * The branch of a wrong cut with both halves laid out anew.
 *
 * @param sheets as found for `wrongCutProblem`; undefined when nothing went
 * @example afterWrongCut(wrong, problem, laid?.sheets).at // as it came out
 */
export function afterWrongCut(
  wrong: WrongCut,
  problem: LayProblem,
  sheets: Laid['sheets'] | undefined,
): CutBranch {
  const laid = laidSheetsOf(sheets ?? [], problem);
  const turn = problem.grounds[0]?.stock.grain === 'wide';
  const half = (left: string): Branch => {
    const tree = laid.find((sheet) => sheet.left === left)?.tree ?? { is: 'left' };
    return turn ? flipped(tree) : tree;
  };
  return { is: 'cut', way: wrong.cut.way, at: wrong.at, near: half('near'), far: half('far') };
}
