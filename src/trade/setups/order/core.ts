import { at, drop, emptyRows, has, join, members, put, type Rows, within } from './bits';
import type { Graph } from './graph';

/** A graph with its transitive closure between setups: which operations must come before which. */
export type Core = {
  /** Operations of the graph, and how many of them are left after folding. */
  readonly size: number;
  readonly count: number;
  /** Setup and build of each operation, numbered within this core; the names lead back to the numbers given. */
  readonly setupOf: Int32Array;
  readonly buildOf: Int32Array;
  readonly setupNames: readonly number[];
  readonly buildNames: readonly number[];
  /** Operations of each setup, in order. */
  readonly setups: readonly (readonly number[])[];
  /** Setups of each build, operations of each build. */
  readonly setupsOfBuild: readonly (readonly number[])[];
  readonly builds: readonly (readonly number[])[];
  readonly before: Rows;
  /** Some of `before`, such that when these are done, all are; and the same of `after`. */
  readonly nearest: readonly (readonly number[])[];
  readonly next: readonly (readonly number[])[];
};

type Loose = {
  readonly before: Rows;
  readonly after: Rows;
  readonly gone: Uint8Array;
  /** Operations that took over what another waited on. */
  readonly grown: Uint8Array;
};

function related(graph: Graph): Loose {
  const size = graph.setupOf.length;
  const before = emptyRows(size, size);
  const after = emptyRows(size, size);
  graph.before.forEach((list, k) => {
    for (const p of list) {
      join(before, k, { from: before, other: p });
      put(before, k, p);
    }
  });
  for (let k = size - 1; k >= 0; k -= 1) {
    for (const p of graph.before[k] ?? []) {
      join(after, p, { from: after, other: k });
      put(after, p, k);
    }
  }
  for (const group of groupsOf(graph.setupOf)) leaveOut(group, before, after);
  return { before, after, gone: new Uint8Array(size), grown: new Uint8Array(size) };
}

/** Leaves out precedence within one setup: it costs no run (see `foldPair`). */
function leaveOut(group: readonly number[], before: Rows, after: Rows): void {
  const mates = emptyRows(1, before.words * 32);
  for (const k of group) put(mates, 0, k);
  for (const k of group) {
    for (let w = 0; w < before.words; w += 1) {
      const i = k * before.words + w;
      before.bits[i] = at(before.bits, i) & ~at(mates.bits, w);
      after.bits[i] = at(after.bits, i) & ~at(mates.bits, w);
    }
  }
}

function groupsOf(colours: readonly number[]): number[][] {
  const groups = new Map<number, number[]>();
  colours.forEach((c, k) => {
    const group = groups.get(c);
    if (group) group.push(k);
    else groups.set(c, [k]);
  });
  return [...groups.values()];
}

function strike({ before, after, gone }: Loose, k: number): void {
  for (const w of members(after, k)) drop(before, w, k);
  for (const w of members(before, k)) drop(after, w, k);
  gone[k] = 1;
}

/** b takes what must follow a; both wait on the same. */
function takeAfter(loose: Loose, a: number, b: number): void {
  for (const w of members(loose.after, a)) put(loose.before, w, b);
  join(loose.after, b, { from: loose.after, other: a });
  strike(loose, a);
}

/** b takes what a waits on; the same waits on both. */
function takeBefore(loose: Loose, a: number, b: number): void {
  for (const w of members(loose.before, a)) put(loose.after, w, b);
  join(loose.before, b, { from: loose.before, other: a });
  loose.grown[b] = 1;
  strike(loose, a);
}

/**
 * One of two operations of one setup goes where nothing is lost:
 * - both wait on the same: whoever does everything ready does them in one run;
 * - the same waits on both: so too, read backwards;
 * - all that a waits on, b waits on, and all that waits on a waits on b: a can always be done in b's run.
 */
function foldPair(loose: Loose, a: number, b: number): void {
  const { before, after } = loose;
  const aUnderB = within(before, a, b);
  const bUnderA = within(before, b, a);
  const aOverB = within(after, a, b);
  const bOverA = within(after, b, a);
  if (aUnderB && bUnderA) takeAfter(loose, b, a);
  else if (aOverB && bOverA) takeBefore(loose, a, b);
  else if (aUnderB && aOverB) strike(loose, a);
  else if (bUnderA && bOverA) strike(loose, b);
}

const mostFolds = 4;

function folded(graph: Graph): Loose {
  const loose = related(graph);
  const groups = groupsOf(graph.setupOf);
  let left = 0;
  for (let turn = 0; turn < mostFolds; turn += 1) {
    for (const group of groups) {
      group.forEach((a, i) => {
        for (const b of group.slice(i + 1)) {
          if (loose.gone[a] === 1) break;
          if (loose.gone[b] !== 1) foldPair(loose, a, b);
        }
      });
    }
    const now = loose.gone.reduce((n, g) => n + g, 0);
    if (now === left) break;
    left = now;
  }
  return loose;
}

/** Last first: whatever stands behind one already taken needs no look. */
function nearestOf(before: Rows, k: number): number[] {
  const list = members(before, k);
  const behind = emptyRows(1, before.words * 32);
  const found: number[] = [];
  for (const p of list.reverse()) {
    if (has(behind, 0, p)) continue;
    found.push(p);
    join(behind, 0, { from: before, other: p });
  }
  return found;
}

/** The direct ones will do, but where one of them is gone or the operation stands for more than itself. */
function nearestOfAll(graph: Graph, { before, gone, grown }: Loose): number[][] {
  return graph.before.map((list, k) => {
    if (gone[k] === 1) return [];
    return grown[k] === 1 || list.some((p) => gone[p] === 1) ? nearestOf(before, k) : [...list];
  });
}

function numbered(values: readonly number[]): { readonly of: Int32Array; readonly names: readonly number[] } {
  const names = [...new Set(values)];
  const place = new Map(names.map((name, i) => [name, i]));
  return { of: Int32Array.from(values, (v) => place.get(v) ?? 0), names };
}

const listed = (of: Int32Array, count: number, keep: (k: number) => boolean): number[][] => {
  const lists: number[][] = Array.from({ length: count }, () => []);
  of.forEach((c, k) => {
    if (keep(k)) lists[c]?.push(k);
  });
  return lists;
};

/**
 * Works a graph out, folding away operations that can always ride along with another of their setup.
 *
 * @param graph as from `merged`
 * @returns a core whose best orders have as many builds and runs as the graph's
 * @example coreOf({ setupOf: [0, 1], buildOf: [0, 0], before: [[], [0]] }).size // 2
 */
export function coreOf(graph: Graph): Core {
  const loose = folded(graph);
  const stays = (k: number) => loose.gone[k] !== 1;
  const setup = numbered(graph.setupOf);
  const build = numbered(graph.buildOf);
  const setups = listed(setup.of, setup.names.length, stays);
  const buildOfSetup = setups.map(([k = 0]) => at(build.of, k));
  const nearest = nearestOfAll(graph, loose);
  const next: number[][] = nearest.map(() => []);
  nearest.forEach((list, k) => {
    for (const p of list) next[p]?.push(k);
  });
  return {
    size: graph.setupOf.length,
    count: setups.reduce((sum, list) => sum + list.length, 0),
    setupOf: setup.of,
    buildOf: build.of,
    setupNames: setup.names,
    buildNames: build.names,
    setups,
    setupsOfBuild: listed(Int32Array.from(buildOfSetup), build.names.length, () => true),
    builds: listed(build.of, build.names.length, stays),
    before: loose.before,
    nearest,
    next,
  };
}
