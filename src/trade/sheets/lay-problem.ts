import { add, equals, isPositive, type Length, longest, type Ratio, zero } from '../../length/length';
import { toWhole } from '../../length/round';
import { alongGrain, mayTurn } from './check-pool';
import { type Grid, gridOf, stepsDown, stepsUp } from './grid';
import type { RoughPiece } from './pieces';
import { type Ground, groundsOf, type Pool } from './pool';
import type { Rect } from './tree';
import type { TwoD } from './two-d/two-d';

/** A pool as whole numbers, and what each number of it stands for. Sizes include one kerf each way. */
export type LayProblem = {
  readonly two: TwoD;
  readonly grid: Grid;
  readonly kerf: Length;
  readonly grounds: readonly Ground[];
  /** By number of a piece in `two`: the pieces that are alike. */
  readonly alike: readonly (readonly RoughPiece[])[];
  /** Whole sheets all cost the same: then least cost is fewest sheets. */
  readonly samePrice: boolean;
};

/** A whole sheet costs so much, a piece left over one: it is used wherever it spares a sheet. */
export const sheetCost = 1000;

/**
 * The whole numbers the search works with: x along the face grain, y across it.
 *
 * @param pool without problems (`checkPool`); @param kerf inches, > 0
 * @example layProblemOf(pool, inches(1n, 8n)).two.sheets.length
 */
export function layProblemOf(pool: Pool, kerf: Length): LayProblem {
  const grounds = groundsOf(pool, kerf);
  const all = [
    kerf,
    ...grounds.flatMap(({ usable }) => [usable.long, usable.wide]),
    ...pool.pieces.flatMap(({ long, wide }) => [long, wide]),
  ];
  const grid = gridOf(all, add(longest(zero, ...all), kerf));
  const alike = alikeOf(pool.pieces);
  const groups = [...new Set(pool.pieces.flatMap((p) => p.together ?? []))];
  const costs = costsOf(pool);
  const stick = pool.kind === 'stick';
  return {
    two: {
      sheets: grounds.map((ground) => sheetFor(ground, { grid, kerf, stick, costs })),
      pieces: alike.map((pieces) => pieceFor(pieces, { grid, kerf, groups, pool })),
    },
    grid,
    kerf,
    grounds,
    alike,
    samePrice: new Set(costs.values()).size === 1,
  };
}

function alikeOf(pieces: readonly RoughPiece[]): readonly (readonly RoughPiece[])[] {
  const found: RoughPiece[][] = [];
  for (const piece of pieces) {
    const list = found.find(([own]) => own && isAlike(own, piece));
    if (list) list.push(piece);
    else found.push([piece]);
  }
  return found;
}

const isAlike = (a: RoughPiece, b: RoughPiece): boolean =>
  equals(a.long, b.long) && equals(a.wide, b.wide) && a.lies === b.lies && a.together === b.together;

type Costs = ReadonlyMap<string, number>;

/** A price counts when every stock has one; else a sheet costs by its area against the first. */
function costsOf({ stocks }: Pool): Costs {
  const priced = stocks.every(({ price }) => price !== undefined && price.s > 0n);
  const whole = (x: Ratio) => Math.max(1, Number(toWhole(x.mul(100n) as Ratio, 'ceil')));
  const [first] = stocks;
  const area = (s: Rect) => s.long.mul(s.wide);
  return new Map(
    stocks.map((s) => {
      if (priced && s.price) return [s.id, sheetCost * whole(s.price)];
      const share =
        first && isPositive(first.long) && isPositive(first.wide) ? area(s).div(area(first)) : undefined;
      return [s.id, share ? Math.max(1, Math.round(sheetCost * share.valueOf())) : sheetCost];
    }),
  );
}

type SheetAt = {
  readonly grid: Grid;
  readonly kerf: Length;
  readonly stick: boolean;
  readonly costs: Costs;
};

function sheetFor(ground: Ground, { grid, kerf, stick, costs }: SheetAt): TwoD['sheets'][number] {
  const { stock, left, run } = ground;
  const room = alongGrain(ground);
  const one = left !== undefined || run !== undefined;
  return {
    w: stepsDown(add(room.long, kerf), grid),
    h: stick ? 1 : stepsDown(add(room.wide, kerf), grid),
    cost: one ? 1 : (costs.get(stock.id) ?? sheetCost),
    ...(one ? { count: 1 } : stock.noMore ? { count: stock.have } : {}),
  };
}

type PieceAt = {
  readonly grid: Grid;
  readonly kerf: Length;
  readonly groups: readonly string[];
  readonly pool: Pool;
};

function pieceFor(
  pieces: readonly RoughPiece[],
  { grid, kerf, groups, pool }: PieceAt,
): TwoD['pieces'][number] {
  const [piece] = pieces;
  if (!piece) throw new RangeError('pieceFor: none alike');
  const long = stepsUp(add(piece.long, kerf), grid);
  const wide = stepsUp(add(piece.wide, kerf), grid);
  const together = piece.together === undefined ? {} : { together: groups.indexOf(piece.together) };
  const count = pieces.length;
  if (pool.kind === 'stick') return { w: long, h: 1, count, turn: false };
  const across = piece.lies === 'across';
  return {
    w: across ? wide : long,
    h: across ? long : wide,
    count,
    turn: mayTurn(piece, pool),
    ...together,
  };
}
