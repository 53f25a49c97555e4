import type { Json } from '../job/entry';
import type { Database } from './db';
import { isOwn, nameKey, stampKey } from './own-keys';
import { atOnce, reading, sent, strict, whole } from './whole';

export type ValueStore = 'settings' | 'shop';
export const valueStores = ['settings', 'shop'] as const;

/** A setting or figure of the shop, null when taken away, and its moment, ISO 8601, empty where not known. */
export type Stamped = { readonly value: Json; readonly at: string };
export type Values = ReadonlyMap<string, Stamped>;
export type ValueRow = readonly [ValueStore, string, Json, string];

type ReadStore = {
  readonly getAllKeys: () => Promise<readonly string[]>;
  readonly getAll: () => Promise<readonly unknown[]>;
};
type Stores = { readonly objectStore: (name: ValueStore) => unknown };

/** Keeps the later of two values; of two without a moment, the one given last. */
export function takeLater(values: Map<string, Stamped>, key: string, now: Stamped): void {
  const before = values.get(key);
  if (!before || before.at <= now.at) values.set(key, now);
}

/** Values as screens read them, without those taken away. */
export const pairsIn = (values: Values): ReadonlyMap<string, Json> =>
  new Map([...values].flatMap(([key, { value }]) => (value === null ? [] : [[key, value] as const])));

/** Everything of a store of keys, in a transaction. */
async function allIn(tx: Stores, name: ValueStore): Promise<ReadonlyMap<string, Json>> {
  const store = tx.objectStore(name) as ReadStore;
  const [keys, all] = await atOnce(
    () => store.getAllKeys(),
    () => store.getAll(),
  );
  return new Map(keys.map((key, k) => [key, (all[k] ?? null) as Json]));
}

/** All values of the database with their moments, also those taken away; in a transaction over both stores. */
export async function stampedIn(tx: Stores): Promise<Readonly<Record<ValueStore, Values>>> {
  const [settings, shop] = await atOnce(
    () => allIn(tx, 'settings'),
    () => allIn(tx, 'shop'),
  );
  const stampedOf = (name: ValueStore, pairs: ReadonlyMap<string, Json>): Values => {
    const prefix = stampKey(name, '');
    const stamped = [...settings.keys()].flatMap((key) =>
      key.startsWith(prefix) ? [key.slice(prefix.length)] : [],
    );
    const keys = new Set([...pairs.keys(), ...stamped].filter((key) => !isOwn(key)));
    return new Map(
      [...keys].map((key) => {
        const at = settings.get(stampKey(name, key));
        return [key, { value: pairs.get(key) ?? null, at: typeof at === 'string' ? at : '' }];
      }),
    );
  };
  return { settings: stampedOf('settings', settings), shop: stampedOf('shop', shop) };
}

/** The settings and figures of the database. */
export const allValues = (db: Database): Promise<Readonly<Record<ValueStore, Values>>> =>
  stampedIn(reading(db.transaction(valueStores)));

/** The latest moment anything was written at. */
export function latestOf(all: Readonly<Record<ValueStore, Values>>): string {
  const stamps = valueStores.flatMap((name) => [...all[name].values()].map(({ at }) => at));
  return stamps.sort()[stamps.length - 1] ?? '';
}

/** `now`, or just after `before` when the clock was set back. */
export const laterThan = (before: string, now: string): string => {
  if (before < now) return now;
  const next = Date.parse(before) + 1;
  return Number.isNaN(next) ? now : new Date(next).toISOString();
};

/** Keeps one setting or figure of the shop; null takes it away. Returns its row with its moment. */
export async function putValue(
  db: Database,
  store: ValueStore,
  key: string,
  { value, at: now }: Stamped,
): Promise<ValueRow> {
  const tx = db.transaction(valueStores, 'readwrite', strict);
  return whole(tx, async () => {
    const before = await tx.objectStore('settings').get(stampKey(store, key));
    const at = laterThan(typeof before === 'string' ? before : '', now);
    write(tx, [store, key, value, at]);
    return [store, key, value, at];
  });
}

type Writing = { readonly objectStore: (name: ValueStore) => unknown };
type WriteStore = {
  readonly put: (value: Json, key: string) => Promise<unknown>;
  readonly delete: (key: string) => Promise<unknown>;
};

function write(tx: Writing, [store, key, value, at]: ValueRow): void {
  const own = tx.objectStore(store) as WriteStore;
  sent(value === null ? own.delete(key) : own.put(value, key));
  if (at !== '') sent((tx.objectStore('settings') as WriteStore).put(at, stampKey(store, key)));
}

/** Writes the journal's values that are later than the database's; in a transaction over both stores. */
export async function takeValues(tx: Writing, rows: readonly ValueRow[]): Promise<void> {
  const here = await stampedIn(tx);
  for (const row of rows) {
    const [store, key, , at] = row;
    const known = here[store].get(key);
    if (key !== nameKey && !isOwn(key) && (!known || known.at < at)) write(tx, row);
  }
}

/** What each copy lacks of the other: the later value stands, and without moments the database's (D9). */
export function evenValues(
  store: ValueStore,
  database: Values,
  journal: Values,
): { readonly toDatabase: readonly ValueRow[]; readonly toJournal: readonly ValueRow[] } {
  const row = (key: string, { value, at }: Stamped): ValueRow => [store, key, value, at];
  const toDatabase = [...journal].flatMap(([key, theirs]) => {
    const ours = database.get(key);
    const wanted = key !== nameKey && !isOwn(key) && (ours ? ours.at < theirs.at : theirs.value !== null);
    return wanted ? [row(key, theirs)] : [];
  });
  const toJournal = [...database].flatMap(([key, ours]) => {
    const theirs = journal.get(key);
    const alike = theirs?.at === ours.at && JSON.stringify(theirs.value) === JSON.stringify(ours.value);
    return alike || (theirs && ours.at < theirs.at) ? [] : [row(key, ours)];
  });
  return { toDatabase, toJournal };
}
