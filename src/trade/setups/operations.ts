import { keeper } from '../../length/keeper';
import { compare, type Length, zero } from '../../length/length';
import { markAt } from '../../length/tape';
import type { Part } from '../carcass/part';
import { isTested, type MachineId, machineAt } from '../machines/machines';
import { type BankWork, frontSteps, hungSteps } from './bank-steps';
import { benchSteps, dryFitId } from './bench-steps';
import { type Closing, installSteps } from './install-steps';
import { handLies } from './lies-by-hand';
import { type CleatOn, type Operation, opId } from './operation';
import { type Cutting, partOperations } from './part-operations';
import { piecesToCut } from './part-pieces';
import { placingOf, withStopAt } from './placing';
import { setupOf } from './setup';

/** An operation added by hand to a part. Inches. */
export type HandWork = {
  readonly id: string;
  readonly part: string;
  readonly name: string;
  readonly machine: MachineId;
  readonly figure?: Length | undefined;
  readonly cutter?: Length | undefined;
  readonly height?: Length | undefined;
  /**
   * A cut of the same part (`rip`, `len`), or another operation by hand, that comes first; its length when not said.
   */
  readonly after?: string | undefined;
};

type JobWork = {
  readonly parts: readonly Part[];
  readonly cases: readonly { readonly id: string; readonly name: string }[];
  readonly hand: readonly HandWork[];
  readonly banks?: readonly BankWork[];
  /** By copy of a part, how often it was spoiled. */
  readonly recuts: (part: string) => Readonly<Record<string, number>>;
  /** What closes a case to the walls of its room. */
  readonly closing?: (id: string) => readonly Closing[];
  /** Where the cleat of a case is. */
  readonly cleat?: (id: string) => CleatOn | undefined;
};

/**
 * Every operation of a job with what must come before it: on a piece rip, length, grooves, rabbets; a test cut before
 * the first cut of a stack; the carcass dry-fitted and measured before what goes into it; inside finished, then glued;
 * drawers; put up, finished and loaded.
 *
 * @param job its parts, cases and operations by hand; @param at shop figures and the marks of the job
 * @returns operations in trade order, widest rips first
 */
export function operationsOf(job: JobWork, at: Cutting): readonly Operation[] {
  const cases = new Set(job.cases.map(({ id }) => id));
  const cut = gang(job.parts.flatMap((part) => ownOf(part, job, at, cases.has(part.of))));
  const byHand = job.hand.length > 0 ? job.parts.flatMap((part) => handWork(part, job, at)) : [];
  const all = [...cut, ...byHand];
  const steps = benchSteps(job, all);
  const banks = job.banks ?? [];
  const hung = hungSteps(banks, all);
  const fronts = frontSteps(banks, all);
  const own = { cases: job.cases, banks, closing: job.closing, cleat: job.cleat };
  const { standing, finishing } = installSteps(own, job.parts, [...all, ...steps, ...hung, ...fronts]);
  const bench = [...steps, ...hung, ...standing, ...fronts, ...finishing];
  return widestFirst(known([...marked(withTests(oneStop(all))), ...bench]));
}

const ofPart = keeper<Part, readonly Operation[]>();

/** The operations of a part on its own pieces. They wait on nothing of the job but what is named here. */
function ownOf(part: Part, job: JobWork, at: Cutting, isInCase: boolean): readonly Operation[] {
  const recuts = job.recuts(part.id);
  const chosen = at.chosen?.(part.id);
  return ofPart(part, [recuts, chosen, at.shop, at.tape, isInCase], () => {
    const own = partOperations(part, recuts, at);
    const late = part.stage === 'after-dry-fit' && isInCase;
    const first = [...(late ? [dryFitId(part.of)] : []), ...(part.waits ?? [])];
    return (first.length > 0 || part.opening ? own.map((op) => waits(op, first, part)) : own).map(shaped);
  });
}

/** The same operation with every field there, in one order: thousands of one shape are read faster. */
const shaped = (op: Operation): Operation =>
  ({
    id: op.id,
    also: op.also,
    part: op.part,
    copy: op.copy,
    name: op.name,
    what: op.what,
    which: op.which,
    setup: op.setup,
    figure: op.figure,
    after: op.after,
    fits: op.fits,
    width: op.width,
    opening: op.opening,
    cannot: op.cannot,
    asks: op.asks,
    end: op.end,
    groove: op.groove,
    row: op.row,
    cleat: op.cleat,

    placing: op.placing,
  }) satisfies Record<keyof Operation, unknown>;

/** The first cut that is fitted waits, and what follows waits with it. A rip waits only where its width is fitted. */
const waits = (op: Operation, on: readonly string[], { opening, fitted }: Part): Operation =>
  (fitted === 'length' ? op.what === 'length' || op.what === 'mitre' : op.what === 'rip')
    ? { ...op, after: [...op.after, ...on], ...(opening ? { opening } : {}) }
    : op;

/** One setup has one stop: all its pieces lie as for the side on which that of its first stands. */
function oneStop(ops: readonly Operation[]): readonly Operation[] {
  const stands = new Map<string, 'left' | 'right'>();
  return ops.map((op) => {
    const { key } = op.setup;
    const own = placingOf(op).stop;
    const stop = stands.get(key) ?? own;
    if (!op.placing || !stop) return op;
    stands.set(key, stop);
    const { placing } = op;
    return stop === own ? op : turned(op, [stop], () => ({ ...op, placing: withStopAt(placing, stop) }));
  });
}

/** An operation as it stands in its job: the same as long as it is the same, and so is what is said of it there. */
const turned = keeper<Operation, Operation>();
const tested = keeper<Operation, Operation>();

/** Notches are cut with their parts clamped as one: none before all of them are to length. */
function gang(ops: readonly Operation[]): readonly Operation[] {
  const clamped = new Map<string, Set<string>>();
  if (!ops.some((op) => op.what === 'notch')) return ops;
  for (const op of ops) {
    if (op.what !== 'notch') continue;
    const before = clamped.get(op.setup.key) ?? new Set();
    for (const id of op.after) before.add(id);
    clamped.set(op.setup.key, before);
  }
  return ops.map((op) =>
    op.what === 'notch' ? { ...op, after: [...(clamped.get(op.setup.key) ?? [])] } : op,
  );
}

/** One test cut for each build of a stack, before its first cut, in scrap of the same sheet. */
function withTests(ops: readonly Operation[]): readonly Operation[] {
  const tests = new Map<string, Operation>();
  for (const op of ops) {
    const { setup } = op;
    if (!isTested(machineAt(setup.machine)) || op.cannot || tests.has(setup.build)) continue;
    tests.set(setup.build, {
      id: opId('test', setup.build, '1'),
      part: 'test',
      copy: '1',
      name: { of: { role: 'scrap' } },
      what: 'test',
      which: { is: 'scrap' },
      setup,
      figure: setup.cutter ?? setup.figure?.value ?? zero,
      after: [],
      fits: op.fits,
    });
  }
  return [
    ...tests.values(),
    ...ops.map((op) => {
      const test = isTested(machineAt(op.setup.machine)) ? tests.get(op.setup.build)?.id : undefined;
      return test ? tested(op, [test], () => ({ ...op, after: [...op.after, test] })) : op;
    }),
  ];
}

/** An end that is marked from that of another part is cut after it. */
function marked(ops: readonly Operation[]): readonly Operation[] {
  const ends = ops.filter((op) => op.end);
  if (ends.length === 0) return ops;
  const idsOf = (part: string) => ends.filter((op) => op.part === part).map((op) => op.id);
  return ops.map((op) =>
    op.end?.markedFrom ? { ...op, after: [...op.after, ...idsOf(op.end.markedFrom)] } : op,
  );
}

/** Operations by hand, one for each piece of their part. */
function handWork(part: Part, job: JobWork, at: Cutting): readonly Operation[] {
  const own = job.hand.filter((h) => h.part === part.id);
  const pieces = piecesToCut(part, job.recuts(part.id));
  return own.flatMap((h) =>
    pieces.map((piece): Operation => {
      const figure = h.figure ? markAt(h.figure, at.tape) : undefined;
      const setup = setupOf({
        machine: h.machine,
        sets: figure ? 'as-said' : undefined,
        figure,
        cutter: h.cutter,
        height: h.height,
        on: figure ? { at: 'nothing' } : { at: 'own', id: h.id },
      });
      return {
        id: opId(part.id, `h~${h.id}`, piece.id),
        part: part.id,
        copy: piece.id,
        name: piece.name,
        what: 'hand',
        which: { is: 'own', said: h.name },
        setup,
        figure: figure?.value ?? zero,
        placing: handLies(h.machine, part),
        after: afterOf(h, { part, piece: piece.id, job }),
      };
    }),
  );
}

type Here = { readonly part: Part; readonly piece: string; readonly job: JobWork };

function afterOf(h: HandWork, { part, piece, job }: Here): readonly string[] {
  if (h.after === undefined) return [opId(part.id, 'len', piece)];
  const other = job.hand.find((x) => x.id === h.after);
  if (!other) return [opId(part.id, h.after, piece)];
  if (other.part === part.id) return [opId(part.id, `h~${other.id}`, piece)];
  const theirs = job.parts.find((p) => p.id === other.part);
  return theirs
    ? piecesToCut(theirs, job.recuts(theirs.id)).map((x) => opId(theirs.id, `h~${other.id}`, x.id))
    : [];
}

/**
 * Two things of one id would be one tick: the first stands. What a step waits for may not be in the job: a case that is
 * not worked out has no bench.
 */
function known(ops: readonly Operation[]): readonly Operation[] {
  const ids = new Set<string>();
  const own = ops.filter(({ id }) => ids.size < ids.add(id).size);
  const isKnown = (id: string) => ids.has(id);
  return own.map((op) => (op.after.every(isKnown) ? op : { ...op, after: op.after.filter(isKnown) }));
}

/** Trade order among rips: the widest first; everything else stays where it stands. */
function widestFirst(ops: readonly Operation[]): readonly Operation[] {
  const rips: Operation[] = [];
  const rest: Operation[] = [];
  for (const op of ops) (op.what === 'rip' ? rips : rest).push(op);
  const wider = (a: Operation, b: Operation) => (a.figure === b.figure ? 0 : compare(b.figure, a.figure));
  return [...rips.sort(wider), ...rest];
}
