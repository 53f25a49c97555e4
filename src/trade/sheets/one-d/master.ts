import type { Kinds, Stick } from './kinds';

/**
 * The linear programme over the sticks known so far: fewest sticks, in fractions, so that each kind is cut at least as
 * often as wanted. `basis` holds a stick, or the number of a kind cut too often. Floats: a help to the search, no
 * proof.
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
    } else y[r] = -(inverse[row + entering] ?? 0);
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

/** Makes the pivot row's unknown the entering one in all rows. */
function eliminate(master: Master, row: number): void {
  const { size, inverse, amount, column: y } = master;
  const by = 1 / (y[row] ?? 1);
  const at = row * size;
  const places: number[] = [];
  for (let k = 0; k < size; k += 1) {
    const cell = inverse[at + k] ?? 0;
    if (cell > -1e-13 && cell < 1e-13) continue;
    inverse[at + k] = cell * by;
    places.push(k);
  }
  amount[row] = (amount[row] ?? 0) * by;
  const much = amount[row] ?? 0;
  for (let r = 0; r < size; r += 1) {
    const f = y[r] ?? 0;
    if (r === row || (f < 1e-12 && f > -1e-12)) continue;
    const to = r * size;
    master.work += places.length;
    for (const k of places) inverse[to + k] = (inverse[to + k] ?? 0) - f * (inverse[at + k] ?? 0);
    amount[r] = (amount[r] ?? 0) - f * much;
  }
}

/** Reckons amounts and prices anew from the inverse, so that small errors do not pile up. */
function refresh({ size, inverse, amount, price, basis, nudged }: Master): void {
  price.fill(0);
  for (let r = 0; r < size; r += 1) {
    const costs = typeof basis[r] !== 'number';
    let sum = 0;
    for (let k = 0; k < size; k += 1) {
      const cell = inverse[r * size + k] ?? 0;
      sum += cell * (nudged[k] ?? 0);
      if (costs) price[k] = (price[k] ?? 0) + cell;
    }
    amount[r] = sum;
  }
}

/**
 * Takes a stick (or the surplus of a kind, by its number) into the basis.
 *
 * @param master changed in place
 * @param entering a stick worth more than 1, or a kind whose price is below 0
 * @returns false when the column cannot enter (no row leaves)
 * @example enter(master, [0, 1])
 */
export function enter(master: Master, entering: Stick | number): boolean {
  const { size, inverse, price, basis } = master;
  column(master, entering);
  const row = leaving(master);
  if (row < 0) return false;
  const gain = typeof entering === 'number' ? (price[entering] ?? 0) : 1 - worthOf(master, entering);
  eliminate(master, row);
  for (let k = 0; k < size; k += 1) price[k] = (price[k] ?? 0) + gain * (inverse[row * size + k] ?? 0);
  basis[row] = entering;
  master.pivots += 1;
  if (master.pivots % 40 === 0) refresh(master);
  return true;
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

/** The kind with the lowest price below nought, or −1. @example cheapest(master) // -1 */
export function cheapest({ price }: Master): number {
  let kind = -1;
  let least = -1e-7;
  for (let k = 0; k < price.length; k += 1) {
    if ((price[k] ?? 0) < least) {
      least = price[k] ?? 0;
      kind = k;
    }
  }
  return kind;
}
