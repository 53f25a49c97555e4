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

/**
 * Runs these setups one after the other, doing in each everything that is ready, in the order given.
 *
 * @param sequence setups by number; one too many is left out
 * @example runAll(listed, [0, 1])
 */
function runAll(listed: Listed, sequence: readonly number[]): Runs {
  const waiting = listed.before.map((list) => list.length);
  const ready: number[][] = [];
  const offer = (k: number) => {
    const setup = listed.setupOf[k] ?? 0;
    const list = ready[setup];
    if (list) insert(list, k);
    else ready[setup] = [k];
  };
  waiting.forEach((n, k) => {
    if (n === 0) offer(k);
  });
  const order: number[] = [];
  for (const setup of sequence) {
    const list = ready[setup] ?? [];
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

/** Nothing stands anywhere. */
const nowhere = (listed: Listed): Int32Array => new Int32Array(listed.before.length).fill(-1);

/** The earliest step of each group, a group's steps in lists. */
const earliest = (steps: Runs): number =>
  steps.reduce(
    (first, list) => list.reduce((least, k) => Math.min(least, k), first),
    Number.POSITIVE_INFINITY,
  );

/** Which groups come right before which others, by the place given to each of their steps. */
function waitsOf(listed: Listed, groups: readonly Runs[], placeOf: Int32Array): Waits {
  const after: number[][] = groups.map(() => []);
  const before = groups.map((group, place) => {
    const list: number[] = [];
    for (const steps of group) {
      for (const k of steps) {
        for (const p of listed.before[k] ?? []) {
          const from = placeOf[p] ?? -1;
          const follow = after[from];
          if (!follow || from === place || follow[follow.length - 1] === place) continue;
          list.push(from);
          follow.push(place);
        }
      }
    }
    return list;
  });
  return { before, after };
}

/**
 * Groups of runs in an order that can be worked; of those that could come next, the one with the earliest step.
 *
 * @param placeOf -1 for every step; and so again at the end
 */
function arranged(listed: Listed, groups: readonly Runs[], placeOf: Int32Array): readonly Runs[] {
  if (groups.length < 2) return groups;
  const first = groups.map(earliest);
  const byFirst = groups.map((_, g) => g).sort((a, b) => (first[a] ?? 0) - (first[b] ?? 0));
  const inPlace = byFirst.map((g) => groups[g] ?? []);
  const stand = (place: (g: number) => number) =>
    inPlace.forEach((group, g) => {
      for (const steps of group) for (const k of steps) placeOf[k] = place(g);
    });
  stand((g) => g);
  const waits = waitsOf(listed, inPlace, placeOf);
  stand(() => -1);
  return inTurn(waits).map((g) => inPlace[g] ?? []);
}

/** The same runs as near to the list given as their order allows, whole builds first, then the runs of each. */
function nearer(listed: Listed, runs: Runs): Runs {
  const placeOf = nowhere(listed);
  const visits = grouped(runs, ([k = 0]) => listed.buildOf[k]);
  const laid = arranged(listed, visits, placeOf).flatMap((visit) =>
    arranged(
      listed,
      visit.map((run) => [run]),
      placeOf,
    ).flat(),
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
 * @param turn the list as given, moved only where a step would come before one it waits on: as from `inTurn`
 * @param sequence as from `solve`
 * @param least no order costs less: the first that costs as much is taken
 * @example layOutRuns(listed, { turn: inTurn(listed), sequence: solved.sequence, least: solved.least })
 */
export function layOutRuns(listed: Listed, { turn, sequence, least }: Ways): Runs {
  const given = grouped(turn, (k) => listed.setupOf[k]);
  const solved = () => runAll(listed, sequence);
  const pulled = () =>
    runAll(
      listed,
      given.map(([k = 0]) => listed.setupOf[k] ?? 0),
    );
  let best: Runs = given;
  let cost = costOf(listed, best);
  for (const way of [() => nearer(listed, pulled()), () => nearer(listed, solved()), solved]) {
    if (!better(least, cost)) return best;
    const runs = way();
    const own = costOf(listed, runs);
    if (better(own, cost)) [best, cost] = [runs, own];
  }
  return best;
}

type Ways = { readonly turn: readonly number[]; readonly sequence: readonly number[]; readonly least: Cost };
