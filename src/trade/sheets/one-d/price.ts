import type { Kinds, Stick } from './kinds';
import type { Meter } from './meter';
import { byPairs, isForPairs } from './price-pairs';
import type { Pricer } from './pricer';

/** Cells a table may have. Common practice, no source: 6 MB, and about 10 ms to fill. */
const cellsAtMost = 6_000_000;

/** Kinds in bundles of 1, 2, 4 … pieces, so that a bundle is taken or not. */
type Bundles = { readonly kind: number[]; readonly times: number[] };

function bundlesOf({ sizes, capacity }: Kinds, prices: Float64Array, wanted: Int32Array): Bundles {
  const kind: number[] = [];
  const times: number[] = [];
  for (let k = 0; k < sizes.length; k += 1) {
    if ((prices[k] ?? 0) <= 0) continue;
    let left = Math.min(wanted[k] ?? 0, Math.floor(capacity / (sizes[k] ?? 1)));
    for (let n = 1; left > 0; n *= 2) {
      const take = Math.min(n, left);
      kind.push(k);
      times.push(take);
      left -= take;
    }
  }
  return { kind, times };
}

type Table = { readonly best: Float64Array; readonly took: Uint8Array };

/** Fills the table row by row; returns how far along it the bundles reach. */
function fillTable(
  kinds: Kinds,
  prices: Float64Array,
  { bundles, table }: { bundles: Bundles; table: Table },
): number {
  const { kind, times } = bundles;
  const { best, took } = table;
  const { capacity } = kinds;
  const wide = capacity + 1;
  let top = 0;
  best[0] = 0;
  for (let b = 0; b < kind.length; b += 1) {
    const n = times[b] ?? 0;
    const size = (kinds.sizes[kind[b] ?? 0] ?? 0) * n;
    const worth = (prices[kind[b] ?? 0] ?? 0) * n;
    const reach = Math.min(capacity, top + size);
    best.fill(best[top] ?? 0, top + 1, reach + 1);
    top = reach;
    const row = b * wide;
    took.fill(0, row, row + top + 1);
    for (let c = top; c >= size; c -= 1) {
      const now = (best[c - size] ?? 0) + worth;
      if (now > (best[c] ?? 0)) {
        best[c] = now;
        took[row + c] = 1;
      }
    }
  }
  return top;
}

/** Reads the stick back from the table. */
function readBack(
  kinds: Kinds,
  { kind, times }: Bundles,
  { took, top }: { took: Uint8Array; top: number },
): Stick {
  const stick: number[] = [];
  let c = top;
  const tops: number[] = [];
  let reach = 0;
  for (let b = 0; b < kind.length; b += 1) {
    reach = Math.min(kinds.capacity, reach + (kinds.sizes[kind[b] ?? 0] ?? 0) * (times[b] ?? 0));
    tops.push(reach);
  }
  for (let b = kind.length - 1; b >= 0; b -= 1) {
    // a row is written only as far as its bundles reach
    c = Math.min(c, tops[b] ?? 0);
    if (took[b * (kinds.capacity + 1) + c] !== 1) continue;
    const k = kind[b] ?? 0;
    const n = times[b] ?? 0;
    for (let t = 0; t < n; t += 1) stick.push(k);
    c -= (kinds.sizes[k] ?? 0) * n;
  }
  return stick.reverse();
}

/** Shorter sticks worth more than `scale` too: how far along the table each comes. */
function shorterOnes(best: Float64Array, top: number, scale: number): readonly number[] {
  const found: number[] = [];
  let worth = best[top] ?? 0;
  for (let c = top - 1; c > 0 && found.length < othersAtMost; c -= 1) {
    const here = best[c] ?? 0;
    if (here <= scale) break;
    if (here < worth) found.push(c);
    worth = here;
  }
  return found;
}

/** Shorter sticks handed back beside the best. Measured, no source. */
const othersAtMost = 3;

/** A table over every length up to the capacity. */
function byTable(kinds: Kinds, meter: Meter, rows: number): Pricer {
  const wide = kinds.capacity + 1;
  const table = { best: new Float64Array(wide), took: new Uint8Array(rows * wide) };
  return (prices, { wanted, scale }) => {
    const bundles = bundlesOf(kinds, prices, wanted);
    const top = fillTable(kinds, prices, { bundles, table });
    meter.spent += bundles.kind.length * top + top;
    const read = (c: number): Stick => readBack(kinds, bundles, { took: table.took, top: c });
    return {
      stick: read(top),
      others: shorterOnes(table.best, top, scale).map(read),
      most: table.best[top] ?? 0,
    };
  };
}

/** Steps a search for one stick may cost. Common practice, no source: some ten milliseconds. */
const stepsAtMost = 1_000_000;

/** Steps after which a stick found is good enough. Common practice, no source. */
const stepsOnceFound = 40_000;

/** Cells of the coarse table, and its length at most. Common practice, no source. */
const coarseCells = 800_000;
const coarseMost = 4000;

/** What the bundles from b on are worth at most, in a room of so many coarse steps; sizes are rounded down. */
type Coarse = { readonly worth: Float64Array; readonly wide: number; readonly grain: number };

function coarseOf(
  kinds: Kinds,
  prices: Float64Array,
  { bundles, worth }: { bundles: Bundles; worth: Float64Array },
): Coarse {
  const { kind, times } = bundles;
  const long = Math.min(coarseMost, Math.floor(coarseCells / (kind.length + 1)), kinds.capacity);
  const grain = Math.ceil(kinds.capacity / Math.max(1, long));
  const wide = Math.floor(kinds.capacity / grain) + 1;
  worth.fill(0, kind.length * wide, (kind.length + 1) * wide);
  for (let b = kind.length - 1; b >= 0; b -= 1) {
    const n = times[b] ?? 0;
    const steps = Math.floor(((kinds.sizes[kind[b] ?? 0] ?? 0) * n) / grain);
    const more = (prices[kind[b] ?? 0] ?? 0) * n;
    const row = b * wide;
    const below = row + wide;
    for (let c = 0; c < wide; c += 1) {
      const without = worth[below + c] ?? 0;
      const within = c < steps ? 0 : (worth[below + c - steps] ?? 0) + more;
      worth[row + c] = Math.max(within, without);
    }
  }
  return { worth, wide, grain };
}

type Hunt = { best: number[]; readonly others: number[][]; worth: number; steps: number; spent: number };

/** Takes bundles or leaves them, wherever the coarse table says that more could come of it. */
function hunt(
  kinds: Kinds,
  prices: Float64Array,
  { bundles, found, cells }: { bundles: Bundles; found: Hunt; cells: Float64Array },
): Coarse {
  const coarse = coarseOf(kinds, prices, { bundles, worth: cells });
  const { kind, times } = bundles;
  const picked: number[] = [];
  const go = (from: number, room: number, worth: number): void => {
    if (worth > found.worth) {
      found.worth = worth;
      found.others.push(found.best);
      found.best = [...picked];
    }
    const steps = Math.floor(room / coarse.grain);
    for (let b = from; b < kind.length && found.steps > 0; b += 1) {
      if (worth + (coarse.worth[b * coarse.wide + steps] ?? 0) <= found.worth) return;
      found.steps -= 1;
      found.spent += 1;
      if (found.best.length > 0 && found.spent > stepsOnceFound) found.steps = 0;
      const n = times[b] ?? 0;
      const size = (kinds.sizes[kind[b] ?? 0] ?? 0) * n;
      if (size > room) continue;
      picked.push(b);
      go(b + 1, room - size, worth + (prices[kind[b] ?? 0] ?? 0) * n);
      picked.pop();
    }
  };
  go(0, kinds.capacity, 0);
  return coarse;
}

/**
 * For sticks too long for a table: a search under a coarse table. What is worth less than `scale` is of no interest.
 */
function bySearch(kinds: Kinds, meter: Meter, rows: number): Pricer {
  const cells = new Float64Array(coarseCells + coarseMost + 2 * rows + 2);
  return (prices, { wanted, scale }) => {
    const bundles = bundlesOf(kinds, prices, wanted);
    const found: Hunt = { best: [], others: [], worth: scale, steps: stepsAtMost, spent: 0 };
    const { worth, wide } = hunt(kinds, prices, { bundles, found, cells });
    meter.spent += found.spent * 12 + bundles.kind.length * wide * 2;
    const most = found.steps > 0 ? found.worth : Math.max(found.worth, worth[wide - 1] ?? 0);
    const stickOf = (list: readonly number[]): Stick =>
      list.flatMap((b) => new Array<number>(bundles.times[b] ?? 0).fill(bundles.kind[b] ?? 0));
    const others = found.others.filter((list) => list.length > 0).map(stickOf);
    return { stick: stickOf(found.best), others, most };
  };
}

/** Capacity from which pairs are quicker than a table. Measured, no source. */
const pairsFrom = 4000;

/**
 * A finder of the stick worth most, of the sort that suits the sizes.
 *
 * @param kinds sizes in whole grid steps
 * @param meter counts the work
 * @returns the finder; prices × capacity must stay exact (below 2^53)
 * @example pricerOf(kinds, meterOf(10))(prices, { wanted: kinds.wanted, scale: 100 }).most
 */
export function pricerOf(kinds: Kinds, meter: Meter): Pricer {
  if (kinds.capacity > pairsFrom && isForPairs(kinds)) return byPairs(kinds, meter);
  let rows = 0;
  kinds.sizes.forEach((size, k) => {
    const most = Math.min(kinds.wanted[k] ?? 0, Math.floor(kinds.capacity / size));
    rows += Math.ceil(Math.log2(most + 1));
  });
  return rows * (kinds.capacity + 1) <= cellsAtMost
    ? byTable(kinds, meter, rows)
    : bySearch(kinds, meter, rows);
}
