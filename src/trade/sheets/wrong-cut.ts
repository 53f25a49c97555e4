import { add, atMost, isNegative, isPositive, type Length, less, subtract } from '../../length/length';
import { laidSheetsOf } from './laid-sheet';
import { type LayProblem, layProblemOf } from './lay-problem';
import { givesPiece, leastRough, type RoughPiece } from './pieces';
import { freed, isSound, type Spot, soundOf, trimmedTo } from './sound';
import type { SheetStock } from './stock';
import { type Branch, type CutBranch, halvesOf, piecesIn, placesOf, type Rect } from './tree';
import type { Laid } from './two-d/two-d';

/** A cut that came out elsewhere: the sheet has fallen into two other rectangles than meant. */
export type WrongCut = {
  readonly cut: CutBranch;
  readonly size: Rect;
  /** Where what is cut lies on its sheet. */
  readonly from: Rect;
  /** What is kept between the edge and the kerf, as it came out. Inches. */
  readonly at: Length;
};

type WrongCutError =
  | { readonly code: 'not-a-cut' }
  /** Beyond the sheet that was cut. */
  | { readonly code: 'off-the-sheet'; readonly by: Length; readonly most: Length };

/** What is wrong with a figure given for a cut, or nothing. Inches. */
export function wrongCutError({ cut, size, at }: WrongCut): WrongCutError | undefined {
  const most = cut.way === 'rip' ? size.wide : size.long;
  // a trim may be no wider than its kerf
  if (isNegative(at) || (!isPositive(at) && cut.near.is !== 'waste')) return { code: 'not-a-cut' };
  return less(most, at) ? { code: 'off-the-sheet', by: subtract(at, most), most } : undefined;
}

type At = {
  readonly stock: SheetStock;
  /** Size of the whole sheet or stick, for its trims and bad places. */
  readonly whole: Rect;
  readonly kerf: Length;
  /** The pieces as they are wanted, by id. */
  readonly wanted: ReadonlyMap<string, RoughPiece>;
  /** The sheet is an offcut: its length lies along the grain whatever its stock's does. */
  readonly offcut: boolean;
};

const turnsSides = ({ stock, offcut }: Pick<At, 'stock' | 'offcut'>): boolean =>
  stock.grain === 'wide' && !offcut;

const along = (size: Rect, at: At): Rect => (turnsSides(at) ? { long: size.wide, wide: size.long } : size);

/**
 * The cut as it came out, with everything behind it as planned, when each piece still has a final cut's worth over,
 * or all it was to have.
 *
 * @returns undefined when a piece does not
 * @example stillGood(wrong, at)?.at // as it came out
 */
export function stillGood(wrong: WrongCut, at: At): CutBranch | undefined {
  const { kerf, wanted } = at;
  const { near, far } = halvesOf(wrong.size, { way: wrong.cut.way, at: wrong.at }, kerf);
  const tree: CutBranch = {
    ...wrong.cut,
    at: wrong.at,
    near: fitted(wrong.cut.near, near, kerf),
    far: fitted(wrong.cut.far, far, kerf),
  };
  const good = placesOf({ size: wrong.size, tree }, kerf).every(({ branch, size, from }) => {
    if (branch.is === 'cut') return atMost(branch.at, branch.way === 'rip' ? size.wide : size.long);
    const piece = branch.is === 'piece' ? wanted.get(branch.piece) : undefined;
    if (branch.is !== 'piece' || !piece) return true;
    const own = branch.turned ? { long: size.wide, wide: size.long } : size;
    return givesPiece(own, piece) && isSound({ from: beyond(wrong.from, from), size }, at);
  });
  return good ? tree : undefined;
}

const beyond = (a: Rect, b: Rect): Rect => ({ long: add(a.long, b.long), wide: add(a.wide, b.wide) });

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
  new Map([...wanted].map(([id, piece]) => [id, { ...piece, ...leastRough(piece) }]));

/** The two rectangles of a wrong cut, each with what is sound of it. */
function halves({ cut, size, from, at: came }: WrongCut, at: At) {
  const { near, far } = halvesOf(size, { way: cut.way, at: came }, at.kerf);
  const on = add(came, at.kerf);
  const farFrom =
    cut.way === 'rip' ? { ...from, wide: add(from.wide, on) } : { ...from, long: add(from.long, on) };
  const half = (side: 'near' | 'far', spot: Spot) => ({
    size: spot.size,
    sound: soundOf(spot, at).map((part, k) => ({ id: `${side}${k}`, ...part })),
  });
  return { near: half('near', { from, size: near }), far: half('far', { from: farFrom, size: far }) };
}

/**
 * The rest of a sheet after a wrong cut as a problem of its own: what is sound of two rectangles, and the pieces that
 * were to come out of them.
 *
 * @example wrongCutProblem(wrong, at).two.sheets.length // 2
 */
export function wrongCutProblem(wrong: WrongCut, at: At): LayProblem {
  const { stock, kerf, wanted } = at;
  const { near, far } = halves(wrong, at);
  const pieces = piecesIn(wrong.cut).flatMap((id) => wanted.get(id) ?? []);
  const lefts = [...near.sound, ...far.sound].map(({ id, size }) => ({
    id,
    stock: stock.id,
    ...along(size, at),
  }));
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
  const { near, far } = halves(wrong, at);
  const branch = ({ size, sound }: typeof near): Branch => {
    const parts = sound.map((part) => {
      const tree = laid.find((sheet) => sheet.left === part.id)?.tree ?? { is: 'left' };
      return { ...part, tree: turn ? flipped(tree) : tree };
    });
    return rejoined(size, parts, at);
  };
  return { is: 'cut', way: wrong.cut.way, at: wrong.at, near: branch(near), far: branch(far) };
}

/** A rectangle of what is sound of it: a stick is cut free of its bad places, a sheet of its trims. */
function rejoined(size: Rect, parts: readonly (Spot & { readonly tree: Branch })[], at: At): Branch {
  const [one] = parts;
  if (!one) return { is: 'waste' };
  if (at.stock.bad.length === 0 || at.offcut) return trimmedTo(size, one, at.kerf);
  const runs = parts.map((part) => {
    const to = add(part.from.long, part.size.long);
    return { from: part.from.long, to, tree: part.tree, past: less(to, size.long) };
  });
  return freed(runs, { way: 'cross', kerf: at.kerf });
}
