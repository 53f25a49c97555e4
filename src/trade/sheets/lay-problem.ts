import { add, equals, type Length, less, longest, type Ratio, shortest, zero } from '../../length/length';
import { toWhole } from '../../length/round';
import { alongGrain, mayTurn } from './check-pool';
import { type Grid, gridOf, stepsDown, stepsUp } from './grid';
import type { RoughPiece } from './pieces';
import { type Ground, groundsOf, type Pool } from './pool';
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
  const several = pool.stocks.length > 1;
  const grounds = several ? groundsOf(pool, kerf).flatMap(apart) : groundsOf(pool, kerf);
  const all = [
    kerf,
    ...grounds.flatMap(({ usable }) => [usable.long, usable.wide]),
    ...pool.pieces.flatMap(({ long, wide }) => [long, wide]),
  ];
  const grid = gridOf(all, add(longest(zero, ...all), kerf));
  const alike = alikeOf(pool.pieces);
  const groups = [...new Set(pool.pieces.flatMap((p) => p.together ?? []))];
  const costs = costsOf(pool);
  const inLine = isInLine(pool, kerf);
  return {
    two: {
      sheets: grounds.map((ground) => sheetFor(ground, { grid, kerf, inLine, costs })),
      pieces: alike.map((pieces) => pieceFor(pieces, { grid, kerf, groups, pool, inLine })),
    },
    grid,
    kerf,
    grounds,
    alike,
    samePrice: new Set(costs.values()).size === 1 && !grounds.some((g) => g.atHand),
  };
}

/** Sheets at hand apart from those to be bought. */
const apart = (ground: Ground): readonly Ground[] =>
  ground.left || ground.run || ground.stock.have === 0
    ? [ground]
    : [{ ...ground, atHand: true }, ...(ground.stock.noMore ? [] : [ground])];

/** Whether pieces of a stick lie one after the other only: none is so narrow that two go side by side. */
function isInLine({ kind, stocks, pieces }: Pool, kerf: Length): boolean {
  if (kind !== 'stick') return false;
  const [first, ...rest] = pieces.map((p) => p.wide);
  const narrow = first && shortest(first, ...rest);
  return !narrow || stocks.every(({ wide }) => less(wide, add(add(narrow, kerf), narrow)));
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

/** A price counts when every stock that may be bought has one; else every sheet costs the same, and fewest count. */
function costsOf({ stocks }: Pool): Costs {
  const priced = stocks.every(({ price, noMore }) => noMore || (price !== undefined && price.s > 0n));
  const whole = (x: Ratio) => Math.max(1, Number(toWhole(x.mul(100n) as Ratio, 'ceil')));
  return new Map(
    stocks.map((s) => [s.id, priced && s.price && !s.noMore ? sheetCost * whole(s.price) : sheetCost]),
  );
}

/** Several stocks: what is at hand costs little beside what must be bought. With one alone it makes no difference. */
const atHandCost = 10;

type SheetAt = {
  readonly grid: Grid;
  readonly kerf: Length;
  readonly inLine: boolean;
  readonly costs: Costs;
};

function sheetFor(ground: Ground, { grid, kerf, inLine, costs }: SheetAt): TwoD['sheets'][number] {
  const { stock, left, run, atHand } = ground;
  const room = alongGrain(ground);
  const one = left !== undefined || run !== undefined;
  return {
    w: stepsDown(add(room.long, kerf), grid),
    h: inLine ? 1 : stepsDown(add(room.wide, kerf), grid),
    cost: one ? 1 : atHand ? atHandCost : (costs.get(stock.id) ?? sheetCost),
    ...(one ? { count: 1 } : atHand || stock.noMore ? { count: stock.have } : {}),
  };
}

type PieceAt = {
  readonly grid: Grid;
  readonly kerf: Length;
  readonly groups: readonly string[];
  readonly pool: Pool;
  readonly inLine: boolean;
};

function pieceFor(
  pieces: readonly RoughPiece[],
  { grid, kerf, groups, pool, inLine }: PieceAt,
): TwoD['pieces'][number] {
  const [piece] = pieces;
  if (!piece) throw new RangeError('pieceFor: none alike');
  const long = stepsUp(add(piece.long, kerf), grid);
  const wide = stepsUp(add(piece.wide, kerf), grid);
  const together = piece.together === undefined ? {} : { together: groups.indexOf(piece.together) };
  const count = pieces.length;
  if (inLine) return { w: long, h: 1, count, turn: false };
  if (pool.kind === 'stick') return { w: long, h: wide, count, turn: false };
  const across = piece.lies === 'across';
  return {
    w: across ? wide : long,
    h: across ? long : wide,
    count,
    turn: mayTurn(piece, pool),
    ...together,
  };
}
