import { tickOf } from '../job/edits';
import type { Change } from '../job/entry';
import type { Job } from '../job/job';
import type { Folded } from '../job/log';
import { asInches, asNumber, type Length, less, type Ratio, ratio } from '../length/length';
import { fromStored } from '../length/stored';
import { drawersWarnings } from '../trade/boxes/drawer-warnings';
import { type BuyingBank, buyingOf } from '../trade/buying/buying';
import { type BuyingLine, type Group, groups, type NotListed } from '../trade/buying/line';
import type { SheetNeed } from '../trade/buying/need';
import type { ScrewSchedule } from '../trade/buying/screws';
import type { BuyingStock } from '../trade/buying/solid';
import { fillerId, isFiller } from '../trade/carcass/filler';
import type { Screw } from '../trade/install/screw';
import { type BankPlan, thickIn } from './bank-plan';
import { bottomsToBuy } from './bottom-screws';
import { stripsToRip } from './closing-plan';
import { joinsToBuy, slantsToBuy } from './join-plan';
import { stuffOf } from './parts-of-job';
import type { Plan } from './plan';
import { runnerScrewsToBuy } from './runner-screws';
import { screwsToBuy } from './screw-plan';
import { shelvesToEdge, shelvesToHold } from './shelf-buying';

/** A line with its tick: what was ticked, and whether the line has changed since. */
export type Row = {
  readonly line: BuyingLine;
  readonly op: string;
  readonly ticked?: Ratio;
  readonly now: 'open' | 'got' | 'more' | 'fewer';
};

/** Ticked once, and no line of the list any more. */
export type Gone = {
  readonly op: string;
  readonly ticked: Ratio;
  /** A strip that is a part now: counted with what it is of. */
  readonly isPart?: true;
};

/** A bank whose fronts are screwed on from inside, with no word on how many in each. */
export type ScrewsNotSaid = {
  readonly code: 'screws-not-said';
  readonly name: string;
  readonly fronts: number;
  readonly screw: Screw;
};

export type BuyView = {
  readonly open: readonly { readonly group: Group; readonly rows: readonly Row[] }[];
  readonly got: readonly Row[];
  readonly gone: readonly Gone[];
  readonly not: readonly (NotListed | ScrewsNotSaid)[];
  readonly sheets: boolean;
};

type BuyingAt = {
  readonly plan: Plan;
  readonly needs: readonly SheetNeed[];
  readonly ticks: Folded['ticks'];
  /** Slides of the shop, where a bank says none. Inches. */
  readonly slideLength?: Length | undefined;
  /** The screw that holds a front of a bank from inside. */
  readonly frontScrew: (bank: BankPlan) => Screw | undefined;
  /** Lengths of the screws on the shelf. */
  readonly screws?: readonly Length[];
  /** How many of them hold one front, where the job says. */
  readonly screwsEach?: (bank: BankPlan) => number | undefined;
};

/** Id of the tick of a line. @example buyOp('sheets/a') // 'buy/sheets/a' */
export const buyOp = (id: string): string => `buy/${id}`;

/** The list as the screen shows it: what is still to buy by group, what is got, and what the list cannot count. */
export function buyView(at: BuyingAt): BuyView {
  const banks = [...at.plan.banks.values()];
  const { lines, not } = buyingOf({
    needs: at.needs,
    stocks: stocksOf(at.plan.job),
    parts: at.plan.parts,
    banks: banks.map((bank) => bankOf(bank, at)),
    screws: [
      ...banks.flatMap((bank) => schedulesOf(bank, at)),
      ...banks.flatMap((bank) => bottomsToBuy(bank, `${nameOf(bank)}, bottoms`, at.screws ?? [])),
      ...banks.flatMap((bank) => runnerScrewsToBuy(at.plan, bank, nameOf(bank), at.screws ?? [])),
      ...screwsToBuy(at.plan, at.screws ?? []),
      ...slantsToBuy(at.plan, at.screws ?? []),
    ],
    joins: joinsToBuy(at.plan),
    loose: shelvesToHold(at.plan),
    edged: shelvesToEdge(at.plan),
  });
  const rows = [...lines, ...fillerLines(at.plan)].map((line) => rowOf(line, at.ticks));
  const open = rows.filter(isOpen);
  return {
    open: groups
      .map((group) => ({ group, rows: open.filter((r) => r.line.group === group) }))
      .filter((g) => g.rows.length > 0),
    got: rows.filter((r) => !isOpen(r)),
    gone: goneOf(at.ticks, new Set(rows.map((r) => r.op)), at.plan.parts),
    not: [...not, ...banks.flatMap((bank) => screwsNotSaid(bank, at))],
    sheets: at.needs.length > 0,
  };
}

/** A strip that is a part is bought with what it is of; one of which that is not known has a line of its own. */
const fillerLines = ({ job, worked, parts }: Plan): readonly BuyingLine[] =>
  stripsToRip(job, worked)
    .filter(({ of, side }) => !parts.some(({ id }) => id === fillerId(of, side)))
    .map(({ of, side, wide, long }) => ({
      id: `fillers/${of}~${side}`,
      group: 'fillers',
      name: job.cases.find(({ id }) => id === of)?.name || 'Case',
      amount: ratio(1n),
      unit: 'strip',
      why: { code: 'filler', side, wide, long },
    }));

/** A line that wants more than was got stays where it is seen. */
const isOpen = ({ now }: Row): boolean => now === 'open' || now === 'more';

const stocksOf = (job: Job): readonly BuyingStock[] =>
  job.stock.flatMap((stock) =>
    stuffOf(stock).map((stuff) => ({
      ...stuff,
      kind: stock.kind,
      ...(stock.rough ? { rough: stock.rough } : {}),
    })),
  );

const nameOf = ({ bank }: BankPlan): string => bank.name || 'Drawers';

function bankOf(found: BankPlan, { plan, slideLength }: BuyingAt): BuyingBank {
  const { bank, fronts, drawers } = found;
  const thick = thickIn(bank, plan.stuff)('front');
  const long = bank.hung ? undefined : (bank.slideLong ?? slideLength);
  const warnings = drawers?.ok ? drawersWarnings(drawers.value) : [];
  const over = warnings.flatMap((w) => (w.code === 'slide-too-long' ? [w.over] : []))[0];
  return {
    name: nameOf(found),
    ...(fronts.ok ? { fronts: fronts.value } : {}),
    ...(thick ? { thick } : {}),
    ...(bank.hung ? { noSlides: true as const } : {}),
    ...(long ? { slideLong: long } : {}),
    ...(over ? { slideTooLong: over } : {}),
  };
}

const frontsIn = ({ fronts }: BankPlan): number =>
  fronts.ok ? fronts.value.columns.flatMap((c) => c.heights).length : 0;

/** Nobody invents how many screws a front has: a bank that does not say is named instead. */
function schedulesOf(found: BankPlan, at: BuyingAt): readonly ScrewSchedule[] {
  const long = at.frontScrew(found)?.pick;
  const each = at.screwsEach?.(found);
  return long && each ? [{ bank: nameOf(found), long, pieces: frontsIn(found), each }] : [];
}

function screwsNotSaid(found: BankPlan, at: BuyingAt): readonly ScrewsNotSaid[] {
  const screw = at.frontScrew(found);
  const fronts = frontsIn(found);
  if (!screw || fronts === 0 || screw.fails === 'no-room') return [];
  if (screw.pick && at.screwsEach?.(found)) return [];
  return [{ code: 'screws-not-said', name: nameOf(found), fronts, screw }];
}

function amountIn(ticks: Folded['ticks'], op: string): Ratio | undefined {
  const tick = ticks.get(op);
  const read = tick && fromStored(tick.figure);
  return read?.ok ? asNumber(read.value) : undefined;
}

function rowOf(line: BuyingLine, ticks: Folded['ticks']): Row {
  const op = buyOp(line.id);
  const ticked = amountIn(ticks, op);
  if (!ticked) return { line, op, now: 'open' };
  const [then, now] = [asInches(ticked), asInches(line.amount)];
  return { line, op, ticked, now: less(then, now) ? 'more' : less(now, then) ? 'fewer' : 'got' };
}

const goneOf = (ticks: Folded['ticks'], ops: ReadonlySet<string>, parts: Plan['parts']): readonly Gone[] => {
  const strips = new Set(parts.filter(isFiller).map(({ id }) => stripOp(id)));
  return [...ticks.keys()].flatMap((op) => {
    const ticked = op.startsWith('buy/') && !ops.has(op) ? amountIn(ticks, op) : undefined;
    return ticked ? [{ op, ticked, ...(strips.has(op) ? { isPart: true } : {}) }] : [];
  });
};

/** The tick of the line a strip has while it is no part. */
const stripOp = (part: string): string => buyOp(`fillers/${part.replace(/~filler(?=left$|right$)/, '~')}`);

/** A tap on the box of a line: a tick keeps what was to buy. */
export const tickChanges = ({ line, op, ticked }: Row): readonly Change[] =>
  ticked ? [{ kind: 'untick', op }] : gotChanges({ line, op });

/** Ticked at what is to buy now, whatever it was ticked at before. */
export const gotChanges = ({ line, op }: Pick<Row, 'line' | 'op'>): readonly Change[] =>
  tickOf(op, asInches(line.amount));
