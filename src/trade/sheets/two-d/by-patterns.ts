import { costOf } from '../one-d/master';
import { type Meter, meterOf } from '../one-d/meter';
import { keepLays, onePlan, type Patterns, solve, workInStep } from './patterns';
import type { State } from './state';
import { type Lying, lyingOn, stripSheets } from './strip-price';

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

/** Shares of the area in the prices, one after the other where none better is found; each for both ways of strips. */
const shares = [0.7, 0.7, 0.4, 0.4, 0.1, 0.1, 0, 0];

/** Sheets of strips, the ways they may lie in turn. */
const strips = (ways: readonly Lying[], meter: Meter): Patterns['nests'] =>
  // biome-ignore lint/correctness/useYield: it is short, and never pauses
  function* ({ prices, left, round }) {
    const lying = ways[round % ways.length];
    return lying ? [...stripSheets(lying, { prices, left, meter })] : [];
  };

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
  const patterns: Patterns = { state, pool: new Map(), meter, nests: strips(ways, meter), ways: 2, shares };
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
