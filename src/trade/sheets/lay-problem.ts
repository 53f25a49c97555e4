import {
  add,
  atMost,
  equals,
  type Length,
  less,
  longest,
  type Ratio,
  shortest,
  zero,
} from '../../length/length';
import { toWhole } from '../../length/round';
import { alongGrain, mayTurn } from './check-pool';
import { type Grid, gridOf, stepsDown, stepsUp } from './grid';
import type { RoughPiece } from './pieces';
import { type Ground, groundsOf, type Pool } from './pool';
import { restsOn } from './rests-on';
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
  /** What it was made of, as a short word. */
  readonly rests: string;
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
  const useful = groundsOf(pool, kerf).filter((ground) => takesAny(ground, pool));
  const grounds = several ? useful.flatMap(apart) : useful;
  const all = [
    kerf,
    ...grounds.flatMap(({ usable }) => [usable.long, usable.wide]),
    ...pool.pieces.flatMap(({ long, wide }) => [long, wide]),
  ];
  const grid = gridOf(all, add(longest(zero, ...all), kerf));
  const alike = alikeOf(pool.pieces);
  const groups = [...new Set(pool.pieces.flatMap((p) => p.together ?? []))];
  const costs = costsOf(pool);
  const inLine = isInLine(pool, grounds, kerf);
  const mixed = grounds.some((g) => g.atHand) || (several && grounds.some((g) => g.run));
  return {
    two: {
      sheets: grounds.map((ground) => sheetFor(ground, { grid, kerf, inLine, costs })),
      pieces: alike.map((pieces) => pieceFor(pieces, { grid, kerf, groups, pool, inLine })),
    },
    grid,
    kerf,
    grounds,
    alike,
    samePrice: new Set(costs.values()).size === 1 && !mixed,
    rests: restsOn(pool, kerf),
  };
}

/** Sheets at hand apart from those to be bought. */
const apart = (ground: Ground): readonly Ground[] =>
  ground.left || ground.run || ground.stock.have === 0
    ? [ground]
    : [{ ...ground, atHand: true }, ...(ground.stock.noMore ? [] : [ground])];

/** A stick too narrow for every piece, or too short, is no ground. */
const takesAny = ({ usable }: Ground, { kind, pieces }: Pool): boolean =>
  kind === 'sheet' || pieces.some((p) => atMost(p.long, usable.long) && atMost(p.wide, usable.wide));

/**
 * Whether pieces of a stick lie one after the other only: every stick takes the widest, none takes two side by side.
 */
function isInLine({ kind, pieces }: Pool, grounds: readonly Ground[], kerf: Length): boolean {
  if (kind !== 'stick') return false;
  const widths = pieces.map((p) => p.wide);
  const [first, ...rest] = widths;
  if (!first) return true;
  const [narrow, wide] = [shortest(first, ...rest), longest(first, ...rest)];
  return grounds.every(
    ({ usable }) => atMost(wide, usable.wide) && less(usable.wide, add(add(narrow, kerf), narrow)),
  );
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
