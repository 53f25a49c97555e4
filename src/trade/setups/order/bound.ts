import { at, emptyRows, join, members, put, type Rows } from './bits';
import type { Core } from './core';

/**
 * One layer of a setup (the whole setup, or its build) seen as a colour of each operation, with what it forces.
 * `apart`: for each operation, those of its colour that need a run of their own before it, because work of another
 * colour lies between. `tail`: how many runs of its colour a chain starting at the operation forces, itself included.
 */
export type Layer = {
  readonly of: Int32Array;
  readonly members: readonly (readonly number[])[];
  readonly apart: Rows;
  readonly tail: Int32Array;
  /** Which round each colour is in (see `roundsOf`), or -1. */
  readonly roundOf: Int32Array;
  /** No order has fewer runs of this layer. */
  readonly least: number;
};

/** All of its colour before any work of another colour that comes before k. */
function apartOf(core: Core, of: Int32Array, colours: Rows): Rows {
  const { before, size } = core;
  const rows = emptyRows(size, size);
  const { words } = rows;
  core.nearest.forEach((list, k) => {
    const colour = at(of, k);
    for (const p of list) {
      if (at(of, p) === colour) join(rows, k, { from: rows, other: p });
      else {
        for (let w = 0; w < words; w += 1) {
          const i = k * words + w;
          const far = at(before.bits, p * words + w) & at(colours.bits, colour * words + w);
          rows.bits[i] = at(rows.bits, i) | far;
        }
      }
    }
  });
  return rows;
}

function chains(apart: Rows, size: number): { readonly head: Int32Array; readonly tail: Int32Array } {
  const head = new Int32Array(size).fill(1);
  const tail = new Int32Array(size).fill(1);
  const lists = Array.from({ length: size }, (_, k) => members(apart, k));
  lists.forEach((list, k) => {
    for (const x of list) head[k] = Math.max(at(head, k), at(head, x) + 1);
  });
  for (let k = size - 1; k >= 0; k -= 1) {
    for (const x of lists[k] ?? []) tail[x] = Math.max(at(tail, x), at(tail, k) + 1);
  }
  return { head, tail };
}

/**
 * Groups of operations that must share a run if their colour is to have no more runs than its longest chain forces:
 * those with the same place in a longest chain. -1: free to move.
 */
type Groups = { readonly of: Int32Array; readonly colour: readonly number[] };

function pinned(layer: Omit<Layer, 'least' | 'roundOf'>, head: Int32Array, most: readonly number[]): Groups {
  const known = new Map<string, number>();
  const colour: number[] = [];
  const of = layer.of.map((c, k) => {
    if (at(head, k) + at(layer.tail, k) - 1 !== most[c]) return -1;
    const key = `${c}:${at(head, k)}`;
    const group = known.get(key) ?? colour.length;
    if (group === colour.length) {
      known.set(key, group);
      colour.push(c);
    }
    return group;
  });
  return { of, colour };
}

/** Operations free to move, or groups still to be looked at, as one-time stops of a walk along `next`. */
type Ground = {
  readonly core: Core;
  readonly groups: Groups;
  readonly inGroup: readonly (readonly number[])[];
};

/**
 * The shortest way from a group back to itself. Where it comes to one of a group it goes on from all of the group:
 * they are to be one run. Empty when there is no way.
 */
function roundFrom({ core, groups, inGroup }: Ground, from: number, used: Uint8Array): number[] {
  const cameFrom = new Int32Array(core.size).fill(-1);
  const queue = [...(inGroup[from] ?? [])];
  for (const x of queue) cameFrom[x] = x;
  for (const x of queue) {
    for (const y of core.next[x] ?? []) {
      const group = at(groups.of, y);
      if (group === from) {
        const way = wayOf(x, cameFrom, { groups, used });
        if (way.length > 1) return way;
      }
      if (at(cameFrom, y) >= 0) continue;
      for (const z of group < 0 || used[group] === 1 ? [y] : (inGroup[group] ?? [])) {
        if (at(cameFrom, z) >= 0) continue;
        cameFrom[z] = x;
        queue.push(z);
      }
    }
  }
  return [];
}

/** Groups passed on the way to an operation, of those not used up. */
function wayOf(
  end: number,
  cameFrom: Int32Array,
  { groups, used }: { readonly groups: Groups; readonly used: Uint8Array },
): number[] {
  const way = new Set<number>();
  for (let x = end; ; x = at(cameFrom, x)) {
    const group = at(groups.of, x);
    if (group >= 0 && used[group] !== 1) way.add(group);
    if (at(cameFrom, x) === x) return [...way];
  }
}

/** Groups that cannot be done whole, one after the other: each is on a round or comes after one. */
function stuck({ core, groups, inGroup }: Ground): boolean[] {
  const apart = (p: number, k: number) => at(groups.of, p) < 0 || at(groups.of, p) !== at(groups.of, k);
  const waiting = Int32Array.from(core.nearest, (list, k) => list.filter((p) => apart(p, k)).length);
  const waitingIn = inGroup.map((list) => list.length);
  const queue: number[] = [];
  const offer = (k: number) => {
    const group = at(groups.of, k);
    if (group < 0) queue.push(k);
    else {
      const still = (waitingIn[group] ?? 0) - 1;
      waitingIn[group] = still;
      if (still === 0) queue.push(...(inGroup[group] ?? []));
    }
  };
  waiting.forEach((n, k) => {
    if (n === 0) offer(k);
  });
  for (const k of queue) {
    for (const y of core.next[k] ?? []) {
      if (!apart(k, y)) continue;
      waiting[y] = at(waiting, y) - 1;
      if (at(waiting, y) === 0) offer(y);
    }
  }
  return waitingIn.map((n) => n > 0);
}

/**
 * Rounds of groups, no colour in two of them. The groups of a round each want to be one run and each to come before
 * the next, which cannot be: one colour of each round needs a run more than its chain forces.
 */
function roundsOf(core: Core, groups: Groups, colours: number): { of: Int32Array; count: number } {
  const of = new Int32Array(colours).fill(-1);
  const inGroup: number[][] = groups.colour.map(() => []);
  groups.of.forEach((g, k) => {
    inGroup[g]?.push(k);
  });
  const ground = { core, groups, inGroup };
  const open = stuck(ground);
  const used = new Uint8Array(groups.colour.length);
  let count = 0;
  for (const longest of [2, Number.POSITIVE_INFINITY]) {
    open.forEach((isOpen, g) => {
      if (!isOpen || used[g] === 1) return;
      const way = roundFrom(ground, g, used);
      if (way.length === 0) open[g] = false;
      if (way.length === 0 || way.length > longest) return;
      const inRound = new Set(way.map((h) => groups.colour[h] ?? 0));
      for (const c of inRound) of[c] = count;
      groups.colour.forEach((c, h) => {
        if (inRound.has(c)) used[h] = 1;
      });
      count += 1;
    });
  }
  return { of, count };
}

/**
 * What one layer forces on any order: for each colour the runs of its longest chain, and one more for each round.
 *
 * @param of colour of each operation: `core.setupOf` or `core.buildOf`
 * @param lists operations of each colour
 * @example layerOf(core, core.setupOf, core.setups).least
 */
export function layerOf(core: Core, of: Int32Array, lists: readonly (readonly number[])[]): Layer {
  const colours = emptyRows(lists.length, core.size);
  lists.forEach((list, c) => {
    for (const k of list) put(colours, c, k);
  });
  const apart = apartOf(core, of, colours);
  const { head, tail } = chains(apart, core.size);
  const most = lists.map((list) => Math.max(0, ...list.map((k) => at(tail, k))));
  const bare = { of, members: lists, apart, tail };
  const rounds = roundsOf(core, pinned(bare, head, most), lists.length);
  return { ...bare, roundOf: rounds.of, least: most.reduce((sum, k) => sum + k, 0) + rounds.count };
}
