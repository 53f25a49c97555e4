import { perHold, shareUp } from '../share';
import type { OneD } from './kinds';

/**
 * Sticks of several lengths: what one costs, > 0, and how many there are, any number when absent. Pieces as in
 * `OneD`.
 */
export type Mix = {
  readonly sticks: readonly { readonly capacity: number; readonly cost: number; readonly count?: number }[];
  readonly items: OneD['items'];
};

/** A stick of a plan: which length, and indices into the items, one entry a piece. */
type MixedStick = { readonly kind: number; readonly items: readonly number[] };

/** The cheapest plan met, if any; `whole` when no way was left out: then nothing costs less, or nothing goes at all. */
export type MixedFound = {
  readonly sticks: readonly MixedStick[] | undefined;
  readonly cost: number;
  readonly whole: boolean;
};

type Hunt = {
  readonly mix: Mix;
  /** Kinds by what a unit of their length costs. */
  readonly cheapest: readonly number[];
  readonly stock: number[];
  readonly left: number[];
  readonly now: MixedStick[];
  cost: number;
  best: readonly MixedStick[] | undefined;
  least: number;
  steps: number;
};

/** Steps the search may cost: a few hundred milliseconds at the very most. */
const stepsAtMost = 1_000_000;

const sizeAt = ({ mix }: Hunt, k: number): number => mix.items[k]?.size ?? 0;

/**
 * What the rest costs at least, a whole number: its length out of the cheapest sticks still there, cut as if it could
 * be poured. Costs are whole, so the last share counts up to the next whole number.
 */
function restCost(h: Hunt): number {
  let sum = h.left.reduce((s, n, k) => s + n * sizeAt(h, k), 0);
  let cost = 0;
  for (const kind of h.cheapest) {
    const { capacity = 1, cost: each = 0 } = h.mix.sticks[kind] ?? {};
    const count = h.stock[kind] ?? 0;
    if (count * capacity >= sum) return cost + shareUp(each, { part: sum, whole: capacity });
    cost += count * each;
    sum -= count * capacity;
  }
  return sum > 0 ? Number.POSITIVE_INFINITY : cost;
}

/** Nothing that costs less than the best can come of it: whole numbers on both sides. */
const isHopeless = (h: Hunt): boolean => h.cost + restCost(h) >= h.least;

type Part = {
  readonly kind: number;
  readonly from: number;
  readonly room: number;
  readonly picked: number[];
};

/** Fills one stick in every way that has no room for one piece more, then goes on with the next. */
function fill(h: Hunt, { kind, from, room, picked }: Part): void {
  if (h.left.every((n, k) => n === 0 || sizeAt(h, k) > room)) {
    h.now.push({ kind, items: [...picked] });
    next(h);
    h.now.pop();
    return;
  }
  for (let k = from; k < h.left.length && h.steps > 0; k += 1) {
    if ((h.left[k] ?? 0) === 0 || sizeAt(h, k) > room) continue;
    h.steps -= 1;
    h.left[k] = (h.left[k] ?? 0) - 1;
    picked.push(k);
    fill(h, { kind, from: k, room: room - sizeAt(h, k), picked });
    picked.pop();
    h.left[k] = (h.left[k] ?? 0) + 1;
  }
}

/** Puts the first piece left into a stick of each length. */
function next(h: Hunt): void {
  const first = h.left.findIndex((n) => n > 0);
  if (first < 0) {
    if (h.cost >= h.least) return;
    h.best = [...h.now];
    h.least = h.cost;
    return;
  }
  if (isHopeless(h)) return;
  for (const [kind, { capacity, cost }] of h.mix.sticks.entries()) {
    if ((h.stock[kind] ?? 0) <= 0 || capacity < sizeAt(h, first)) continue;
    h.stock[kind] = (h.stock[kind] ?? 0) - 1;
    h.left[first] = (h.left[first] ?? 0) - 1;
    h.cost += cost;
    fill(h, { kind, from: 0, room: capacity - sizeAt(h, first), picked: [first] });
    h.cost -= cost;
    h.left[first] = (h.left[first] ?? 0) + 1;
    h.stock[kind] = (h.stock[kind] ?? 0) + 1;
  }
}

const isWhole = (n: number): boolean => Number.isSafeInteger(n) && n > 0;

/** Whether every sum of the search is exact: only then may it prove anything. */
function addsUp({ sticks, items }: Mix): boolean {
  const pieces = items.reduce((n, i) => n + i.count, 0);
  const length = items.reduce((s, i) => s + i.size * i.count, 0);
  const dearest = Math.max(0, ...sticks.map((s) => s.cost));
  return (
    sticks.every((s) => isWhole(s.cost) && isWhole(s.capacity)) &&
    Number.isSafeInteger(length) &&
    Number.isSafeInteger(2 * (pieces + 1) * dearest)
  );
}

/**
 * Tries every way to cut a few pieces, a dozen or so, from sticks of several lengths. What it proves rests on whole
 * numbers alone: costs, lengths and bounds.
 *
 * @param mix whole numbers, kerf included; costs whole, > 0; where they do not add up exactly nothing is `whole`
 * @param most a cost that can be had already: only what costs less is looked for
 * @example exactMixed({ sticks: [{ capacity: 5, cost: 1 }], items: [{ size: 5, count: 1 }] }).cost // 1
 */
export function exactMixed(mix: Mix, most = Number.POSITIVE_INFINITY): MixedFound {
  if (!addsUp(mix)) return { sticks: undefined, cost: most, whole: false };
  const holder = (kind: number) => ({
    holds: mix.sticks[kind]?.capacity ?? 1,
    cost: mix.sticks[kind]?.cost ?? 1,
  });
  const h: Hunt = {
    mix,
    cheapest: [...mix.sticks.keys()].sort((a, b) => perHold(holder(a), holder(b))),
    stock: mix.sticks.map((s) => s.count ?? Number.POSITIVE_INFINITY),
    left: mix.items.map((i) => i.count),
    now: [],
    cost: 0,
    best: undefined,
    least: most,
    steps: stepsAtMost,
  };
  next(h);
  return { sticks: h.best, cost: h.least, whole: h.steps > 0 };
}
