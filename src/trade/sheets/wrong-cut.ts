import { add, atMost, inches, isPositive, type Length, less, shortest, subtract } from '../../length/length';
import { laidSheetsOf } from './laid-sheet';
import { type LayProblem, layProblemOf } from './lay-problem';
import type { RoughPiece } from './pieces';
import type { SheetStock } from './stock';
import { type Branch, type CutBranch, halvesOf, piecesIn, placesOf, type Rect } from './tree';
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
  /** The sheet is an offcut: its length lies along the grain whatever its stock's does. */
  readonly offcut: boolean;
};

const turnsSides = ({ stock, offcut }: Pick<At, 'stock' | 'offcut'>): boolean =>
  stock.grain === 'wide' && !offcut;

const along = (size: Rect, at: At): Rect => (turnsSides(at) ? { long: size.wide, wide: size.long } : size);

/** What a final cut needs at least. Common practice, no source. Inches. */
const leastOver = inches(1n, 16n);

/**
 * The cut as it came out, with everything behind it as planned, when each piece still has a final cut's worth over, or all
 * it was to have.
 *
 * @returns undefined when a piece does not
 * @example stillGood(wrong, at)?.at // as it came out
 */
export function stillGood(wrong: WrongCut, { kerf, wanted }: At): CutBranch | undefined {
  const { near, far } = halvesOf(wrong.size, { way: wrong.cut.way, at: wrong.at }, kerf);
  const tree: CutBranch = {
    ...wrong.cut,
    at: wrong.at,
    near: fitted(wrong.cut.near, near, kerf),
    far: fitted(wrong.cut.far, far, kerf),
  };
  const good = placesOf({ size: wrong.size, tree }, kerf).every(({ branch, size }) => {
    if (branch.is === 'cut') return atMost(branch.at, branch.way === 'rip' ? size.wide : size.long);
    const piece = branch.is === 'piece' ? wanted.get(branch.piece) : undefined;
    if (branch.is !== 'piece' || !piece) return true;
    const own = branch.turned ? { long: size.wide, wide: size.long } : size;
    const enough = (way: 'long' | 'wide') =>
      atMost(shortest(add(piece.finished[way], leastOver), piece[way]), own[way]);
    return enough('long') && enough('wide');
  });
  return good ? tree : undefined;
}

/** A branch in another rectangle than it was laid in: a cut that would only have taken waste off falls away. */
function fitted(branch: Branch, size: Rect, kerf: Length): Branch {
  if (branch.is !== 'cut') return branch;
  const whole = branch.way === 'rip' ? size.wide : size.long;
  if (atMost(whole, branch.at) && piecesIn(branch.far).length === 0) return fitted(branch.near, size, kerf);
  const { near, far } = halvesOf(size, branch, kerf);
  return { ...branch, near: fitted(branch.near, near, kerf), far: fitted(branch.far, far, kerf) };
}

/** The same pieces with no more over than a final cut needs. */
export const leanPieces = (wanted: ReadonlyMap<string, RoughPiece>): ReadonlyMap<string, RoughPiece> =>
  new Map(
    [...wanted].map(([id, piece]) => [
      id,
      {
        ...piece,
        long: shortest(piece.long, add(piece.finished.long, leastOver)),
        wide: shortest(piece.wide, add(piece.finished.wide, leastOver)),
      },
    ]),
  );

/**
 * The rest of a sheet after a wrong cut as a problem of its own: two rectangles, and the pieces that were to come out of
 * them.
 *
 * @example wrongCutProblem(wrong, at).two.sheets.length // 2
 */
export function wrongCutProblem(wrong: WrongCut, at: At): LayProblem {
  const { stock, kerf, wanted } = at;
  const { near, far } = halvesOf(wrong.size, { way: wrong.cut.way, at: wrong.at }, kerf);
  const pieces = piecesIn(wrong.cut).flatMap((id) => wanted.get(id) ?? []);
  const lefts = [
    { id: 'near', stock: stock.id, ...along(near, at) },
    { id: 'far', stock: stock.id, ...along(far, at) },
  ];
  // no whole sheet: only what lies on the bench
  const none = { ...stock, have: 0, noMore: true, bad: [] };
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
 * @example afterWrongCut(wrong, { problem, sheets }, at).at // as it came out
 */
export function afterWrongCut(
  wrong: WrongCut,
  { problem, sheets }: { readonly problem: LayProblem; readonly sheets: Laid['sheets'] | undefined },
  at: At,
): CutBranch {
  const laid = laidSheetsOf(sheets ?? [], problem);
  const turn = turnsSides(at);
  const half = (left: string): Branch => {
    const tree = laid.find((sheet) => sheet.left === left)?.tree ?? { is: 'left' };
    return turn ? flipped(tree) : tree;
  };
  return { is: 'cut', way: wrong.cut.way, at: wrong.at, near: half('near'), far: half('far') };
}
