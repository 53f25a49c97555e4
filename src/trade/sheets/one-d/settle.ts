import type { Stick } from './kinds';
import { enter, type Master } from './master';
import { isDue, isOver, type Meter } from './meter';

/** The sticks a programme may choose from: those of `sticks`, and end to end in `kinds`, each from `from` on. */
export type Columns = { readonly sticks: Stick[]; readonly from: number[]; kinds: Int32Array };

/** No sticks yet. @example emptyColumns().sticks // [] */
export const emptyColumns = (): Columns => ({ sticks: [], from: [0], kinds: new Int32Array(1024) });

/** Adds a stick. @example addColumn(emptyColumns(), [0, 1]) */
export function addColumn(columns: Columns, stick: Stick): void {
  const at = columns.from[columns.from.length - 1] ?? 0;
  const end = at + stick.length;
  if (end > columns.kinds.length) {
    const more = new Int32Array(2 * end);
    more.set(columns.kinds);
    columns.kinds = more;
  }
  columns.kinds.set(stick, at);
  columns.from.push(end);
  columns.sticks.push(stick);
}

/** What each stick adds up to in a row of figures, one a kind; then, for the surplus of each kind, less the figure. */
function sumUp({ sticks, from, kinds }: Columns, row: Float64Array, sums: Float64Array): void {
  const count = sticks.length;
  let p = 0;
  for (let j = 0; j < count; j += 1) {
    const end = from[j + 1] ?? 0;
    let sum = 0;
    for (; p < end; p += 1) sum += row[kinds[p] ?? 0] ?? 0;
    sums[j] = sum;
  }
  const size = row.length;
  for (let k = 0; k < size; k += 1) sums[count + k] = -(row[k] ?? 0);
  if (sums.length > count + size)
    for (let k = 0; k < size - 1; k += 1) sums[count + size + k] = (row[k + 1] ?? 0) - (row[k] ?? 0);
}

const gain = 1e-7;

type Choice = { readonly gains: Float64Array; readonly weights: Float64Array; readonly sums: Float64Array };

/** The column with the largest gain for its length, or −1. */
function choose({ gains, weights }: Choice): number {
  let best = -1;
  let most = 0;
  for (let j = 0; j < gains.length; j += 1) {
    const d = gains[j] ?? 0;
    if (d <= gain) continue;
    const score = (d * d) / (weights[j] ?? 1);
    if (score <= most) continue;
    most = score;
    best = j;
  }
  return best;
}

/** What each column gains at the programme's prices. */
function gainsOf(master: Master, columns: Columns, { gains, weights }: Choice): void {
  sumUp(columns, master.price, gains);
  for (let j = 0; j < columns.sticks.length; j += 1) gains[j] = (gains[j] ?? 0) - 1;
  for (let j = columns.sticks.length + master.size; j < gains.length; j += 1)
    gains[j] = (gains[j] ?? 0) - master.swap;
  weights.fill(1);
}

/** Gains and lengths after column q came in at a row. */
function update(
  master: Master,
  columns: Columns,
  { at, q, choice }: { at: number; q: number; choice: Choice },
) {
  const { gains, weights, sums } = choice;
  sumUp(columns, master.inverse.subarray(at * master.size, (at + 1) * master.size), sums);
  const gained = gains[q] ?? 0;
  const weight = weights[q] ?? 1;
  for (let j = 0; j < gains.length; j += 1) {
    const part = sums[j] ?? 0;
    if (part === 0) continue;
    gains[j] = (gains[j] ?? 0) - gained * part;
    const long = part * part * weight;
    if (long > (weights[j] ?? 1)) weights[j] = long;
  }
}

/**
 * Solves the programme over the sticks known, by the simplex method; stops where it stands when the work is used up.
 *
 * Source of the choice of the entering column: P. M. J. Harris, Mathematical Programming 5 (1973), Devex.
 *
 * @param master where it starts from, and what it becomes
 * @param columns the sticks it may choose from @param meter counts the work
 * @example settle(masterOf(kinds), columns, meterOf(10)).next()
 */
export function* settle(master: Master, columns: Columns, meter: Meter): Generator<undefined, void> {
  const all = columns.sticks.length + (master.swap < 1 ? 2 * master.size - 1 : master.size);
  const choice = {
    gains: new Float64Array(all),
    weights: new Float64Array(all),
    sums: new Float64Array(all),
  };
  const scan = (columns.from[columns.sticks.length] ?? 0) + 4 * all;
  let fresh = 0;
  for (let turn = 0; turn < 40 * master.size + 400; turn += 1) {
    if (fresh === 0) gainsOf(master, columns, choice);
    const q = choose(choice);
    if (q < 0 && fresh === 0) return;
    fresh = q < 0 ? 0 : (fresh + 1) % 40;
    if (q < 0) continue;
    const before = master.work;
    const at = enter(master, columns.sticks[q] ?? q - columns.sticks.length);
    meter.spent += 2 * scan + master.size * 8 + master.work - before;
    if (at < 0 || isOver(meter)) return;
    update(master, columns, { at, q, choice });
    if (isDue(meter)) yield undefined;
  }
}
