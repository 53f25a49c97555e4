import { unwrap } from 'idb';
import type { Connection, Database } from '../db';
import type { Entry, Json } from '../entry';
import type { Aside } from '../migrations';
import { reading, sent, strict, whole } from '../whole';
import type { Journal, Summary } from './journal';
import { keptOf, type Row, rowKey, type Sum, sumOf } from './row';

const stores = ['jobs', 'log', 'settings', 'shop', 'aside'] as const;

/**
 * Puts into the database what the journal has and it lacks, in one transaction; what the database has stands. Entries set aside
 * stay aside.
 *
 * @returns how many entries came back
 */
export async function restore(db: Database, rows: readonly Row[]): Promise<number> {
  const kept = keptOf(rows);
  const tx = db.transaction(stores, 'readwrite', strict);
  const [jobs, log, aside] = [tx.objectStore('jobs'), tx.objectStore('log'), tx.objectStore('aside')];
  return whole(tx, async () => {
    const keys = await log.getAllKeys();
    const made = await jobs.getAllKeys();
    const asides = await aside.getAll();
    const have = new Set(keys.map(([job, device, count]) => rowKey({ job, device, count })));
    const away = new Set(asides.map(({ row }) => JSON.stringify(row)));
    const isAway = (entry: Entry) => away.size > 0 && away.has(JSON.stringify(entry));
    const fresh = [...kept.log].flatMap(([key, entry]) => (have.has(key) || isAway(entry) ? [] : [entry]));
    // ten thousand requests nobody listens to one by one: the transaction's end tells
    const plain = unwrap(log);
    for (const entry of fresh) plain.put(entry);
    const jobsMade = new Set(made);
    for (const [id, at] of firstMoments(fresh)) if (!jobsMade.has(id)) sent(jobs.put({ id, made: at }));
    for (const [text, one] of kept.aside) if (!away.has(text)) sent(aside.add(withoutId(one)));
    for (const name of ['settings', 'shop'] as const) {
      const store = tx.objectStore(name);
      const known = new Set(await store.getAllKeys());
      for (const [key, value] of kept[name])
        if (!known.has(key) && key !== ownName && !isNote(key)) sent(store.put(value as string, key));
    }
    return fresh.length;
  });
}

/**
 * The phone's own name does not come back: should the journal have missed its newest entries, their places in the log must not be
 * taken again with other content.
 */
const ownName = 'device';

const withoutId = ({ from, why, row }: Aside): Aside => ({ from, why, row });

function firstMoments(entries: readonly Entry[]): ReadonlyMap<string, string> {
  const first = new Map<string, string>();
  for (const { job, at } of entries) {
    const known = first.get(job);
    if (known === undefined || at < known) first.set(job, at);
  }
  return first;
}

/** What of the database the journal lacks, by comparing counts and keys first; nothing when both hold the same. */
export async function missingRows(db: Database, { sum, settings, shop }: Summary): Promise<Difference> {
  const tx = reading(db.transaction(stores));
  const [log, aside] = [tx.objectStore('log'), tx.objectStore('aside')];
  const behind = (await tx.objectStore('settings').get(behindKey)) !== undefined;
  const whole = behind || settings.some(([key]) => key === aloneNote);
  const same = await holdsThe(sum, log, whole);
  const values = [
    ...(await changed(tx.objectStore('settings'), settings, 'settings')),
    ...(await changed(tx.objectStore('shop'), shop, 'shop')),
  ];
  if (same) return { same, rows: () => values };
  const entries = await log.getAll();
  const asides = await aside.getAll();
  return {
    same: false,
    rows: (theirs) => {
      const kept = keptOf(theirs);
      return [
        ...values,
        ...entries.flatMap((entry): Row[] => (kept.log.has(rowKey(entry)) ? [] : [['log', entry]])),
        ...asides.flatMap((one): Row[] =>
          kept.aside.has(JSON.stringify(one.row)) ? [] : [['aside', withoutId(one)]],
        ),
      ];
    },
  };
}

/**
 * Logs so long are compared by their count alone, unless one copy is known to have taken something without the other: reading
 * every key would hold the screen up.
 */
const long = 20_000;

type Log = {
  readonly count: () => Promise<number>;
  readonly getAllKeys: () => Promise<readonly (readonly [string, string, number])[]>;
};

async function holdsThe(sum: Sum, log: Log, whole: boolean): Promise<boolean> {
  const count = await log.count();
  if (count !== sum.count || (count > long && !whole)) return count === sum.count;
  const keys = await log.getAllKeys();
  return sumOf(keys.map(([job, device, at]) => rowKey({ job, device, count: at }))).hash === sum.hash;
}

export type Difference = {
  readonly same: boolean;
  /** What the journal lacks, given its rows. */
  readonly rows: (theirs: readonly Row[]) => readonly Row[];
};

type Values = {
  readonly getAllKeys: () => Promise<readonly string[]>;
  readonly getAll: () => Promise<readonly unknown[]>;
};

async function changed(
  store: Values,
  theirs: readonly (readonly [string, Json])[],
  name: 'settings' | 'shop',
): Promise<readonly Row[]> {
  const keys = await store.getAllKeys();
  const values = await store.getAll();
  const known = new Map(theirs.map(([key, value]) => [key, JSON.stringify(value)]));
  const now = keys.map((key, k) => [key, (values[k] ?? null) as Json] as const);
  const gone = [...known.keys()].filter((key) => !keys.includes(key) && !isNote(key));
  return [
    ...now.flatMap(([key, value]): Row[] =>
      key !== reserveKey && key !== behindKey && known.get(key) !== JSON.stringify(value)
        ? [[name, key, value]]
        : [],
    ),
    ...gone.map((key): Row => [name, key, null]),
  ];
}

/** A value the database did not take: at the next comparing the journal's word is the newer one. */
export const noteOf = (store: 'settings' | 'shop', key: string): string => `alone/${store}/${key}`;
const isNote = (key: string): boolean => key.startsWith('alone/');
/** The journal has entries the database did not take. */
export const aloneNote = 'alone/log/entries';
/** The database has something the journal did not take. */
export const behindKey = 'behind';

/** Values the journal took alone are written to the database; then nothing is noted any more. */
async function withoutNotes(
  use: Connection['use'],
  journal: Journal,
  summary: Summary,
): Promise<Summary | undefined> {
  const notes = summary.settings.flatMap(([key]) => (isNote(key) && key !== aloneNote ? [key] : []));
  if (notes.length === 0) return summary;
  await use((db) => takeValues(db, summary, notes));
  await journal.append(notes.map((key): Row => ['settings', key, null]));
  return journal.summary();
}

async function takeValues(db: Database, summary: Summary, notes: readonly string[]): Promise<void> {
  const tx = db.transaction(['settings', 'shop'], 'readwrite', strict);
  await whole(tx, async () => {
    for (const note of notes) {
      const name = note.startsWith(noteOf('shop', '')) ? 'shop' : 'settings';
      const key = note.slice(noteOf(name, '').length);
      const value = summary[name].find(([own]) => own === key)?.[1];
      const store = tx.objectStore(name);
      sent(value === undefined ? store.delete(key) : store.put(value as string, key));
    }
  });
}

/** A block of nothing in the database, given up for the last change when the phone is full. */
export const reserveKey = 'reserve';

export type Evened = {
  /** Entries the database had lost. */
  readonly restored: number;
  readonly both: boolean;
  /** Figures or settings came into the database that the journal had taken alone. */
  readonly values: boolean;
};

async function forget(db: Database): Promise<void> {
  const tx = db.transaction('settings', 'readwrite', strict);
  await whole(tx, async () => {
    if ((await tx.store.getKey(behindKey)) !== undefined) sent(tx.store.delete(behindKey));
  });
}

/**
 * Brings database and journal to hold the same: each gets what it lacks of the other.
 *
 * @returns how many entries the database had lost
 */
export async function evenOut(use: Connection['use'], journal: Journal): Promise<Evened> {
  const found = await journal.summary();
  const summary = found && (await withoutNotes(use, journal, found));
  if (!found || !summary) return { restored: 0, both: false, values: false };
  const values = found !== summary;
  const difference = await use((db) => missingRows(db, summary), 'long');
  const theirs = difference.same ? [] : await journal.rows();
  if (!theirs) return { restored: 0, both: false, values };
  const restored = difference.same ? 0 : await use((db) => restore(db, theirs), 'long');
  const noted = summary.settings.some(([key]) => key === aloneNote);
  const rows: readonly Row[] = noted ? [['settings', aloneNote, null]] : [];
  const both = await added(journal, [...difference.rows(theirs), ...rows]);
  if (both) await use((db) => forget(db));
  return { restored, both, values };
}

const added = async (journal: Journal, rows: readonly Row[]): Promise<boolean> =>
  rows.length === 0 || journal.append(rows);
