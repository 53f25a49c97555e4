import { err, ok, type Result } from '../../../length/result';
import { costOf, type Listed, layOutRuns } from './lay-out';
import { inTurn, ringIn } from './ring';
import { solve } from './solve';
import { solveOnce } from './solve-once';
import type { Cost } from './state';

/**
 * One operation to be put in order. `build` is the dear part of a setup (machine, cutter or stack, height); `setup`
 * the whole of it (with fence, stop, face). A setup belongs to one build. `after`: ids of steps that come first.
 */
export type Step = {
  readonly id: string;
  readonly build: string;
  readonly setup: string;
  readonly after: readonly string[];
};

/** An unbroken run of one setup: its steps in an order that keeps every `after`. */
type Run = { readonly setup: string; readonly build: string; readonly steps: readonly string[] };

export type Order = {
  readonly runs: readonly Run[];
  /** Unbroken runs of one build. */
  readonly builds: number;
  /** True when no order has fewer builds, nor with as many builds fewer runs. */
  readonly proved: boolean;
  /** No order has fewer runs, however many builds it has: a proved order may have more, to save a build. */
  readonly leastRuns: number;
  /** No order has fewer builds. */
  readonly leastBuilds: number;
};

/** `ring`: ids in the order they would have to be done, the last before the first again. */
export type OrderError = { readonly code: 'ring'; readonly ring: readonly string[] };

/** States opened before the best order found so far has to do: each costs more the more steps there are. */
const enough = (steps: number): number => Math.max(200, Math.floor(400_000 / (steps + 100)));

function listedOf(steps: readonly Step[]): Listed {
  const place = new Map<string, number>();
  for (let k = 0; k < steps.length; k += 1) place.set(steps[k]?.id ?? '', k);
  if (place.size < steps.length) throw new RangeError('orderSetups: two steps with one id');
  const after: number[][] = steps.map(() => []);
  const before = steps.map((step, k) => {
    const list: number[] = [];
    for (const id of step.after) {
      const p = place.get(id);
      const follow = after[p ?? -1];
      // Said twice, it waits once: what follows p was filled in turn, so k stands there last if it does.
      if (p === undefined || !follow || follow[follow.length - 1] === k) continue;
      list.push(p);
      follow.push(k);
    }
    return list;
  });
  return { before, after, ...coloursOf(steps) };
}

/** Setups and builds by number, each numbered as it comes first. */
function coloursOf(steps: readonly Step[]): Pick<Listed, 'setupOf' | 'buildOf'> {
  const setups = new Map<string, number>();
  const builds = new Map<string, number>();
  const buildOfSetup: number[] = [];
  const setupOf = steps.map(({ setup }) => numberIn(setups, setup));
  const buildOf = steps.map(({ build }, k) => {
    const own = numberIn(builds, build);
    const setup = setupOf[k] ?? 0;
    buildOfSetup[setup] ??= own;
    if (buildOfSetup[setup] !== own) throw new RangeError('orderSetups: a setup in two builds');
    return own;
  });
  return { setupOf, buildOf };
}

function numberIn(known: Map<string, number>, name: string): number {
  const found = known.get(name);
  if (found !== undefined) return found;
  known.set(name, known.size);
  return known.size - 1;
}

/** Renumbered so that each step comes after all it waits on. */
function graphOf(listed: Listed, order: readonly number[]) {
  const place = new Int32Array(order.length);
  order.forEach((k, i) => {
    place[k] = i;
  });
  return {
    setupOf: order.map((k) => listed.setupOf[k] ?? 0),
    buildOf: order.map((k) => listed.buildOf[k] ?? 0),
    before: order.map((k) => (listed.before[k] ?? []).map((p) => place[p] ?? 0)),
  };
}

type Found =
  | {
      readonly laid: readonly (readonly number[])[];
      readonly builds: number;
      readonly least: Cost;
      readonly proved: boolean;
    }
  | { readonly ring: readonly number[] };

const once = solveOnce<Found>();

/** Steps by number, laid out as runs; or the ring they wait in. */
function find(listed: Listed, effort: number): Found {
  const turn = inTurn(listed);
  if (turn.length < listed.before.length) return { ring: ringIn(listed) };
  const { sequence, cost, least, proved } = solve(graphOf(listed, turn), { left: effort });
  const laid = layOutRuns(listed, { turn, sequence, least: proved ? cost : least });
  const { builds } = costOf(listed, laid);
  const atLeast = builds === least.builds && laid.length === least.runs;
  return { laid, builds, least, proved: proved || atLeast };
}

/**
 * Puts steps in an order with the fewest setups: fewest unbroken runs of one build, then fewest unbroken runs of one
 * setup. An order as good as any is kept as given; else builds and runs stand as the list has them, as far as they
 * can. The same steps always give the same order.
 *
 * @param steps in a sensible order of the trade; an `after` that is not among them counts as done
 * @param effort states opened at most, a whole number >= 0; when they are spent, the best found so far is given, not
 * proved
 * @returns the runs; or the shortest ring of `after`
 * @throws RangeError if two steps have one id, or a setup has two builds: mistakes in the program
 * @example orderSetups([{ id: 'rip', build: 'saw', setup: 'fence', after: [] }]) // one run, proved
 */
export function orderSetups(
  steps: readonly Step[],
  effort: number = enough(steps.length),
): Result<Order, OrderError> {
  const listed = listedOf(steps);
  const idOf = (k: number): string => steps[k]?.id ?? '';
  const found = once(listed, effort, () => find(listed, effort));
  if ('ring' in found) return err({ code: 'ring', ring: found.ring.map(idOf) });
  const { laid, builds, proved, least } = found;
  const runs = laid.map((run) => {
    const first = steps[run[0] ?? 0];
    return { setup: first?.setup ?? '', build: first?.build ?? '', steps: run.map(idOf) };
  });
  return ok({ runs, builds, proved, leastRuns: least.runs, leastBuilds: least.builds });
}
