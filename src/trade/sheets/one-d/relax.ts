import { ceilDiv } from './bounds';
import { checkOneD, type Kinds, kindsOf, type OneD, type Stick } from './kinds';
import { cheapest, costOf, enter, type Master, masterOf, worthOf } from './master';
import { isDue, isOver, type Meter, meterOf } from './meter';
import { type Pricer, pricerOf } from './price';

/** The programme solved: its plan in fractions, and a bound proved in whole numbers. */
type Relaxed = { readonly master: Master; readonly bound: number; readonly done: boolean };

type Generating = {
  readonly pool: Stick[];
  readonly meter: Meter;
  /** Go on to the optimum, even when the whole number above it is already known. */
  readonly whole?: boolean;
  /** Stop as soon as the plan is clearly below so many sticks. */
  readonly enough?: number;
  /** Stop at this mark of the meter. */
  readonly until?: number;
};

/** Clearly below: part of a stick. Common practice, no source. */
const clear = 0.8;

const gain = 1e-7;

/** Solves the programme over the sticks of the pool. */
function* settle(master: Master, pool: readonly Stick[], meter: Meter): Generator<undefined, void> {
  const turnsAtMost = 40 * master.size + 400;
  for (let turn = 0; turn < turnsAtMost; turn += 1) {
    let best: Stick | undefined;
    let most = 1 + gain;
    for (const stick of pool) {
      const worth = worthOf(master, stick);
      if (worth > most) {
        most = worth;
        best = stick;
      }
    }
    const surplus = cheapest(master);
    const entering = best ?? (surplus >= 0 ? surplus : undefined);
    const before = master.work;
    const isIn = entering !== undefined && enter(master, entering);
    meter.spent += pool.length * 5 + master.size * 8 + master.work - before;
    if (!isIn) return;
    if (isDue(meter)) yield undefined;
  }
}

/** Prices in whole steps: only so may a bound be called proved. `scale` × capacity stays exact. */
const scaleOf = (capacity: number): number => Math.max(1, Math.min(2 ** 30, Math.floor(2 ** 51 / capacity)));

type Dual = { centre: Float64Array; value: number; bound: number };

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

/**
 * Adds sticks to the programme until none would make its plan shorter.
 *
 * Source: P. C. Gilmore, R. E. Gomory, Operations Research 9 (1961) and 11 (1963); prices between the best and the last
 * ones as in P. Wentges, International Transactions in Operational Research 4 (1997).
 *
 * @param kinds what is wanted, at least one of each kind
 * @param generating `pool`: sticks known so far, added to; `meter`: counts the work
 * @param price a finder made for these kinds
 * @returns the programme, and a bound no plan is below; `done` false when the work ran out or prices were not
 * searched whole
 * @example generate(kinds, { pool: [], meter: meterOf(100) }, pricerOf(kinds, meter)).next()
 */
export function* generate(
  kinds: Kinds,
  { pool, meter, whole, enough = 0, until = Number.POSITIVE_INFINITY }: Generating,
  price: Pricer,
): Generator<undefined, Relaxed> {
  const master = masterOf(kinds);
  const scale = scaleOf(kinds.capacity);
  const dual: Dual = { centre: kinds.sizes.map((s) => s / kinds.capacity), value: 0, bound: 0 };
  let share = 0.7;
  // so no price stays above a whole stick
  for (let k = 0; k < kinds.sizes.length; k += 1) pool.push([k]);
  for (;;) {
    yield* settle(master, pool, meter);
    if (isDue(meter)) yield undefined;
    const cost = costOf(master);
    const low = Math.ceil(cost - 1e-6);
    if (!whole && dual.bound >= low) return { master, bound: dual.bound, done: true };
    if (isOver(meter) || meter.spent > until || cost < enough - clear)
      return { master, bound: dual.bound, done: false };
    const prices = blend(master, dual, { share, scale });
    const { stick, others, most } = price(prices, { wanted: kinds.wanted, scale });
    learn(dual, kinds.wanted, { prices, most });
    if (worthOf(master, stick) > 1 + gain) {
      pool.push(stick, ...others);
      share = 0.7;
    } else if (share > 0) share = share > 0.2 ? share - 0.3 : 0;
    else return { master, bound: dual.bound, done: dual.bound >= low };
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
  const steps = generate(kinds, { pool: [], meter, whole: true }, pricerOf(kinds, meter));
  for (let step = steps.next(); ; step = steps.next()) if (step.done) return costOf(step.value.master);
}
