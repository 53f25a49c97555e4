import { at, has } from './bits';
import { type Layer, layerOf } from './bound';
import { type Core, coreOf } from './core';
import type { Graph } from './graph';

/** A core with both its layers, ready to be searched. */
export type Field = { readonly core: Core; readonly setups: Layer; readonly builds: Layer };

/** Builds first, then runs. */
export type Cost = { readonly builds: number; readonly runs: number };

/** The runs so far, last first. */
type Trail = { readonly setup: number; readonly before: Trail | undefined };

/**
 * What is done, and what stands in the machine; `hope` is a cost that nothing from here can beat. Written to only while
 * it is being made: there are thousands, and each is a copy of the one before.
 */
export type State = {
  readonly done: Int32Array;
  /** For each operation, how many of `nearest` are still to do. */
  readonly waiting: Int32Array;
  left: number;
  /** The build that stands, -1 none; nothing has been run in it while `fresh`. */
  build: number;
  fresh: boolean;
  /** The longest chain of this build that may be left over when it is left, without one more visit than hoped. */
  due: number;
  spent: Cost;
  hope: Cost;
  /** Rounds whose one more run has come about: a colour of theirs is counted as any other from now on. */
  paid: { readonly setups: ReadonlySet<number>; readonly builds: ReadonlySet<number> };
  trail: Trail | undefined;
};

/** True when a is the better cost. @example better({ builds: 1, runs: 9 }, { builds: 2, runs: 3 }) // true */
export const better = (a: Cost, b: Cost): boolean =>
  a.builds < b.builds || (a.builds === b.builds && a.runs < b.runs);

/** Works a graph out and what each layer of it forces. @example fieldOf(merged(graph)) */
export function fieldOf(graph: Graph): Field {
  const core = coreOf(graph);
  return {
    core,
    setups: layerOf(core, core.setupOf, core.setups),
    builds: layerOf(core, core.buildOf, core.builds),
  };
}

/** Nothing done, nothing standing. @example start(field).left === field.core.count */
export const start = ({ core, setups, builds }: Field): State => ({
  done: new Int32Array(core.before.words),
  waiting: Int32Array.from(core.nearest, (list) => list.length),
  left: core.count,
  build: -1,
  fresh: false,
  due: 0,
  spent: { builds: 0, runs: 0 },
  hope: { builds: builds.least, runs: setups.least },
  paid: { setups: new Set(), builds: new Set() },
  trail: undefined,
});

const isDone = (done: Int32Array, k: number): boolean => ((at(done, k >>> 5) >>> (k & 31)) & 1) === 1;

function mark(done: Int32Array, k: number): void {
  done[k >>> 5] = at(done, k >>> 5) | (1 << (k & 31));
}

/** The longest chain of a colour still to do: how many runs of it are still to come, at the least. */
function longestLeft(layer: Layer, colour: number, done: Int32Array): number {
  let most = 0;
  for (const k of layer.members[colour] ?? []) {
    if (!isDone(done, k)) most = Math.max(most, at(layer.tail, k));
  }
  return most;
}

/** One run more than the chain of the colour forced. A round foresaw one. */
function charge(state: State, layer: 'setups' | 'builds', round: number): void {
  if (round >= 0 && !state.paid[layer].has(round)) {
    state.paid = { ...state.paid, [layer]: new Set([...state.paid[layer], round]) };
  } else {
    const { builds, runs } = state.hope;
    state.hope = layer === 'builds' ? { builds: builds + 1, runs } : { builds, runs: runs + 1 };
  }
}

const readyIn = (core: Core, state: State, setup: number): number[] =>
  (core.setups[setup] ?? []).filter((k) => at(state.waiting, k) === 0 && !isDone(state.done, k));

function perform(field: Field, state: State, run: { setup: number; ready: readonly number[] }): void {
  const { setups } = field;
  const was = longestLeft(setups, run.setup, state.done);
  for (const k of run.ready) {
    mark(state.done, k);
    for (const next of field.core.next[k] ?? []) state.waiting[next] = at(state.waiting, next) - 1;
  }
  if (longestLeft(setups, run.setup, state.done) === was)
    charge(state, 'setups', at(setups.roundOf, run.setup));
  state.left -= run.ready.length;
  state.fresh = false;
  state.spent = { builds: state.spent.builds, runs: state.spent.runs + 1 };
  state.trail = { setup: run.setup, before: state.trail };
}

/**
 * A ready setup of the standing build that may be run now without looking further: every one of its operations that
 * is not ready is apart from one that is. In the best order from here its first run then holds ready operations only;
 * moving them all to now takes that run away for the one it makes, and breaks no build, since the build stands.
 */
function isSafe(
  { core, setups }: Field,
  state: State,
  run: { setup: number; ready: readonly number[] },
): boolean {
  for (const k of core.setups[run.setup] ?? []) {
    if (isDone(state.done, k) || run.ready.includes(k)) continue;
    if (!run.ready.some((x) => has(setups.apart, k, x))) return false;
  }
  return true;
}

/** Setups of a build that wait on operations just done: only those may have become safe. */
function touched(core: Core, build: number, ready: readonly number[]): number[] {
  const found = new Set<number>();
  for (const k of ready) {
    for (const next of core.next[k] ?? []) {
      if (at(core.buildOf, next) === build) found.add(at(core.setupOf, next));
    }
  }
  return [...found];
}

/** Runs whatever is safe in the standing build, until nothing is. */
function settle(field: Field, state: State, look: readonly number[]): State {
  const queue = [...look];
  for (const setup of queue) {
    const ready = readyIn(field.core, state, setup);
    if (ready.length === 0 || !isSafe(field, state, { setup, ready })) continue;
    perform(field, state, { setup, ready });
    queue.push(...touched(field.core, state.build, ready));
  }
  return state;
}

const copy = (state: State): State => ({
  ...state,
  done: state.done.slice(),
  waiting: state.waiting.slice(),
});

/** All of a build that could be done in one visit from here, with all that is done. */
function visit({ core }: Field, state: State, build: number): Int32Array {
  const done = state.done.slice();
  const still = new Map<number, number>();
  const queue = (core.builds[build] ?? []).filter((k) => at(state.waiting, k) === 0 && !isDone(done, k));
  for (const k of queue) {
    mark(done, k);
    for (const next of core.next[k] ?? []) {
      if (at(core.buildOf, next) !== build) continue;
      const left = (still.get(next) ?? at(state.waiting, next)) - 1;
      still.set(next, left);
      if (left === 0) queue.push(next);
    }
  }
  return done;
}

/**
 * As `isSafe`, for a build to go to when the standing one is left: its first visit in the best order from here holds
 * only what can be done now, so that visit can be moved, whole and in its own order, to now. What of the build is
 * best left for a later visit stays open.
 */
function isSafeVisit(
  { core, builds }: Field,
  state: State,
  to: { build: number; done: Int32Array },
): boolean {
  const { words, bits } = builds.apart;
  for (const k of core.builds[to.build] ?? []) {
    if (isDone(to.done, k)) continue;
    let apart = false;
    for (let w = 0; w < words && !apart; w += 1) {
      apart = (at(bits, k * words + w) & at(to.done, w) & ~at(state.done, w)) !== 0;
    }
    if (!apart) return false;
  }
  return true;
}

function enter(field: Field, from: State, to: { build: number; done: Int32Array }): State {
  const { builds } = field;
  const state = copy(from);
  if (from.build >= 0 && longestLeft(builds, from.build, state.done) > from.due) {
    charge(state, 'builds', at(builds.roundOf, from.build));
  }
  const most = longestLeft(builds, to.build, state.done);
  const tooLong = longestLeft(builds, to.build, to.done) === most;
  if (tooLong) charge(state, 'builds', at(builds.roundOf, to.build));
  state.due = tooLong ? most : most - 1;
  state.build = to.build;
  state.fresh = true;
  state.spent = { builds: state.spent.builds + 1, runs: state.spent.runs };
  return settle(field, state, field.core.setupsOfBuild[to.build] ?? []);
}

function leave(field: Field, state: State): State[] {
  const ways: { build: number; done: Int32Array }[] = [];
  for (let build = 0; build < field.core.builds.length; build += 1) {
    if (build === state.build) continue;
    const to = { build, done: visit(field, state, build) };
    if (to.done.every((word, w) => word === state.done[w])) continue;
    if (isSafeVisit(field, state, to)) return [enter(field, state, to)];
    ways.push(to);
  }
  return ways.map((to) => enter(field, state, to));
}

/** One more setup of the standing build, those that cost no run more than hoped first, then the larger. */
function ways({ core, setups }: Field, state: State): { setup: number; ready: readonly number[] }[] {
  const found: { setup: number; ready: readonly number[]; over: number }[] = [];
  for (const setup of core.setupsOfBuild[state.build] ?? []) {
    const ready = readyIn(core, state, setup);
    if (ready.length === 0) continue;
    const most = longestLeft(setups, setup, state.done);
    found.push({ setup, ready, over: ready.some((k) => at(setups.tail, k) === most) ? 0 : 1 });
  }
  return found.sort((a, b) => a.over - b.over || b.ready.length - a.ready.length || a.setup - b.setup);
}

/**
 * All that is worth doing next: one more setup of the standing build, or another build. Ready setups of the standing
 * build are not all run before it is left: that is safe for builds, but may break a setup that a later visit could
 * have run whole.
 *
 * @param most how many setups of the standing build to try at most; all of them where a proof is wanted
 * @example open(field, start(field))
 */
export function open(field: Field, state: State, most = Number.POSITIVE_INFINITY): State[] {
  const { core } = field;
  const next = ways(field, state)
    .slice(0, most)
    .map((run) => {
      const child = copy(state);
      perform(field, child, run);
      return settle(field, child, touched(core, state.build, run.ready));
    });
  return state.fresh ? next : [...next, ...leave(field, state)];
}

/** The same for two states from which the same can follow. @example keyOf(start(field)) */
export const keyOf = (state: State): string =>
  `${state.build}${state.fresh ? '+' : '-'}${String.fromCharCode(...new Uint16Array(state.done.buffer))}`;
