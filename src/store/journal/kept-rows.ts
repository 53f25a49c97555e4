import type { Entry } from '../../job/entry';
import type { Aside } from '../../job/rows';
import { type Stamped, takeLater, type ValueRow, type ValueStore, type Values } from '../values';
import { type Row, rowKey } from './row';

/** What rows come to: the latest of each key. */
type Kept = {
  readonly log: ReadonlyMap<string, Entry>;
  /** With those taken away. */
  readonly settings: Values;
  readonly shop: Values;
  readonly aside: ReadonlyMap<string, Aside>;
};

type Growing = {
  log: Map<string, Entry>;
  settings: Map<string, Stamped>;
  shop: Map<string, Stamped>;
  aside: Map<string, Aside>;
};

/** What rows come to, in the order they were written. @example keptOf(rows).log.size */
export function keptOf(rows: readonly Row[]): Kept {
  const kept: Growing = { log: new Map(), settings: new Map(), shop: new Map(), aside: new Map() };
  for (const row of rows) take(kept, row);
  return kept;
}

function take(kept: Growing, row: Row): void {
  switch (row[0]) {
    case 'log':
      kept.log.set(rowKey(row[1]), row[1]);
      return;
    case 'settings':
    case 'shop':
      takeLater(kept[row[0]], row[1], { value: row[2], at: row[3] ?? '' });
      return;
    case 'aside':
      kept.aside.set(JSON.stringify(row[1].row), row[1]);
      return;
    case 'purge':
      for (const [key, { job }] of kept.log) if (job === row[1]) kept.log.delete(key);
      return;
    default:
      return;
  }
}

export const valueRows = (store: ValueStore, values: Values): readonly ValueRow[] =>
  [...values].map(([key, { value, at }]) => [store, key, value, at]);

/** The rows that come to the same with none superseded. */
export const rowsOf = ({ log, settings, shop, aside }: Kept): readonly Row[] => [
  ...valueRows('settings', settings),
  ...valueRows('shop', shop),
  ...[...aside.values()].map((one): Row => ['aside', one]),
  ...[...log.values()].map((entry): Row => ['log', entry]),
];

/** How many entries there are, and a hash of their keys that does not depend on their order. */
export type Sum = { readonly count: number; readonly hash: string };

/** @param keys of `rowKey` @example sumOf([]).count // 0 */
export function sumOf(keys: Iterable<string>): Sum {
  let count = 0;
  let [a, b] = [0, 0];
  for (const key of keys) {
    count += 1;
    let [x, y] = [5381, 52711];
    for (let k = 0; k < key.length; k += 1) {
      x = Math.imul(x, 33) ^ key.charCodeAt(k);
      y = Math.imul(y, 31) + key.charCodeAt(k);
    }
    a = (a + Math.imul(x ^ (x >>> 15), 0x2c1b3c6d)) >>> 0;
    b ^= Math.imul(y ^ (y >>> 13), 0x297a2d39);
  }
  return { count, hash: `${a.toString(36)}.${(b >>> 0).toString(36)}` };
}
