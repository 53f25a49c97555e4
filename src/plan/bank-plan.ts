import { withBoxJoint } from '../job/box-joint';
import { withHanging } from '../job/hanging';
import type { Job } from '../job/job';
import type { Lot } from '../job/loads';
import { type Length, shortest, zero } from '../length/length';
import type { Result } from '../length/result';
import { fineOf, markAt } from '../length/tape';
import { boxParts, boxRoles, drawerPart, frontParts } from '../trade/boxes/bank-parts';
import { type DrawersProblem, drawersOf, stockOfBank, type WorkedDrawers } from '../trade/boxes/drawers';
import { hungParts } from '../trade/boxes/hung-parts';
import { leastFronts } from '../trade/boxes/least';
import { type PullPlan, pullHoles } from '../trade/boxes/pulls';
import type { Stuff } from '../trade/carcass/case';
import type { Part } from '../trade/carcass/part';
import type { Worked } from '../trade/carcass/parts';
import { stockOf } from '../trade/carcass/sizes';
import type { Bank, BankStock } from '../trade/fronts/bank';
import { isOwnFront } from '../trade/fronts/corner';
import { storyStick } from '../trade/fronts/marks';
import { fitOrder } from '../trade/fronts/stands';
import { usualBank } from '../trade/fronts/usual-bank';
import { type FrontsProblem, frontsOf, type WorkedColumn, type WorkedFronts } from '../trade/fronts/worked';
import type { Shop } from '../trade/machines/shop';
import { type BankWork, readyFor } from '../trade/setups/bank-steps';
import { sheetSaws } from './sheet-saws';

/** A bank worked out: fronts, then drawers behind them; its parts, and its steps at the bench. */
export type BankPlan = {
  readonly bank: Bank;
  readonly fronts: Result<WorkedFronts, readonly FrontsProblem[]>;
  /** Nothing while the fronts do not work out. */
  readonly drawers: Result<WorkedDrawers, readonly DrawersProblem[]> | undefined;
  readonly parts: readonly Part[];
  readonly work: BankWork | undefined;
};

type BankAt = {
  readonly stuff: readonly Stuff[];
  readonly worked: Worked | undefined;
  readonly shop: Shop;
};

/** Thickness of what a piece of a drawer is of. */
export const thickIn =
  (bank: Bank, stuff: readonly Stuff[]) =>
  (stock: BankStock): Length | undefined =>
    stuff.find((s) => s.id === stockOfBank(bank, stock))?.thickness;

/** A drawer of a bank: its number from the top, its column from the left. */
type DrawerAt = { readonly no: number; readonly column: number };

/** What goes into a bank, or into one drawer of it; what says no column goes into the first. */
export const thingsIn = (job: Job, bank: string, at?: DrawerAt): readonly Lot[] =>
  job.things.filter(
    (t) => t.bank === bank && (at === undefined || (t.front === at.no && (t.column ?? 1) === at.column)),
  );

/** Whether the drawer a thing goes into is there: banks get fewer drawers, and fewer columns. */
export function hasDrawer(job: Pick<Job, 'banks'>, { bank, front, column = 1 }: Lot): boolean {
  const own = job.banks.find(({ id }) => id === bank);
  return own !== undefined && front !== undefined && front <= own.count && column <= own.across;
}

/** Names of the stuffs that stand round what goes into a bank: those of its boxes and of the case it stands in. */
export function stuffsRound(job: Job, bank: Bank): readonly string[] {
  const stocks = [bank.stocks, job.cases.find((c) => c.id === bank.of)?.stocks ?? {}].flatMap((of) =>
    Object.values(of),
  );
  return job.stock.filter(({ id }) => stocks.includes(id)).map(({ name }) => name);
}

/**
 * Fronts that are those of their boxes stand where their sticks put them, from the bottom up, the difference at the
 * top: nothing of them is fitted.
 */
function asHung(bank: Bank): Bank {
  if (!isOwnFront(bank)) return bank;
  const columns = Object.entries(bank.columns).map(([no, column]) => {
    const fitted = Object.entries(column.fitted).map(([front, { held, trim }]) => [front, { held, trim }]);
    return [no, { ...column, fitted: Object.fromEntries(fitted) }];
  });
  return { ...bank, order: 'up', goes: 'last', columns: Object.fromEntries(columns) };
}

/** Runners are of what the sides of the case are of, where nothing is said. */
function ofCase(bank: Bank, worked: Worked | undefined): Bank {
  const side = worked && stockOf(worked.sizes.case, 'side');
  if (!bank.hung || !side) return bank;
  return { ...bank, stocks: { runner: side, ...bank.stocks } };
}

/** A bank of the job from its opening to its last hole. */
export function bankPlanOf(job: Job, said: Bank, { stuff, worked, shop }: BankAt): BankPlan {
  const bank = ofCase(asHung(withHanging(job, withBoxJoint(job, said))), worked);
  const { tape } = job;
  const thick = thickIn(bank, stuff);
  const least = leastFronts(bank, thingsIn(job, bank.id), thick);
  const fronts = frontsOf(bank, { worked, tape, least });
  if (!fronts.ok) return { bank, fronts, drawers: undefined, parts: [], work: undefined };
  const drawers = drawersOf(fronts.value, { thick, shop, tape });
  const framed = worked?.sizes.case.hasFrame ?? false;
  const at = { tape, thick, waits: readyFor(bank.of, framed), kerf: blankKerf(job, shop) };
  const made = drawers.ok ? drawers.value : undefined;
  // a front that is that of its box is cut when that works out
  const isThere = thick('front') && (made ?? !isOwnFront(bank));
  const own = isThere ? frontParts(fronts.value, { ...at, drawers: made }) : [];
  const boxes = drawers.ok ? [...boxParts(drawers.value, at), ...hungParts(drawers.value, at)] : [];
  const work = drawers.ok ? workOf(job, drawers.value, framed) : undefined;
  return { bank, fronts, drawers, parts: [...own, ...boxes], work };
}

/** Fronts out of one piece are parted by the saw that cuts the sheets, where that is said. */
function blankKerf(job: Job, shop: Shop): Length | undefined {
  const saws = sheetSaws(job, shop);
  return saws.guide ? saws.shop.kerf : (shop.kerf ?? shop.single);
}

function workOf({ tape }: Job, worked: WorkedDrawers, framed: boolean): BankWork {
  const { bank, marks } = worked.fronts;
  const { hung } = worked.slides;
  const end = bank.order === 'down' ? 'top' : 'bottom';
  const stick = storyStick(marks, end).map(({ front, edge, at: exact }) => {
    const mark = markAt(exact, tape).value;
    return { id: `f${front}${edge}`, front, edge, at: mark, end } as const;
  });
  const drawers = worked.drawers.map((drawer) => ({
    ...drawer,
    box: boxRoles.map((role) =>
      drawerPart(bank.id, drawer, drawer.own && role === 'boxfront' ? 'front' : role),
    ),
    front: drawerPart(bank.id, drawer, 'front'),
  }));
  return {
    id: bank.id,
    of: bank.of,
    framed,
    frontsApart: !isOwnFront(bank),
    marks: stick,
    drawers,
    sticks: worked.sticks.ok
      ? worked.sticks.value.map((s) => ({ ...s, length: markAt(s.length, tape) }))
      : [],
    ...(hung ? { hung: hung.how === 'runners' ? 'runner' : 'hangstrip' } : {}),
    fitOrder: fitOrder(bank),
    pulls: pullsOf(worked, tape),
  };
}

/** First hole of the jig: the same for every front of a column. */
function pullsOf({ fronts }: WorkedDrawers, tape: Job['tape']): BankWork['pulls'] {
  const { bank } = fronts;
  if (bank.pulls < 1) return [];
  return fronts.columns.flatMap((column) => {
    const holes = pullHoles(pullPlan(bank, column));
    const [first] = holes.ok ? holes.value : [];
    if (!first) return [];
    const bothEnds = bank.centres !== undefined || bank.pulls > 1;
    return [{ column: column.no, x: holeMark(first.x, tape), down: markAt(first.y, tape), bothEnds }];
  });
}

/** Holes are set finer than cuts: a sixty-fourth on an inch tape. */
export const holeMark = (x: Length, tape: Job['tape']) => markAt(x, fineOf(tape));

const lowest = (heights: readonly Length[]): Length => {
  const [first, ...rest] = heights;
  return first ? shortest(first, ...rest) : zero;
};

/** The pulls of the fronts of a column: they must go on the lowest. */
export const pullPlan = (bank: Bank, column: WorkedColumn): PullPlan => ({
  width: column.width.mark.value,
  height: lowest(column.heights),
  pulls: bank.pulls > 1 ? 2 : 1,
  ...(bank.centres ? { centres: bank.centres } : {}),
  ...(bank.fromEnd ? { fromEnd: bank.fromEnd } : {}),
  fromTop: bank.fromTop ?? usualBank(bank).fromTop,
});
