import type { Connection, Database } from '../db';
import type { Json } from '../entry';
import { reading, sent, strict, whole } from '../whole';
import type { Journal, Summary } from './journal';
import { aloneNote, behindKey, behindOf, isBehind, isNote, notedValue, reserveKey } from './notes';
import { restore, stores, withoutId } from './restore';
import { keptOf, type Row, rowKey, type Sum, sumOf } from './row';

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
      key !== reserveKey && !isBehind(key) && known.get(key) !== JSON.stringify(value)
        ? [[name, key, value]]
        : [],
    ),
    ...gone.map((key): Row => [name, key, null]),
  ];
}

/** A value the journal took alone, and when. */
type Noted = {
  readonly note: string;
  readonly store: 'settings' | 'shop';
  readonly key: string;
  readonly at: string;
  readonly value: Json;
};

function notedIn({ settings, shop }: Summary): readonly Noted[] {
  return settings.flatMap(([note, at]) => {
    const of = notedValue(note);
    if (!of) return [];
    const [, value = null] = (of.store === 'shop' ? shop : settings).find(([own]) => own === of.key) ?? [];
    return [{ note, ...of, at: String(at), value }];
  });
}

/** Values the journal took alone are written to the database; then nothing is noted any more. */
async function withoutNotes(use: Connection['use'], journal: Journal, noted: readonly Noted[]) {
  if (noted.length === 0) return;
  await use((db) => takeValues(db, noted));
  await journal.append(noted.map(({ note }): Row => ['settings', note, null]));
}

/** But for those the database took a newer word of while the journal was away. */
async function takeValues(db: Database, noted: readonly Noted[]): Promise<void> {
  const tx = db.transaction(['settings', 'shop'], 'readwrite', strict);
  await whole(tx, async () => {
    for (const { store: name, key, at, value } of noted) {
      const later = await tx.objectStore('settings').get(behindOf(name, key));
      if (typeof later === 'string' && later > at) continue;
      const store = tx.objectStore(name);
      sent(value === null ? store.delete(key) : store.put(value as string, key));
    }
  });
}

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
    for (const key of await tx.store.getAllKeys()) if (isBehind(key)) sent(tx.store.delete(key));
  });
}

/**
 * Brings database and journal to hold the same: each gets what it lacks of the other.
 *
 * @param show is called with what is on its way into the database, before it is written there
 * @returns how many entries the database had lost
 */
export async function evenOut(
  use: Connection['use'],
  journal: Journal,
  show: (rows: readonly Row[]) => void,
): Promise<Evened> {
  const found = await journal.summary();
  const noted = found ? notedIn(found) : [];
  const values = noted.length > 0;
  const coming = noted.map(({ store, key, value }): Row => [store, key, value]);
  show(coming);
  await withoutNotes(use, journal, noted);
  const summary = values ? await journal.summary() : found;
  if (!summary) return { restored: 0, both: false, values };
  const difference = await use((db) => missingRows(db, summary), 'long');
  const theirs = difference.same ? [] : await journal.rows();
  if (!theirs) return { restored: 0, both: false, values };
  show([...coming, ...theirs.filter(([kind]) => kind === 'log' || kind === 'aside')]);
  const restored = difference.same ? 0 : await use((db) => restore(db, theirs), 'long');
  const alone = summary.settings.some(([key]) => key === aloneNote);
  const rows: readonly Row[] = alone ? [['settings', aloneNote, null]] : [];
  const both = await added(journal, [...difference.rows(theirs), ...rows]);
  if (both) await use((db) => forget(db));
  return { restored, both, values };
}

const added = async (journal: Journal, rows: readonly Row[]): Promise<boolean> =>
  rows.length === 0 || journal.append(rows);
