import { at, has, type Rows } from './bits';
import type { Core } from './core';

/**
 * An order of builds, and for each setup the visits to its build it may be run in. Every operation has an earliest and
 * a latest visit that keep what it waits on and what waits on it; as long as earliest is not after latest, doing each
 * at its earliest keeps everything.
 */
type Slots = {
  readonly core: Core;
  readonly apart: Rows;
  /** Visits of each build, by place in the order of builds. */
  readonly visits: readonly (readonly number[])[];
  readonly count: number;
  readonly allowed: (readonly number[])[];
  readonly early: Int32Array;
  readonly late: Int32Array;
  /** Ends to be brought up to date before the choice made so far has to do. */
  looks: number;
  readonly queued: Uint8Array;
};

/** Work of one build can follow in the same visit; work of another needs a later one. */
const step = ({ core }: Slots, a: number, b: number): number =>
  at(core.buildOf, a) === at(core.buildOf, b) ? 0 : 1;

function earliest(slots: Slots, k: number): number {
  let from = 0;
  for (const p of slots.core.nearest[k] ?? []) from = Math.max(from, at(slots.early, p) + step(slots, p, k));
  for (const v of slots.allowed[at(slots.core.setupOf, k)] ?? []) if (v >= from) return v;
  return slots.count;
}

function latest(slots: Slots, k: number): number {
  let to = slots.count - 1;
  for (const n of slots.core.next[k] ?? []) to = Math.min(to, at(slots.late, n) - step(slots, k, n));
  let found = -1;
  for (const v of slots.allowed[at(slots.core.setupOf, k)] ?? []) if (v <= to) found = v;
  return found;
}

/** Brings the ends up to date after what is allowed to these has changed; what an end leads to is looked at in turn. */
function spread(
  slots: Slots,
  from: readonly number[],
  side: {
    readonly ends: Int32Array;
    readonly end: (slots: Slots, k: number) => number;
    readonly on: readonly (readonly number[])[];
  },
): void {
  const { queued } = slots;
  const queue = [...from];
  for (const k of queue) queued[k] = 1;
  for (const k of queue) {
    queued[k] = 0;
    slots.looks -= 1;
    const now = side.end(slots, k);
    if (now === at(side.ends, k)) continue;
    side.ends[k] = now;
    for (const n of side.on[k] ?? []) {
      if (queued[n] === 1) continue;
      queued[n] = 1;
      queue.push(n);
    }
  }
}

const spreadEarly = (slots: Slots, from: readonly number[]): void =>
  spread(slots, from, { ends: slots.early, end: earliest, on: slots.core.next });

const spreadLate = (slots: Slots, from: readonly number[]): void =>
  spread(slots, from, { ends: slots.late, end: latest, on: slots.core.nearest });

function allow(slots: Slots, setup: number, visits: readonly number[]): void {
  const own = slots.core.setups[setup] ?? [];
  slots.allowed[setup] = visits;
  spreadEarly(slots, own);
  spreadLate(slots, own);
}

const allOf = ({ core, visits }: Slots, setup: number): readonly number[] =>
  visits[at(core.buildOf, core.setups[setup]?.[0] ?? 0)] ?? [];

/**
 * Picks the fewest visits for one setup, the others left as they are: its first visit can be no later than the least
 * of the latest, and nothing is lost by waiting for that one, or by taking the earliest that does as much.
 */
function settle(slots: Slots, setup: number, soon: boolean): void {
  const all = allOf(slots, setup);
  allow(slots, setup, all);
  const chosen: number[] = [];
  let rest = slots.core.setups[setup] ?? [];
  while (rest.length > 0) {
    const last = Math.min(...rest.map((k) => at(slots.late, k)));
    const open = rest;
    const now = open.filter(
      (k) => at(slots.early, k) <= last && !open.some((x) => x < k && has(slots.apart, k, x)),
    );
    const visit = soon ? Math.max(...now.map((k) => at(slots.early, k))) : last;
    chosen.push(visit);
    const done = new Set(now);
    rest = rest.filter((k) => !done.has(k));
    slots.allowed[setup] = [...chosen, ...all.filter((v) => v > visit)];
    spreadEarly(slots, slots.core.setups[setup] ?? []);
  }
  allow(slots, setup, chosen);
}

/** Bounds the work on lists no shop has: thousands of steps, each waiting on dozens. */
const enoughLooks = 120_000;

function slotsOf(core: Core, apart: Rows, sequence: readonly number[]): Slots {
  const visits: number[][] = core.builds.map(() => []);
  sequence.forEach((build, v) => {
    visits[build]?.push(v);
  });
  const slots: Slots = {
    core,
    apart,
    visits,
    count: sequence.length,
    allowed: [],
    early: new Int32Array(core.size),
    late: new Int32Array(core.size),
    looks: enoughLooks,
    queued: new Uint8Array(core.size),
  };
  core.setups.forEach((_, setup) => {
    slots.allowed.push(allOf(slots, setup));
  });
  // Numbers stand in an order that keeps everything: one pass each way finds both ends.
  for (let k = 0; k < core.size; k += 1) slots.early[k] = earliest(slots, k);
  for (let k = core.size - 1; k >= 0; k -= 1) slots.late[k] = latest(slots, k);
  return slots;
}

const used = ({ allowed }: Slots): number => allowed.reduce((sum, visits) => sum + visits.length, 0);

/** Setups with the least room to move first. */
function tightFirst({ core, early, late }: Slots): number[] {
  const room = core.setups.map(
    (list) => list.reduce((sum, k) => sum + at(late, k) - at(early, k), 0) / list.length,
  );
  return core.setups.map((_, s) => s).sort((a, b) => (room[a] ?? 0) - (room[b] ?? 0) || a - b);
}

const mostNear = 8;

/** Setups whose work comes right before or after a setup's. */
function nearOf({ core }: Slots): readonly (readonly number[])[] {
  const near = core.setups.map(() => new Set<number>());
  core.nearest.forEach((list, k) => {
    const a = at(core.setupOf, k);
    for (const p of list) {
      const b = at(core.setupOf, p);
      if ((near[a]?.size ?? 0) < mostNear) near[a]?.add(b);
      if ((near[b]?.size ?? 0) < mostNear) near[b]?.add(a);
    }
  });
  return near.map((set) => [...set]);
}

/** Frees a setup and its neighbours together and picks anew; taken back when it comes out worse. */
function again(slots: Slots, group: readonly number[], soon: boolean): void {
  const kept = group.map((setup) => slots.allowed[setup] ?? []);
  const was = used(slots);
  for (const setup of group) allow(slots, setup, allOf(slots, setup));
  for (const setup of group) settle(slots, setup, soon);
  if (used(slots) <= was) return;
  group.forEach((setup, i) => {
    slots.allowed[setup] = kept[i] ?? [];
  });
  for (const setup of group) allow(slots, setup, slots.allowed[setup] ?? []);
}

/**
 * For an order of builds, which operations to do at each visit, so that few setups are run twice. Not proved least.
 *
 * @param sequence builds of the core by number, an order in which everything can be done
 * @param purse one is taken from it for each setup tried again with its neighbours, while there is any
 * @returns operations at each visit
 * @example visitsOf({ core, apart: builds.apart }, [0, 1, 0], { left: 100 })
 */
export function visitsOf(
  { core, apart }: { readonly core: Core; readonly apart: Rows },
  sequence: readonly number[],
  purse: { left: number },
): number[][] {
  const slots = slotsOf(core, apart, sequence);
  const order = tightFirst(slots);
  for (const soon of [false, true, false]) {
    for (const setup of order) if (slots.looks > 0) settle(slots, setup, soon);
  }
  const near = nearOf(slots);
  for (const soon of [true, false]) {
    for (const setup of order) {
      if (purse.left <= 0 || slots.looks <= 0) break;
      if ((slots.allowed[setup]?.length ?? 0) < 2) continue;
      purse.left -= 1;
      again(slots, [...(near[setup] ?? []), setup].reverse(), soon);
    }
  }
  const work: number[][] = sequence.map(() => []);
  for (const list of core.builds) for (const k of list) work[at(slots.early, k)]?.push(k);
  return work;
}
