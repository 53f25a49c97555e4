import { insert, inTurn, type Waits } from './ring';
import { better, type Cost } from './state';

/** Steps by their place in the list given. */
export type Listed = Waits & { readonly setupOf: readonly number[]; readonly buildOf: readonly number[] };

/** Unbroken runs of one setup: steps by number. */
type Runs = readonly (readonly number[])[];

/** Unbroken runs of one build, and of one setup. @example costOf(listed, [[0, 2], [1]]) */
export function costOf({ setupOf, buildOf }: Listed, runs: Runs): Cost {
  const count = (of: readonly number[]) =>
    runs.filter(([k = 0], r) => r === 0 || of[runs[r - 1]?.[0] ?? 0] !== of[k]).length;
  return { builds: count(buildOf), runs: count(setupOf) };
}

/** Neighbours of one colour together. */
function grouped<T>(items: readonly T[], colour: (item: T) => number | undefined): T[][] {
  const groups: T[][] = [];
  let last: number | undefined;
  for (const item of items) {
    const own = colour(item);
    const group = groups[groups.length - 1];
    if (group && own === last) group.push(item);
    else groups.push([item]);
    last = own;
  }
  return groups;
}

/** The list as given, moved only where a step would come before one it waits on. @example asGiven(listed) */
const asGiven = (listed: Listed): Runs => grouped(inTurn(listed), (k) => listed.setupOf[k]);

/**
 * Runs these setups one after the other, doing in each everything that is ready, in the order given.
 *
 * @param sequence setups by number; one too many is left out
 * @example runAll(listed, [0, 1])
 */
function runAll(listed: Listed, sequence: readonly number[]): Runs {
  const waiting = listed.before.map((list) => list.length);
  const ready = new Map<number, number[]>();
  const offer = (k: number) => {
    const setup = listed.setupOf[k] ?? 0;
    const list = ready.get(setup);
    if (list) insert(list, k);
    else ready.set(setup, [k]);
  };
  waiting.forEach((n, k) => {
    if (n === 0) offer(k);
  });
  const order: number[] = [];
  for (const setup of sequence) {
    const list = ready.get(setup) ?? [];
    for (let k = list.pop(); k !== undefined; k = list.pop()) {
      order.push(k);
      for (const next of listed.after[k] ?? []) {
        const still = (waiting[next] ?? 0) - 1;
        waiting[next] = still;
        if (still === 0) offer(next);
      }
    }
  }
  return grouped(order, (k) => listed.setupOf[k]);
}

/** Groups of steps in an order that can be worked; of those that could come next, the one with the earliest step. */
function arranged<T>(listed: Listed, groups: readonly T[], steps: (group: T) => readonly number[]): T[] {
  const first = groups.map((group) => Math.min(...steps(group)));
  const byFirst = groups.map((_, g) => g).sort((a, b) => (first[a] ?? 0) - (first[b] ?? 0));
  const placeOf = new Map<number, number>();
  byFirst.forEach((g, place) => {
    const group = groups[g];
    if (group) for (const k of steps(group)) placeOf.set(k, place);
  });
  const before = byFirst.map(() => new Set<number>());
  const after = byFirst.map(() => new Set<number>());
  for (const [k, place] of placeOf) {
    for (const p of listed.before[k] ?? []) {
      const from = placeOf.get(p);
      if (from === undefined || from === place) continue;
      before[place]?.add(from);
      after[from]?.add(place);
    }
  }
  const lists = (sets: readonly Set<number>[]) => sets.map((set) => [...set]);
  return inTurn({ before: lists(before), after: lists(after) }).flatMap((place) => {
    const group = groups[byFirst[place] ?? 0];
    return group ? [group] : [];
  });
}

/** The same runs as near to the list given as their order allows, whole builds first, then the runs of each. */
function nearer(listed: Listed, runs: Runs): Runs {
  const visits = grouped(runs, ([k = 0]) => listed.buildOf[k]);
  const laid = arranged(listed, visits, (visit) => visit.flat()).flatMap((visit) =>
    arranged(listed, visit, (run) => run),
  );
  return runAll(
    listed,
    laid.map(([k = 0]) => listed.setupOf[k] ?? 0),
  );
}

/**
 * Lays a sequence of setups out as runs. Of orders that cost the same, the list as given is the best; then the list
 * with everything ready done at each setup; then the sequence with its builds and runs standing as the list has them.
 *
 * @param sequence as from `solve`
 * @example layOutRuns(listed, solved.sequence)
 */
export function layOutRuns(listed: Listed, sequence: readonly number[]): Runs {
  const given = asGiven(listed);
  const pulled = runAll(
    listed,
    given.map(([k = 0]) => listed.setupOf[k] ?? 0),
  );
  const solved = runAll(listed, sequence);
  let best = given;
  for (const runs of [nearer(listed, pulled), nearer(listed, solved), solved]) {
    if (better(costOf(listed, runs), costOf(listed, best))) best = runs;
  }
  return best;
}
