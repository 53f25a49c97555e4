import type { Stick } from '../one-d/kinds';
import { amountsOf, costOf, type Master, masterOf, worthOf } from '../one-d/master';
import type { Meter } from '../one-d/meter';
import { addColumn, emptyColumns, settle } from '../one-d/settle';
import { fill } from './fill';
import { layNests, type Nest, nestOf, piecesOn, takeNest } from './nest';
import { orders, sortLoose } from './order';
import type { State } from './state';

/** Work of the search in a step of the meter: both count a millisecond as one unit of effort. */
export const workInStep = 60_000 / 400_000;

/** Sheets known: by the pieces on them. */
type Pool = Map<string, { readonly pieces: Stick; readonly nest: Nest }>;

/** What is asked of a price: sheets that are worth more than one, the pieces at these prices. */
type Asked = { readonly prices: Float64Array; readonly left: Int32Array; readonly round: number };

/** `nests` finds sheets, in so many `ways` in turn, at prices that hold so much of the pieces' areas, in turn. */
export type Patterns = {
  readonly state: State;
  readonly pool: Pool;
  readonly meter: Meter;
  readonly nests: (asked: Asked) => Generator<undefined, readonly (Nest | undefined)[]>;
  readonly ways: number;
  readonly shares: readonly number[];
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
export function keepLays(pool: Pool, { lays }: State): void {
  for (const lay of lays) if (lay.kind >= 0 && lay.n > 0) keep(pool, nestOf(lay));
}

/** Some of every piece on it is still wanted. */
const isWanted = (pieces: Stick, left: Int32Array): boolean => pieces.every((p) => (left[p] ?? 0) > 0);

/** The programme over whole sheets for what is left, its sticks in numbers of `ids`. */
type Solved = { readonly master: Master; readonly ids: readonly number[] };

type Rounds = {
  readonly rounds: number;
  readonly limit: number;
  /** True where the programme need come to no less. */
  readonly isLow?: (cost: number) => boolean;
};

/** Solves the programme; prices at most `rounds` times. */
export function* solve(
  { state, pool, meter, nests, ways, shares }: Patterns,
  left: Int32Array,
  { rounds, limit, isLow = () => false }: Rounds,
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
    if (round === rounds || meter.spent > limit || isLow(costOf(master))) break;
    yield undefined;
    const mix = shares[share] ?? 0;
    const prices = new Float64Array(left.length);
    for (const [k, id] of ids.entries()) {
      const area = (state.stock.area[id] ?? 0) / whole;
      prices[id] = mix * area + (1 - mix) * Math.max(0, master.price[k] ?? 0);
    }
    let better = false;
    for (const nest of yield* nests({ prices, left, round })) {
      const pieces = keep(pool, nest);
      if (!pieces) continue;
      const stick = inside(pieces);
      better ||= worthOf(master, stick) > 1 + 1e-6;
      addColumn(columns, stick);
    }
    share = better ? share - (share % ways) : share + 1;
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
export function* onePlan(
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
