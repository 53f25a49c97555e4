import { usualIn } from '../job/in-units';
import type { Job, PlanProof, PlanSheet, Stock } from '../job/job';
import type { Folded } from '../job/log';
import { equals, type Length, longest, type Ratio, ratio, zero } from '../length/length';
import type { Units } from '../length/units';
import type { Shop } from '../trade/machines/shop';
import { idsOf } from '../trade/setups/operation';
import { checkPool } from '../trade/sheets/check-pool';
import { type CutStep, cutSteps } from '../trade/sheets/cut-steps';
import { type RoughPiece, roughPieces } from '../trade/sheets/pieces';
import { type Pool, type PoolProblem, poolsOf } from '../trade/sheets/pool';
import { restsOn } from '../trade/sheets/rests-on';
import { type Standing, standingOf } from '../trade/sheets/standing';
import { type StickUse, useOf } from '../trade/sheets/stick-use';
import { type LeftPiece, type SheetStock, usualSheets } from '../trade/sheets/stock';
import { type Place, placesOf } from '../trade/sheets/tree';
import { stuffOf } from './parts-of-job';
import type { Plan } from './plan';
import { isBegun, layOp, standingSheets } from './progress';
import { recutsOf } from './recuts';
import { roughAt } from './rough-at';
import { type SheetSaws, sheetSaws } from './sheet-saws';

/** A pool as it stands: what keeps it from being laid out, its sheets, and what still wants a place. */
export type PoolView = {
  readonly pool: Pool;
  readonly name: string;
  readonly problems: readonly PoolProblem[];
  /** Of the plan taken up. */
  readonly sheets: readonly PlanSheet[];
  readonly standing: Standing;
  readonly proof: PlanProof;
  /** What a new layout would lay: nothing when every piece lies or is cut. */
  readonly toLay: Pool;
  /** Sheets of the plan nothing is cut of: a new layout takes their place. */
  readonly fresh: readonly PlanSheet[];
  /** Pieces on sheets begun that are larger now and not cut out yet: they are laid elsewhere. */
  readonly outgrown: readonly { readonly sheet: string; readonly piece: string }[];
  /** What the plan rests on has changed since it was taken up. */
  readonly changed: boolean;
};

export type Breakdown = {
  readonly kerf: Length | undefined;
  /** What the sheets are cut on. */
  readonly saws: SheetSaws;
  readonly pools: readonly PoolView[];
  readonly homeless: readonly RoughPiece[];
  readonly pieces: ReadonlyMap<string, RoughPiece>;
  readonly stocks: ReadonlyMap<string, SheetStock>;
};

/** A stock as the layout sees it; what is not said is the usual. */
function sheetStock(stock: Stock, units: Units): SheetStock {
  const usual = usualSheets(units);
  const long = stock.long ?? usual.long;
  // one whose end is not said yet runs to the end of the stick
  const bad = stock.badPlaces.flatMap(({ from = zero, to = long }) => [from, to]);
  // a stick with a bad place is that one stick
  const one = stock.kind === 'stick' && bad.length > 0;
  return {
    id: stock.id,
    name: stock.name || 'Sheet',
    kind: stock.kind,
    thickness: stuffOf(stock)[0]?.thickness,
    long,
    wide: stock.wide ?? (stock.kind === 'stick' ? usual.stickWide : usual.wide),
    trim: stock.trim ?? usual.trim,
    grain: stock.grain ?? 'long',
    have: one ? 1 : (stock.have ?? 0),
    noMore: one || stock.noMore === true,
    price: stock.price,
    like: stock.like,
    bad,
  };
}

/** Sticks are as wide as their widest piece until their width is said: then pieces may lie side by side. */
function asWideAsNeeded(stock: SheetStock, job: Job, pieces: readonly RoughPiece[]): SheetStock {
  if (stock.kind === 'sheet' || job.stock.some((s) => s.id === stock.id && s.wide)) return stock;
  const kin = new Set([
    stock.id,
    stock.like,
    ...job.stock.filter((s) => s.like === stock.id).map((s) => s.id),
  ]);
  const widths = pieces.filter((p) => p.stuff !== undefined && kin.has(p.stuff)).map((p) => p.wide);
  return widths.length > 0 ? { ...stock, wide: longest(zero, ...widths) } : stock;
}

const leftPieces = (job: Job): readonly LeftPiece[] =>
  job.offcuts.flatMap(({ id, stock, length, width }) =>
    length && width ? [{ id, stock, long: length, wide: width }] : [],
  );

/** Everything the sheets screens show, from the plan and the ticks. */
export function breakdownOf(plan: Plan, shop: Shop, folded: Folded): Breakdown {
  const { job } = plan;
  const given = job.stock.map((s) => sheetStock(s, usualIn(job)));
  const pieces = roughPieces(plan.parts, {
    ...roughAt(job),
    notes: (part) => job.parts[part] ?? {},
    recuts: (part) => recutsOf(job, part),
  });
  const stocks = given.map((stock) => asWideAsNeeded(stock, job, pieces));
  const byId = new Map(stocks.map((s) => [s.id, s]));
  const saws = sheetSaws(job, shop);
  const { kerf } = saws;
  const sheets = standingSheets(job, folded);
  const inUse = new Set(sheets.map((s) => s.left));
  const lefts = leftPieces(job).filter((left) => !inUse.has(left.id));
  const { pools, homeless } = poolsOf({ stocks, lefts, pieces });
  const done = new Set(
    plan.operations
      .filter((op) => idsOf(op).some((id) => folded.ticks.has(id)))
      .map((op) => `${op.part}/${op.copy}`),
  );
  const view = (pool: Pool) =>
    poolView(pool, { job, sheets, kerf, folded, cut: (id) => done.has(id), lefts: leftPieces(job) });
  return {
    kerf,
    saws,
    pools: pools.map(view),
    homeless: homeless.filter((piece) => !done.has(piece.id)),
    pieces: new Map(pieces.map((piece) => [piece.id, piece])),
    stocks: byId,
  };
}

type At = {
  readonly job: Job;
  readonly sheets: readonly PlanSheet[];
  readonly kerf: Length | undefined;
  readonly folded: Folded;
  readonly cut: (piece: string) => boolean;
  readonly lefts: readonly LeftPiece[];
};

function poolView(pool: Pool, at: At): PoolView {
  const { job, kerf, folded, cut, lefts } = at;
  const own = new Set(pool.stocks.map((s) => s.id));
  const sheets = at.sheets.filter((sheet) => own.has(sheet.stock));
  const begun = sheets.filter((sheet) => isBegun(sheet, folded));
  const fresh = sheets.filter((sheet) => !begun.includes(sheet));
  const stays = standingOf({ pieces: pool.pieces, sheets: begun, cut });
  const out = new Set(begun.flatMap((sheet) => cutOut(sheet, folded)));
  const outgrown = stays.misfits
    .filter(({ piece }) => !out.has(piece.id) && !cut(piece.id))
    .map(({ sheet, piece }) => ({ sheet, piece: piece.id }));
  const again = new Set(outgrown.map(({ piece }) => piece));
  const toLay = pool.pieces.filter(
    (piece) => again.has(piece.id) || stays.missing.some(({ id }) => id === piece.id),
  );
  const taken = (id: string) => new Set(begun.filter((s) => s.stock === id && !s.left).map((s) => s.no)).size;
  const freed = lefts.filter((left) => own.has(left.stock) && fresh.some((sheet) => sheet.left === left.id));
  const toLayPool: Pool = {
    ...pool,
    pieces: toLay,
    lefts: [...pool.lefts, ...freed],
    stocks: pool.stocks.map((s) => ({ ...s, have: Math.max(0, s.have - taken(s.id)) })),
  };
  const proof = job.proofs[pool.id] ?? {};
  return {
    pool,
    name: pool.stocks[0]?.name ?? '',
    problems: toLay.length > 0 ? checkPool(toLayPool, kerf) : [],
    sheets,
    standing: standingOf({ pieces: pool.pieces, sheets, cut }),
    proof,
    toLay: toLayPool,
    fresh,
    outgrown,
    changed:
      fresh.length > 0 &&
      (restsElsewhere(pool, kerf, proof) || fresh.some((sheet) => isOtherOffcut(sheet, lefts))),
  };
}

/** A plan whose kerf is not known any more rests on the one it was made with. */
const restsElsewhere = (pool: Pool, kerf: Length | undefined, { rests }: PlanProof): boolean =>
  rests !== undefined && kerf !== undefined && rests !== restsOn(pool, kerf);

/** An offcut of the plan that is gone from the rack, or was measured again. */
function isOtherOffcut(sheet: PlanSheet, lefts: readonly LeftPiece[]): boolean {
  if (!sheet.left) return false;
  const now = lefts.find((left) => left.id === sheet.left);
  return !now || !equals(now.long, sheet.size.long) || !equals(now.wide, sheet.size.wide);
}

/** Pieces of a sheet whose last cut is made. */
const cutOut = (sheet: PlanSheet, { ticks }: Folded): readonly string[] =>
  placesOf(sheet, sheet.kerf).flatMap(({ branch, path }) =>
    branch.is === 'piece' && (path === 'r' || ticks.has(layOp(sheet.id, path.slice(0, -1))))
      ? [branch.piece]
      : [],
  );

/** Whether every piece of a pool lies on a sheet or is cut, as it is wanted. */
export const isSettled = ({ standing: { missing, stale, misfits, twice }, changed }: PoolView): boolean =>
  !changed && missing.length + stale.length + misfits.length + twice.length === 0;

/** The cuts of a sheet in order. */
export function stepsOf(sheet: PlanSheet, job: Job, { stocks, saws: { shop } }: StepsAt): readonly CutStep[] {
  const stock = stocks.get(sheet.stock);
  return cutSteps(sheet, {
    kind: stock?.kind ?? 'sheet',
    kerf: sheet.kerf,
    tape: job.tape,
    shop,
    thick: stock?.thickness,
    carry: carryOf(job),
    guideOnly: job.guideOnly === true,
  });
}

type StepsAt = Pick<Breakdown, 'stocks' | 'saws'>;

/** How much of a stick its parts and their kerfs use; nothing for a sheet, or where parts lie side by side. */
export const useIn = (sheet: PlanSheet, stock: SheetStock | undefined): StickUse | undefined =>
  stock?.kind === 'stick' ? useOf({ ...sheet, stock, offcut: sheet.left !== undefined }) : undefined;

/** Pounds one person carries. */
export const carryOf = (job: Job): Ratio => job.carry ?? ratio(BigInt(usualSheets('in').carry));

/** What is left of a sheet once it is cut, worth keeping: its places whose cut is ticked. */
export const leftoversOf = (sheet: PlanSheet, done: (path: string) => boolean): readonly Place[] =>
  placesOf(sheet, sheet.kerf).filter(
    ({ branch, path }) => branch.is === 'left' && (path === 'r' || done(path.slice(0, -1))),
  );
