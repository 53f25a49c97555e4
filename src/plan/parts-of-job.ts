import { withHanging } from '../job/hanging';
import type { Job, PartNotes, Stock } from '../job/job';
import { alike } from '../length/alike';
import { keeper } from '../length/keeper';
import type { Length } from '../length/length';
import type { Result } from '../length/result';
import { toStored } from '../length/stored';
import type { Cutting } from '../trade/carcass/boards';
import { byHand } from '../trade/carcass/by-hand';
import type { Case, Stuff } from '../trade/carcass/case';
import { keptTo } from '../trade/carcass/kept';
import type { Part } from '../trade/carcass/part';
import { partsOf, type Worked } from '../trade/carcass/parts';
import type { CaseProblem } from '../trade/carcass/problems';
import type { Bank } from '../trade/fronts/bank';
import type { Board } from '../trade/grooves/board';
import { withHandJoints } from '../trade/joints/by-hand';
import type { Shop } from '../trade/machines/shop';
import { type BankPlan, bankPlanOf, thingsIn } from './bank-plan';
import { fillerParts } from './closing-plan';
import { greatestOf } from './greatest';
import { handBoard } from './hand-board';
import { hungLines } from './hung-lines';
import { fastenerRows } from './join-place';
import { levelPlanOf } from './level-plan';
import { keptMarks, recutsOf } from './recuts';

type WorkedCase = Result<Worked, readonly CaseProblem[]>;

/** The parts of a job, and what they were worked out from. */
export type Made = {
  readonly stuff: readonly Stuff[];
  readonly worked: ReadonlyMap<string, WorkedCase>;
  readonly banks: ReadonlyMap<string, BankPlan>;
  readonly parts: readonly Part[];
  /** Lengths of the screws on the shop's shelf: a slant screw is bored for where one of them does. Inches. */
  readonly screws: readonly Length[];
};

const kept = {
  stuff: keeper<Stock, readonly Stuff[]>(),
  cases: keeper<Case, WorkedCase>(),
  banks: keeper<Bank, BankPlan>(),
  boards: keeper<Board, Part>(),
  parts: keeper<Part, Part>(),
};

/**
 * What a stock is reckoned with: the greatest reading where readings are in use as they come, else the reading taken
 * up, else what is planned, else the greatest reading all the same.
 */
export const stuffOf = (stock: Stock): readonly Stuff[] => kept.stuff(stock, [], () => stuffIn(stock));

function stuffIn(stock: Stock): readonly Stuff[] {
  const read = greatestOf(stock);
  const inUse = (stock.asRead ? read : undefined) ?? stock.used;
  const thickness = inUse ?? stock.planned ?? read;
  if (!thickness) return [];
  const measured = inUse !== undefined || stock.planned === undefined;
  return [{ id: stock.id, name: stock.name || 'Sheet', thickness, measured }];
}

/** How a part's grooves are cut, and how often its pieces were cut again. */
function cuttingOf(job: Job, part: string): Cutting {
  const { pieces: _, ...own } = job.parts[part] ?? { pieces: {} };
  return { ...own, recuts: recutsOf(job, part) };
}

/** What is kept of the parts of each case: a part is named by its case first. */
function notesByCase({ parts }: Job): ReadonlyMap<string, readonly PartNotes[]> {
  const all = new Map<string, PartNotes[]>();
  for (const [part, notes] of Object.entries(parts)) {
    const [of = ''] = part.split('~', 1);
    const list = all.get(of);
    if (list) list.push(notes);
    else all.set(of, [notes]);
  }
  return all;
}

/** A case waits on what is said of it, its stuffs, the marks of the job and what is kept of its parts alone. */
function workedIn(job: Job, stuff: readonly Stuff[]): ReadonlyMap<string, WorkedCase> {
  const notes = notesByCase(job);
  const at = {
    stuff,
    tape: job.tape,
    cutting: (part: string) => cuttingOf(job, part),
    said: (part: string) => job.parts[part] ?? {},
  };
  return new Map(
    job.cases.map((c) => {
      const own = stuffsIn(Object.values(c.stocks), stuff);
      const fall = fallUnder(job, c);
      const work = () => partsOf(c, { ...at, fall, marks: keptMarks(job, c) });
      return [
        c.id,
        kept.cases(c, [job.tape, fall && toStored(fall), ...own, ...(notes.get(c.id) ?? [])], work),
      ];
    }),
  );
}

/** How much the floor falls under a case whose plinth is scribed to it, once every foot is read. */
function fallUnder(job: Job, c: Case): Length | undefined {
  if (!c.hasPlinth || c.plinthHow !== 'scribed') return undefined;
  const { found } = levelPlanOf(job, c.id);
  return found?.ok ? found.value.most : undefined;
}

/** The stuffs of some stocks, one for each. */
const stuffsIn = (stocks: readonly string[], stuff: readonly Stuff[]): readonly (Stuff | undefined)[] =>
  stocks.map((id) => stuff.find((s) => s.id === id));

type BanksAt = Pick<Made, 'stuff' | 'worked'> & { readonly shop: Shop };

function banksIn(job: Job, { stuff, worked, shop }: BanksAt): ReadonlyMap<string, BankPlan> {
  return new Map(
    job.banks.map((bank) => {
      const found = worked.get(bank.of ?? '');
      const of = found?.ok ? found.value : undefined;
      const own = stuffsIn(Object.values(withHanging(job, bank).stocks), stuff);
      const waitsOn = [job.tape, shop, job.guideSaw, of, ...own, ...thingsIn(job, bank.id)];
      return [bank.id, kept.banks(bank, waitsOn, () => bankPlanOf(job, bank, { stuff, shop, worked: of }))];
    }),
  );
}

/** The parts that were worked out last, by id. */
let last: ReadonlyMap<string, Part> = new Map();

/** A part that says what it said the last time is the same part: what was worked out from it stands. */
function asBefore(parts: readonly Part[]): readonly Part[] {
  const found = parts.map((part) => {
    const before = last.get(part.id);
    return before && alike(part, before) ? before : part;
  });
  last = new Map(found.map((part) => [part.id, part]));
  return found;
}

/** The parts of a job alone: enough for a drawing, a list or a comparison. */
export function partsOfJob(job: Job, shop: Shop): Made {
  const stuff = job.stock.flatMap(stuffOf);
  const worked = workedIn(job, stuff);
  const fillers = fillerParts(job, worked);
  const { tape } = job;
  const hand = job.boards.map((b) =>
    kept.boards(b, [job.parts[b.id], tape], () => byHand(handBoard(job, b), { tape })),
  );
  const banks = banksIn(job, { stuff, worked, shop });
  const drawers = [...banks.values()].flatMap((bank) => bank.parts);
  const { screws = [] } = shop;
  const rows = fastenerRows({ job, stuff, worked, parts: [], screws });
  const like = [...worked.values()].flatMap((w) =>
    w.ok ? w.value.parts.flatMap(({ bores = [] }) => bores) : [],
  );
  const jointed = (part: Part) => withHandJoints(part, job.joints, { ...cuttingOf(job, part.id), like });
  const keeps = (part: Part) => {
    const notes = job.parts[part.id];
    const own = notes ? kept.parts(part, [notes], () => keptTo(part, notes)) : part;
    const fasteners = rows.get(part.id);
    return jointed(fasteners ? { ...own, fasteners } : own);
  };
  const lines = hungLines(banks, worked);
  const lined = (part: Part) => {
    const marks = lines.get(part.id);
    return marks ? { ...part, lines: [...(part.lines ?? []), ...marks] } : part;
  };
  const own = [...worked].flatMap(([id, w]) =>
    w.ok ? [...w.value.parts.map((part) => lined(keeps(part))), ...fillers(id).map(jointed)] : [],
  );
  const drawn = drawers.map(jointed);
  return { stuff, worked, banks, parts: asBefore([...own, ...drawn, ...hand.map(keeps)]), screws };
}
