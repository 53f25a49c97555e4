import type { Kinds, Stick } from './kinds';

/**
 * The linear programme over the sticks known so far: fewest sticks, in fractions, so that each kind is cut at least as
 * often as wanted. `basis` holds a stick, or the number k of a kind cut too often, or `size` + k: an exchange, a piece
 * of kind k cut down to the next shorter kind. Floats: a help to the search, no proof.
 */
export type Master = {
  readonly size: number;
  readonly wanted: Float64Array;
  /** What is wanted and a very little more, of each kind another little: so that no two rows are ever equally near. */
  readonly nudged: Float64Array;
  readonly basis: (Stick | number)[];
  readonly inverse: Float64Array;
  readonly amount: Float64Array;
  readonly price: Float64Array;
  readonly column: Float64Array;
  /** What an exchange costs: nothing while the programme is steadied, from 1 on nobody wants one. */
  swap: number;
  pivots: number;
  /** Steps done so far, for the meter. */
  work: number;
};

const tiny = 1e-9;

/** Part of a piece by which a kind is nudged at most. Common practice, no source. */
const nudge = 1e-4;

/** Starts with one kind to a stick, as often as fits. @example masterOf(kinds).price */
export function masterOf({ sizes, wanted, capacity }: Kinds): Master {
  const size = sizes.length;
  const inverse = new Float64Array(size * size);
  const amount = new Float64Array(size);
  const price = new Float64Array(size);
  const nudged = Float64Array.from(wanted, (n, k) => n + nudge * (0.1 + ((k * 0.618034) % 1)));
  const basis: Stick[] = [];
  for (let k = 0; k < size; k += 1) {
    const times = Math.max(1, Math.min(wanted[k] ?? 0, Math.floor(capacity / (sizes[k] ?? 1))));
    basis.push(new Array<number>(times).fill(k));
    inverse[k * size + k] = 1 / times;
    amount[k] = (nudged[k] ?? 0) / times;
    price[k] = 1 / times;
  }
  const column = new Float64Array(size);
  return {
    size,
    wanted: Float64Array.from(wanted),
    nudged,
    basis,
    inverse,
    amount,
    price,
    column,
    swap: 1,
    pivots: 0,
    work: 0,
  };
}

/** What the programme's plan costs at its prices: sticks, in fractions. @example costOf(masterOf(kinds)) */
export function costOf({ price, wanted }: Master): number {
  let sum = 0;
  for (let k = 0; k < price.length; k += 1) sum += (price[k] ?? 0) * (wanted[k] ?? 0);
  return sum;
}

/** What a stick is worth at the programme's prices. @example worthOf(master, [0, 1]) */
export function worthOf({ price }: Master, stick: Stick): number {
  let sum = 0;
  for (const k of stick) sum += price[k] ?? 0;
  return sum;
}

/** The entering column in terms of the basis. */
function column({ size, inverse, column: y }: Master, entering: Stick | number): void {
  const many = typeof entering !== 'number';
  for (let r = 0; r < size; r += 1) {
    const row = r * size;
    if (many) {
      let sum = 0;
      for (let p = 0; p < entering.length; p += 1) sum += inverse[row + (entering[p] ?? 0)] ?? 0;
      y[r] = sum;
    } else if (entering < size) y[r] = -(inverse[row + entering] ?? 0);
    else {
      const k = entering - size;
      y[r] = (inverse[row + k + 1] ?? 0) - (inverse[row + k] ?? 0);
    }
  }
}

/** The row that leaves: least ratio, of equals the largest pivot. */
function leaving({ size, amount, column: y }: Master): number {
  let row = -1;
  let least = Number.POSITIVE_INFINITY;
  for (let r = 0; r < size; r += 1) {
    const step = y[r] ?? 0;
    if (step <= 1e-7) continue;
    const ratio = Math.max(0, amount[r] ?? 0) / step;
    if (ratio < least - tiny || (ratio < least + tiny && step > (y[row] ?? 0))) {
      least = Math.min(ratio, least);
      row = r;
    }
  }
  return row;
}

/** Takes the pivot row off another, f times: cell after cell where the row is well filled, else only at its places. */
function takeOff({ inverse, size }: Master, { to, f, row, places }: Taking): void {
  if (2 * places.length > size) {
    for (let k = 0; k < size; k += 1) inverse[to + k] = (inverse[to + k] ?? 0) - f * (row[k] ?? 0);
    return;
  }
  for (let p = 0; p < places.length; p += 1) {
    const k = places[p] ?? 0;
    inverse[to + k] = (inverse[to + k] ?? 0) - f * (row[k] ?? 0);
  }
}

type Taking = {
  readonly to: number;
  readonly f: number;
  readonly row: Float64Array;
  readonly places: readonly number[];
};

/** Makes the pivot row's unknown the entering one in all rows. */
function eliminate(master: Master, at: number): void {
  const { size, inverse, amount, column: y } = master;
  const by = 1 / (y[at] ?? 1);
  const row = inverse.subarray(at * size, (at + 1) * size);
  const places: number[] = [];
  for (let k = 0; k < size; k += 1) {
    const cell = row[k] ?? 0;
    if (cell > -1e-13 && cell < 1e-13) {
      row[k] = 0;
      continue;
    }
    row[k] = cell * by;
    places.push(k);
  }
  amount[at] = (amount[at] ?? 0) * by;
  const much = amount[at] ?? 0;
  for (let r = 0; r < size; r += 1) {
    const f = y[r] ?? 0;
    if (r === at || (f < 1e-12 && f > -1e-12)) continue;
    takeOff(master, { to: r * size, f, row, places });
    master.work += places.length;
    amount[r] = (amount[r] ?? 0) - f * much;
  }
}

/** Reckons amounts and prices anew from the inverse: errors do not pile up, and a new cost of exchanges counts. */
function refresh(master: Master): void {
  const { size, inverse, amount, price, basis, nudged } = master;
  price.fill(0);
  for (let r = 0; r < size; r += 1) {
    const entry = basis[r] ?? 0;
    const costs = typeof entry !== 'number' ? 1 : entry >= size ? master.swap : 0;
    let sum = 0;
    for (let k = 0; k < size; k += 1) {
      const cell = inverse[r * size + k] ?? 0;
      sum += cell * (nudged[k] ?? 0);
      if (costs > 0) price[k] = (price[k] ?? 0) + costs * cell;
    }
    amount[r] = sum;
  }
}

/** What a column costs beyond what it is worth at the prices. */
function dearnessOf(master: Master, entering: Stick | number): number {
  const { size, price, swap } = master;
  if (typeof entering !== 'number') return 1 - worthOf(master, entering);
  if (entering < size) return price[entering] ?? 0;
  return swap - (price[entering - size + 1] ?? 0) + (price[entering - size] ?? 0);
}

/**
 * Takes a stick, the surplus of a kind or an exchange into the basis, by what `basis` calls it.
 *
 * @param master changed in place
 * @param entering a column worth more than it costs
 * @returns the row it took, or −1 when it cannot enter (no row leaves)
 * @example enter(master, [0, 1])
 */
export function enter(master: Master, entering: Stick | number): number {
  const { size, inverse, price, basis } = master;
  column(master, entering);
  const row = leaving(master);
  if (row < 0) return row;
  const gain = dearnessOf(master, entering);
  eliminate(master, row);
  for (let k = 0; k < size; k += 1) price[k] = (price[k] ?? 0) + gain * (inverse[row * size + k] ?? 0);
  basis[row] = entering;
  master.pivots += 1;
  if (master.pivots % 40 === 0) refresh(master);
  return row;
}

/** Amounts of the basis for what is truly wanted, in sticks. @example amountsOf(masterOf(kinds)) */
export function amountsOf({ size, inverse, wanted }: Master): Float64Array {
  const amounts = new Float64Array(size);
  for (let r = 0; r < size; r += 1) {
    let sum = 0;
    for (let k = 0; k < size; k += 1) sum += (inverse[r * size + k] ?? 0) * (wanted[k] ?? 0);
    amounts[r] = sum;
  }
  return amounts;
}

/** From now on nothing is cut down to a shorter kind. @example stopExchanges(masterOf(kinds)) */
export function stopExchanges(master: Master): void {
  master.swap = 1;
  refresh(master);
}
