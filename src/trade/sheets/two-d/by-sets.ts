import { costOf } from '../one-d/master';
import { meterOf } from '../one-d/meter';
import { isForPatterns } from './by-patterns';
import { keepLays, onePlan, type Patterns, solve, workInStep } from './patterns';
import { pricedSets } from './set-price';
import { setsOn } from './set-sizes';
import type { State } from './state';

/** Pieces a sheet, in the mean, and pieces of different sizes, up to which sets of them are few enough. Measured. */
const mostOnSheet = 6;
const mostSizes = 48;

/** Shares of the area in the prices, one after the other where none better is found. */
const shares = [0.7, 0.4, 0.2, 0.1, 0];

/** Sets of one round that the programme gets: the dearest. Measured, no source. */
const mostOfRound = 16;

/** More than a programme is off by. */
const hair = 1e-6;

/**
 * True where all sets of pieces a sheet takes can be looked at: one kind of sheet, no groups, and few pieces on one.
 * @param bound no plan has fewer sheets
 * @example isForSets(state, 4) // true
 */
export function isForSets(state: State, bound: number): boolean {
  const { stock, kinds } = state;
  if (kinds.length !== 1 || stock.groups.length > 0 || isForPatterns(state)) return false;
  return stock.count.length <= mostSizes && stock.total <= mostOnSheet * bound;
}

/** A bound on the number of sheets, or a plan that lies in the state. */
type BySets = { readonly bound: number } | { readonly laid: true } | undefined;

/**
 * Column generation over all sets of pieces that a sheet takes, each told exactly, and diving. What the programme comes
 * to is a bound, as soon as no set is worth more than was found: pieces at these prices, over the worth of that set.
 *
 * @param state such as `isForSets` says yes to @param known sheets of the best plan
 * @param until the work it may come to
 * @yields each bound that is better than those before; each plan, all pieces placed; undefined for a pause
 * @example bySets(state, 5, state.work + 1e6).next()
 */
export function* bySets(state: State, known: number, until: number): Generator<BySets, void> {
  const [kind] = state.kinds;
  if (!kind) return;
  const from = state.work;
  const limit = (until - from) / workInStep;
  const meter = meterOf(Number.MAX_SAFE_INTEGER / 400_000);
  const sets = setsOn(state.stock, kind, meter);
  const room = kind.w * kind.h;
  let bound = 0;
  const nests: Patterns['nests'] = function* ({ prices, left }) {
    const asked = { stock: state.stock, sets, prices, left, room, meter, until: limit };
    const { found, most, all } = yield* pricedSets(asked);
    const worth = prices.reduce((sum, price, k) => sum + price * (left[k] ?? 0), 0);
    if (all && left === state.stock.count) bound = Math.max(bound, Math.ceil(worth / most - hair));
    return found.slice(-mostOfRound).map((set) => sets.nest(set));
  };
  const patterns: Patterns = { state, pool: new Map(), meter, nests, ways: 1, shares };
  keepLays(patterns.pool, state);
  const isLow = (cost: number): boolean => bound >= known || bound >= Math.ceil(cost - hair);
  const root = yield* solve(patterns, state.stock.count, { rounds: 400, limit: limit / 2, isLow });
  state.work = from + meter.spent * workInStep;
  if (bound > 0) yield { bound };
  state.budget = Number.POSITIVE_INFINITY;
  for (let turn = 0; meter.spent < limit && bound < known; turn += 1) {
    const before = state.work;
    yield* onePlan(patterns, { root, noise: turn === 0 ? 0 : 0.3, limit });
    meter.spent += (state.work - before) / workInStep;
    state.work = before;
    if (state.looseCount === 0) yield { laid: true };
    if (state.cost <= Math.ceil(costOf(root.master) - hair) * kind.cost) break;
    keepLays(patterns.pool, state);
  }
  state.work = from + meter.spent * workInStep;
}
