import type { Stick } from '../one-d/kinds';
import { amountsOf, costOf, type Master, masterOf, worthOf } from '../one-d/master';
import { type Meter, meterOf } from '../one-d/meter';
import { addColumn, emptyColumns, settle } from '../one-d/settle';
import { fill } from './fill';
import { layNests, type Nest, nestOf, piecesOn, takeNest } from './nest';
import { orders, sortLoose } from './order';
import type { State } from './state';
import { type Lying, lyingOn, stripSheets } from './strip-price';

/** Work of the search in a step of the meter: both count a millisecond as one unit of effort. */
const workInStep = 60_000 / 400_000;

/** Sheets known: by the pieces on them. */
type Pool = Map<string, { readonly pieces: Stick; readonly nest: Nest }>;

type Patterns = {
  readonly state: State;
  readonly pool: Pool;
  readonly meter: Meter;
  readonly ways: readonly Lying[];
};

function keep(pool: Pool, nest: Nest | undefined): Stick | undefined {
  if (!nest) return undefined;
  const pieces = piecesOn(nest);
  const key = pieces.join();
  if (pool.has(key)) return undefined;
  pool.set(key, { pieces, nest });
  return pieces;
}

/** Keeps the sheets as they lie now. */
function keepLays(pool: Pool, { lays }: State): void {
  for (const lay of lays) if (lay.kind >= 0 && lay.n > 0) keep(pool, nestOf(lay));
}

/** Some of every piece on it is still wanted. */
const isWanted = (pieces: Stick, left: Int32Array): boolean => pieces.every((p) => (left[p] ?? 0) > 0);

/** Shares of the area in the prices, one after the other where none better is found; each for both ways of strips. */
const shares = [0.7, 0.7, 0.4, 0.4, 0.1, 0.1, 0, 0];

/** The programme over whole sheets for what is left, its sticks in numbers of `ids`. */
type Solved = { readonly master: Master; readonly ids: readonly number[] };

/** Solves the programme; prices at most `rounds` times, strips both ways. */
function* solve(
  { state, pool, meter, ways }: Patterns,
  left: Int32Array,
  { rounds, limit }: { rounds: number; limit: number },
): Generator<undefined, Solved> {
  const ids = [...left.keys()].filter((k) => (left[k] ?? 0) > 0);
  const to = new Map(ids.map((id, k) => [id, k]));
  const inside = (pieces: Stick): Stick => pieces.map((id) => to.get(id) ?? 0);
  const wanted = Int32Array.from(ids, (id) => left[id] ?? 0);
  const master = masterOf({ sizes: new Float64Array(ids.length).fill(1), wanted, capacity: 1 });
  const columns = emptyColumns();
  for (const { pieces } of pool.values()) if (isWanted(pieces, left)) addColumn(columns, inside(pieces));
  for (let k = 0; k < ids.length; k += 1) addColumn(columns, [k]);
  const [kind] = state.kinds;
  const whole = (kind?.w ?? 1) * (kind?.h ?? 1);
  for (let round = 0, share = 0; round <= rounds; round += 1) {
    yield* settle(master, columns, meter);
    if (round === rounds || meter.spent > limit) break;
    yield undefined;
    const mix = shares[share] ?? 0;
    const prices = new Float64Array(left.length);
    for (const [k, id] of ids.entries()) {
      const area = (state.stock.area[id] ?? 0) / whole;
      prices[id] = mix * area + (1 - mix) * Math.max(0, master.price[k] ?? 0);
    }
    let better = false;
    const lying = ways[round % ways.length];
    for (const nest of lying ? stripSheets(lying, { prices, left, meter }) : []) {
      const pieces = keep(pool, nest);
      if (!pieces) continue;
      const stick = inside(pieces);
      better ||= worthOf(master, stick) > 1 + 1e-6;
      addColumn(columns, stick);
    }
    share = better ? share - (share % 2) : share + 1;
    if (share === shares.length) break;
  }
  return { master, ids };
}

/** Takes whole sheets of the programme's plan; if there are none, the one nearest to a whole, with some chance. */
function settleSome(
  { pool, state }: Patterns,
  { master, ids }: Solved,
  { left, noise }: { left: Int32Array; noise: number },
): readonly Nest[] {
  const amounts = amountsOf(master);
  const found: { readonly pieces: Stick; readonly times: number; readonly score: number }[] = [];
  master.basis.forEach((entry, r) => {
    if (typeof entry === 'number') return;
    const much = amounts[r] ?? 0;
    const times = Math.floor(much + 1e-6);
    const score = much - times + noise * state.dice.part();
    found.push({ pieces: entry.map((k) => ids[k] ?? 0), times, score });
  });
  found.sort((a, b) => b.score - a.score);
  const nests: Nest[] = [];
  const take = (pieces: Stick): void => {
    const known = pool.get(pieces.join());
    const nest = known && isWanted(pieces, left) && takeNest(known.nest, left);
    if (nest) nests.push(nest);
  };
  for (const { pieces, times } of found) for (let t = 0; t < times; t += 1) take(pieces);
  for (const { pieces } of found) if (nests.length === 0) take(pieces);
  return nests;
}

/** One plan out of the programme; what no whole sheet was found for is laid as the search lays it. */
function* onePlan(
  patterns: Patterns,
  { root, noise, limit }: { root: Solved; noise: number; limit: number },
): Generator<undefined, void> {
  const { state } = patterns;
  const left = Int32Array.from(state.stock.count);
  const nests: Nest[] = [];
  for (let solved = root; ; ) {
    const more = settleSome(patterns, solved, { left, noise });
    nests.push(...more);
    if (more.length === 0 || left.every((n) => n === 0)) break;
    solved = yield* solve(patterns, left, { rounds: 1, limit });
    if (costOf(solved.master) < 1.2) break;
  }
  layNests(state, nests, left);
  sortLoose(state, orders[state.dice.next(orders.length)] ?? 'area', 0);
  fill(state);
}

/** Pieces of a kind, in the mean, from which whole sheets are found well. Measured, no source. */
const manyEach = 8;

/** Steps of the grid a sheet has both ways together, at most: the tables of the strips grow with them. */
const longest = 12_000;

/**
 * True where whole sheets are worth finding: one kind of sheet, no groups, and pieces that come many times.
 * @example isForPatterns(state) // false
 */
export function isForPatterns({ stock, kinds }: State): boolean {
  const [kind, ...others] = kinds;
  const different = stock.count.reduce((sum, n) => sum + (n > 0 ? 1 : 0), 0);
  if (!kind || others.length > 0 || stock.groups.length > 0) return false;
  return stock.total >= manyEach * different && different > 1 && kind.w + kind.h <= longest;
}

/**
 * Plans out of whole sheets of strips, by column generation and diving, each left lying in the state: for many equal
 * pieces.
 *
 * @param state such as `isForPatterns` says yes to @param until the work it may come to
 * @yields true when a plan lies there, all pieces placed; undefined for a pause
 * @example byPatterns(state, state.work + 1e6).next()
 */
export function* byPatterns(state: State, until: number): Generator<true | undefined, void> {
  const [kind] = state.kinds;
  if (!kind) return;
  const meter = meterOf(Number.MAX_SAFE_INTEGER / 400_000);
  const from = state.work;
  const limit = (until - from) / workInStep;
  const ways = [true, false].map((across) => lyingOn(state.stock, kind, across));
  const patterns: Patterns = { state, pool: new Map(), meter, ways };
  keepLays(patterns.pool, state);
  const root = yield* solve(patterns, state.stock.count, { rounds: 400, limit: limit / 2 });
  const least = Math.ceil(costOf(root.master) - 1e-6);
  state.budget = Number.POSITIVE_INFINITY;
  for (let turn = 0; meter.spent < limit; turn += 1) {
    const before = state.work;
    yield* onePlan(patterns, { root, noise: turn === 0 ? 0 : 0.3, limit });
    meter.spent += (state.work - before) / workInStep;
    state.work = before;
    if (state.looseCount === 0) yield true;
    // fewer sheets than the programme has, these strips do not make
    if (state.cost <= least * kind.cost) break;
    keepLays(patterns.pool, state);
  }
  state.work = from + meter.spent * workInStep;
}
