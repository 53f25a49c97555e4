import {
  add,
  atMost,
  isNegative,
  isPositive,
  type Length,
  less,
  longest,
  subtract,
  zero,
} from '../../length/length';
import type { RoughPiece } from './pieces';
import { type Ground, groundsOf, type Pool, type PoolProblem, trimOf } from './pool';
import type { Rect } from './tree';

/** Size of a piece as it would lie: along the grain first. */
const asLaid = ({ long, wide, lies }: RoughPiece): Rect =>
  lies === 'across' ? { long: wide, wide: long } : { long, wide };

const turned = ({ long, wide }: Rect): Rect => ({ long: wide, wide: long });
const fits = (a: Rect, b: Rect): boolean => atMost(a.long, b.long) && atMost(a.wide, b.wide);
const overBy = (a: Length, b: Length): Length => longest(zero, subtract(a, b));

/** The usable size of a ground along the face grain, and across it. */
export const alongGrain = ({ stock, left, usable }: Ground): Rect =>
  stock.grain === 'wide' && !left ? turned(usable) : usable;

/** Whether a piece may be turned: it is free, or no sheet of the pool has a grain. */
export const mayTurn = (piece: RoughPiece, pool: Pool): boolean =>
  piece.lies === 'free' || pool.stocks.every((s) => s.grain === 'none');

/**
 * Everything that keeps a pool from being laid out, all of it named at once.
 *
 * @param kerf inches; not known, 0 or less is asked for
 * @returns empty when it may be laid out
 * @example checkPool(pool, undefined) // [{ code: 'kerf-missing' }]
 */
export function checkPool(pool: Pool, kerf: Length | undefined): readonly PoolProblem[] {
  if (!kerf || !isPositive(kerf)) return [{ code: 'kerf-missing' }];
  const wrong = pool.stocks.filter((stock) => isNegative(stock.trim));
  if (wrong.length > 0) return wrong.map(({ id, trim }) => ({ code: 'trim-negative', stock: id, trim }));
  const eaten = pool.stocks.flatMap((stock): readonly PoolProblem[] => {
    const off = add(trimOf(stock, kerf), trimOf(stock, kerf));
    const most = stock.kind === 'stick' || less(stock.long, stock.wide) ? stock.long : stock.wide;
    return less(off, most) ? [] : [{ code: 'trim-eats-it', stock: stock.id, trim: stock.trim, most }];
  });
  if (eaten.length > 0) return eaten;
  const grounds = groundsOf(pool, kerf);
  if (grounds.length === 0) return [{ code: 'sheets-run-out', left: pool.pieces.length }];
  const check = pool.kind === 'stick' ? checkStick : checkSheet;
  return oncePerPart(pool.pieces.flatMap((piece) => check(piece, grounds, pool)));
}

/** Thirty trays too large are one fault. */
const oncePerPart = (problems: readonly PoolProblem[]): readonly PoolProblem[] =>
  problems.filter(
    (p, k) =>
      !('piece' in p) ||
      problems.findIndex((q) => 'piece' in q && q.code === p.code && q.piece.part === p.piece.part) === k,
  );

function checkSheet(piece: RoughPiece, grounds: readonly Ground[], pool: Pool): readonly PoolProblem[] {
  const rooms = grounds.map(alongGrain);
  const lies = asLaid(piece);
  if (rooms.some((room) => fits(lies, room))) return [];
  const turns = rooms.some((room) => fits(turned(lies), room));
  if (turns && mayTurn(piece, pool)) return [];
  const least = missedLeast(lies, grounds);
  if (!least) return [];
  return [turns ? { code: 'grain-forbids', piece, needs: lies } : { code: 'too-large', piece, ...least }];
}

/** The ground a piece misses least, and by how much. */
function missedLeast(
  lies: Rect,
  grounds: readonly Ground[],
): { readonly over: Rect; readonly most: Rect } | undefined {
  const sum = (r: Rect) => add(r.long, r.wide);
  return grounds
    .map((ground) => {
      const room = alongGrain(ground);
      return {
        over: { long: overBy(lies.long, room.long), wide: overBy(lies.wide, room.wide) },
        most: room,
      };
    })
    .reduce<{ readonly over: Rect; readonly most: Rect } | undefined>(
      (best, m) => (best && !less(sum(m.over), sum(best.over)) ? best : m),
      undefined,
    );
}

function checkStick(piece: RoughPiece, grounds: readonly Ground[]): readonly PoolProblem[] {
  if (grounds.some(({ usable }) => fits(piece, usable))) return [];
  const most = longest(zero, ...grounds.map(({ usable }) => usable.long));
  if (less(most, piece.long))
    return [{ code: 'too-long-for-stick', piece, by: subtract(piece.long, most), most }];
  const widest = longest(
    zero,
    ...grounds.filter((g) => atMost(piece.long, g.usable.long)).map(({ usable }) => usable.wide),
  );
  return [{ code: 'wider-than-stick', piece, by: overBy(piece.wide, widest), most: widest }];
}
