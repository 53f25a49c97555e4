import { ceilDiv } from './bounds';
import { checkOneD, type Kinds, kindsOf, type OneD, type Stick } from './kinds';
import { costOf, enter, type Master, masterOf, stopExchanges, worthOf } from './master';
import { isDue, isOver, type Meter, meterOf } from './meter';
import { pricerOf } from './price';
import type { Pricer } from './pricer';
import { addColumn, type Columns, emptyColumns, settle } from './settle';

/** Prices that prove most so far: no plan has fewer sticks than `value`, nor than the whole number `bound`. */
type Dual = { centre: Float64Array; value: number; bound: number };

/** A programme, its sticks so far, and what its prices have proved: what is not finished can be gone on with. */
export type Programme = { readonly master: Master; readonly columns: Columns; readonly dual: Dual };

/** A bound no plan is below; `done` false when the work ran out or prices were not searched whole. */
type Relaxed = { readonly bound: number; readonly done: boolean };

type Generating = {
  readonly meter: Meter;
  readonly price: Pricer;
  /** Go on to the optimum, even when the whole number above it is already known. */
  readonly whole?: boolean;
  /** Stop as soon as the plan is clearly below so many sticks. */
  readonly enough?: number;
  /** For a dive: stop once the plan has no more sticks than this, or none can have. */
  readonly most?: number;
  /** Stop at this mark of the meter. */
  readonly until?: number;
};

/** Clearly below: part of a stick. Common practice, no source. */
const clear = 0.8;

const gain = 1e-7;

/** Prices in whole steps: only so may a bound be called proved. `scale` × capacity stays exact. */
const scaleOf = (capacity: number): number => Math.max(1, Math.min(2 ** 30, Math.floor(2 ** 51 / capacity)));

/** Between the best prices so far and the programme's: whole, 0 … scale. */
function blend(master: Master, dual: Dual, { share, scale }: { share: number; scale: number }): Float64Array {
  return Float64Array.from(master.price, (price, k) => {
    const mixed = share * (dual.centre[k] ?? 0) + (1 - share) * price;
    return Math.floor(Math.max(0, Math.min(1, mixed)) * scale);
  });
}

/**
 * No stick is worth more than `most`, so no plan has fewer sticks than all pieces are worth, over `most`.
 * Source: A. A. Farley, Operations Research 38 (1990) 922–923, here in whole numbers.
 */
function learn(
  dual: Dual,
  wanted: Int32Array,
  { prices, most }: { prices: Float64Array; most: number },
): void {
  let all = 0;
  for (let k = 0; k < wanted.length; k += 1) all += (wanted[k] ?? 0) * (prices[k] ?? 0);
  if (most <= 0 || all / most <= dual.value) return;
  dual.value = all / most;
  dual.bound = Math.max(dual.bound, ceilDiv(all, most));
  dual.centre = prices.map((p) => p / most);
}

/** What is known of a programme not unlike this one: sticks of its plan, the weightiest first, and its best prices. */
type Known = { readonly sticks: readonly Stick[]; readonly centre: Float64Array };

/**
 * A programme not yet solved.
 *
 * @param kinds what is wanted, at least one of each kind
 * @param sticks known so far, no kind more often than wanted
 * @param known of one not unlike this one; without it the programme is steadied by exchanges first (see `Master`)
 * @returns a programme that can be handed to `generate`
 * @example programmeOf(kinds, [[0, 1]]).columns.sticks
 */
export function programmeOf(kinds: Kinds, sticks: readonly Stick[], known?: Known): Programme {
  const master = masterOf(kinds);
  const columns = emptyColumns();
  for (const stick of sticks) addColumn(columns, stick);
  // so no price stays above a whole stick
  for (let k = 0; k < kinds.sizes.length; k += 1) addColumn(columns, [k]);
  for (const stick of known?.sticks ?? []) enter(master, stick);
  if (!known) master.swap = 0;
  // a piece is worth its length at least: prices that prove less than the lengths do are not blended with
  const centre = known?.centre ?? kinds.sizes.map((s) => s / kinds.capacity);
  const value = centre.reduce((sum, share, k) => sum + share * (kinds.wanted[k] ?? 0), 0);
  return { master, columns, dual: { centre, value, bound: 0 } };
}

/**
 * Adds sticks to the programme until none would make its plan shorter.
 *
 * Source: P. C. Gilmore, R. E. Gomory, Operations Research 9 (1961) and 11 (1963); prices between the best and the last
 * ones as in P. Wentges, International Transactions in Operational Research 4 (1997); exchanges that hold the prices in
 * order of length, as in J. M. Valério de Carvalho, INFORMS Journal on Computing 17 (2005), until they have done their
 * work.
 *
 * @param kinds what is wanted, at least one of each kind
 * @param programme made for these kinds; changed in place
 * @param generating `price`: a finder made for these kinds; `meter`: counts the work
 * @example generate(kinds, programmeOf(kinds, []), { meter, price: pricerOf(kinds, meter) }).next()
 */
export function* generate(
  kinds: Kinds,
  { master, columns, dual }: Programme,
  { meter, price, whole, most: target, enough = 0, until = Number.POSITIVE_INFINITY }: Generating,
): Generator<undefined, Relaxed> {
  const scale = scaleOf(kinds.capacity);
  let share = 0.7;
  for (;;) {
    yield* settle(master, columns, meter);
    if (isDue(meter)) yield undefined;
    const cost = costOf(master);
    const low = Math.ceil(cost - 1e-6);
    if (master.swap < 1 && (dual.bound >= low || isOver(meter) || meter.spent > until)) {
      stopExchanges(master);
      continue;
    }
    if (!whole && dual.bound >= low) return { bound: dual.bound, done: true };
    if (target !== undefined && (low <= target || dual.value > target + 1e-6))
      return { bound: dual.bound, done: false };
    if (isOver(meter) || meter.spent > until || cost < enough - clear)
      return { bound: dual.bound, done: false };
    const prices = blend(master, dual, { share, scale });
    const { stick, others, most } = price(prices, { wanted: kinds.wanted, scale });
    learn(dual, kinds.wanted, { prices, most });
    if (worthOf(master, stick) > 1 + gain) {
      for (const one of [stick, ...others]) addColumn(columns, one);
      share = 0.7;
    } else if (share > 0) share = share > 0.2 ? share - 0.3 : 0;
    else if (master.swap < 1) {
      stopExchanges(master);
      share = 0.7;
    } else return { bound: dual.bound, done: dual.bound >= low };
  }
}

/**
 * The value of the linear programme over all sticks that could be cut: for comparison, not for proof.
 *
 * @param problem sizes and capacity in whole grid steps
 * @returns sticks, in fractions, ≥ 0
 * @throws RangeError if the problem is not one (see `checkOneD`)
 * @example relaxation({ capacity: 10, items: [{ size: 4, count: 3 }] }) // 1.5
 */
export function relaxation(problem: OneD): number {
  checkOneD(problem);
  const kinds = kindsOf(problem);
  if (kinds.sizes.length === 0) return 0;
  const meter = meterOf(1e9);
  const programme = programmeOf(kinds, []);
  const steps = generate(kinds, programme, { meter, price: pricerOf(kinds, meter), whole: true });
  while (!steps.next().done);
  return costOf(programme.master);
}
