import { add, equals, isPositive, type Length, less, longest, subtract, times } from '../../length/length';
import type { PieceName } from '../carcass/part-name';
import type { RoughPiece } from './pieces';
import type { LeftPiece, SheetStock } from './stock';
import type { Rect } from './tree';

/** Stocks of one stuff and one thickness, what is left over of them, and the pieces to come out of them. */
export type Pool = {
  /** Id of the stock the others are like. */
  readonly id: string;
  readonly kind: SheetStock['kind'];
  readonly stocks: readonly SheetStock[];
  readonly lefts: readonly LeftPiece[];
  readonly pieces: readonly RoughPiece[];
};

/** A stock is of the pool of the one it is like while both are as thick; a reading may part them. */
function rootOf(stock: SheetStock, all: ReadonlyMap<string, SheetStock>): string {
  const like = all.get(stock.like ?? '');
  if (!like || like.kind !== stock.kind || like.like !== undefined) return stock.id;
  const alike =
    like.thickness && stock.thickness
      ? equals(like.thickness, stock.thickness)
      : like.thickness === stock.thickness;
  return alike ? like.id : stock.id;
}

/**
 * The pools of a job that have pieces to cut, in the order of the stocks.
 *
 * @returns `homeless`: pieces no stock is said for
 * @example poolsOf({ stocks, lefts, pieces }).pools[0].pieces.length
 */
export function poolsOf(job: {
  readonly stocks: readonly SheetStock[];
  readonly lefts: readonly LeftPiece[];
  readonly pieces: readonly RoughPiece[];
}): { readonly pools: readonly Pool[]; readonly homeless: readonly RoughPiece[] } {
  const byId = new Map(job.stocks.map((s) => [s.id, s]));
  const roots = new Map(job.stocks.map((s) => [s.id, rootOf(s, byId)]));
  const pools = job.stocks
    .filter((s) => roots.get(s.id) === s.id)
    .map(
      (root): Pool => ({
        id: root.id,
        kind: root.kind,
        stocks: job.stocks.filter((s) => roots.get(s.id) === root.id),
        lefts: job.lefts.filter((left) => roots.get(left.stock) === root.id),
        pieces: job.pieces.filter((piece) => roots.get(piece.stuff ?? '') === root.id),
      }),
    );
  return {
    pools: pools.filter((pool) => pool.pieces.length > 0),
    homeless: job.pieces.filter((piece) => !roots.has(piece.stuff ?? '')),
  };
}

/** Why a pool cannot be laid out; each names what is wrong, by how much, and what would do. Inches. */
export type PoolProblem =
  | { readonly code: 'kerf-missing' }
  /** A trim takes off; `trim` is below 0. */
  | { readonly code: 'trim-negative'; readonly stock: string; readonly trim: Length }
  | { readonly code: 'trim-eats-it'; readonly stock: string; readonly trim: Length; readonly most: Length }
  /** Larger than every sheet whichever way it lies; `over`: by how much it misses the one it misses least, `most`. */
  | { readonly code: 'too-large'; readonly piece: RoughPiece; readonly over: Rect; readonly most: Rect }
  /** It would fit turned, and the grain does not let it. */
  | { readonly code: 'grain-forbids'; readonly piece: RoughPiece; readonly needs: Rect }
  | {
      readonly code: 'too-long-for-stick';
      readonly piece: RoughPiece;
      readonly by: Length;
      readonly most: Length;
    }
  | {
      readonly code: 'wider-than-stick';
      readonly piece: RoughPiece;
      readonly by: Length;
      readonly most: Length;
    }
  | { readonly code: 'sheets-run-out'; readonly left: number }
  | { readonly code: 'together-too-large'; readonly names: readonly PieceName[] };

/** What may be laid on: usable size, and what it is of. */
export type Ground = {
  readonly stock: SheetStock;
  /** A piece left over, used before a whole sheet. */
  readonly left?: LeftPiece;
  /** The part of a stick between its bad places: where it begins, from the end measured from. */
  readonly run?: Length;
  /** Of those at hand. */
  readonly atHand?: boolean;
  readonly usable: Rect;
};

/** A trim takes at least the saw's kerf. */
export const trimOf = (stock: SheetStock, kerf: Length): Length =>
  isPositive(stock.trim) ? longest(stock.trim, kerf) : stock.trim;

/** Everything of a pool that may be laid on: whole sheets and sticks, and what is left over. */
export const groundsOf = (pool: Pool, kerf: Length): readonly Ground[] => [
  ...pool.stocks.flatMap((stock) => groundsOfStock(stock, kerf)),
  ...pool.lefts.flatMap((left): readonly Ground[] => {
    const stock = pool.stocks.find((s) => s.id === left.stock);
    return stock && isPositive(left.long) && isPositive(left.wide)
      ? [{ stock, left, usable: { long: left.long, wide: left.wide } }]
      : [];
  }),
];

function groundsOfStock(stock: SheetStock, kerf: Length): readonly Ground[] {
  if (stock.noMore && stock.have === 0) return [];
  const off = times(trimOf(stock, kerf), 2n);
  const usable = {
    long: subtract(stock.long, off),
    wide: stock.kind === 'stick' ? stock.wide : subtract(stock.wide, off),
  };
  if (stock.kind === 'sheet' || stock.bad.length === 0) return [{ stock, usable }];
  return runsOf(stock, kerf).map((run) => ({
    stock,
    run: run.from,
    usable: { ...usable, long: subtract(run.to, run.from) },
  }));
}

/**
 * What is good of a stick with bad places: the lengths between them, and between them and the trimmed ends. A bad place
 * takes the two cuts that free it, however short; one whose end is not said reaches to the end of the stick.
 */
export function runsOf(
  stock: SheetStock,
  kerf: Length,
): readonly { readonly from: Length; readonly to: Length }[] {
  const trim = trimOf(stock, kerf);
  const pairs = stock.bad
    .flatMap((from, k) => (k % 2 === 0 ? [inOrder(from, stock.bad[k + 1] ?? stock.long)] : []))
    .sort((a, b) => (less(a.from, b.from) ? -1 : 1));
  const runs: { from: Length; to: Length }[] = [];
  let at = trim;
  for (const bad of [...pairs, { from: subtract(stock.long, trim), to: stock.long }]) {
    if (less(at, bad.from)) runs.push({ from: at, to: bad.from });
    at = longest(at, bad.to, add(bad.from, times(kerf, 2n)));
  }
  return runs;
}

const inOrder = (a: Length, b: Length) => (less(b, a) ? { from: b, to: a } : { from: a, to: b });
