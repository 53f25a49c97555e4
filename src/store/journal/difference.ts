import { canonical } from '../../job/canonical';
import type { Entry } from '../../job/entry';
import type { Aside } from '../../job/rows';
import type { Connection, Database } from '../db';
import { countOf, keysIn } from '../log-keys';
import { keptRows, type Reading, readingLog, unpacked } from '../log-rows';
import { aloneKey, behindKey } from '../own-keys';
import { evenValues, stampedIn, type ValueRow, type ValueStore, type Values } from '../values';
import { sent, strict, whole } from '../whole';
import type { Journal, Summary } from './journal';
import { keptOf, type Sum, sumOf } from './kept-rows';
import { restore, withoutId } from './restore';
import { type Row, rowKey } from './row';

/** How the copies differ. */
type Difference = {
  /** Settings and figures of which the other copy has the later value. */
  readonly toDatabase: readonly ValueRow[];
  readonly toJournal: readonly ValueRow[];
  /** Given the journal's rows: log rows and rows set aside that each copy lacks; undefined when both hold the same. */
  readonly rows: ((theirs: readonly Row[]) => Lacking) | undefined;
  /** The value of `behindKey`. */
  readonly noted: unknown;
};

type Lacking = { readonly toDatabase: readonly Row[]; readonly toJournal: readonly Row[] };

/** Compares counts and keys, and says what each copy lacks of the other. */
async function differenceOf(db: Database, summary: Summary): Promise<Difference> {
  const tx = readingLog(db, 'jobs', 'settings', 'shop', 'aside');
  const ours = await stampedIn(tx);
  const [settings, shop] = [
    evenValues('settings', ours.settings, asNoted('settings', summary)),
    evenValues('shop', ours.shop, asNoted('shop', summary)),
  ];
  const values = {
    toDatabase: [...settings.toDatabase, ...shop.toDatabase],
    toJournal: [...settings.toJournal, ...shop.toJournal],
  };
  const noted = await tx.objectStore('settings').get(behindKey);
  const behind = noted !== undefined;
  const alone = (summary.settings.get(aloneKey)?.value ?? null) !== null;
  const asides: readonly Aside[] = await tx.objectStore('aside').getAll();
  const jobs = new Set(await tx.objectStore('jobs').getAllKeys());
  const same = !behind && (await holdsThe(tx, summary.sum, { asides, jobs, whole: alone }));
  if (same) return { ...values, noted, rows: undefined };
  const entries = unpacked(await keptRows(tx)) as readonly Entry[];
  return { ...values, noted, rows: (theirs) => lackingOf(entries, asides, theirs) };
}

/**
 * Lines of an earlier version have no moment. A note (`alone/…`) marks those the database did not take: they are later.
 */
function asNoted(of: ValueStore, summary: Summary): Values {
  const isNoted = (key: string) => (summary.settings.get(`alone/${of}/${key}`)?.value ?? null) !== null;
  return new Map(
    [...summary[of]].map(([key, now]) => [key, now.at === '' && isNoted(key) ? { ...now, at: '0' } : now]),
  );
}

function lackingOf(entries: readonly Entry[], asides: readonly Aside[], theirs: readonly Row[]): Lacking {
  const kept = keptOf(theirs);
  const have = new Set(entries.map(rowKey));
  const away = new Set(asides.map(({ row }) => canonical(row)));
  return {
    toDatabase: [
      ...[...kept.log].flatMap(([key, entry]): Row[] =>
        have.has(key) || (away.size > 0 && away.has(canonical(entry))) ? [] : [['log', entry]],
      ),
      ...[...kept.aside.values()].flatMap((one): Row[] =>
        away.has(canonical(one.row)) ? [] : [['aside', one]],
      ),
    ],
    toJournal: [
      ...entries.flatMap((entry): Row[] => (kept.log.has(rowKey(entry)) ? [] : [['log', entry]])),
      ...asides.flatMap((one): Row[] =>
        kept.aside.has(JSON.stringify(one.row)) ? [] : [['aside', withoutId(one)]],
      ),
    ],
  };
}

/**
 * Logs so long are compared by their count alone, unless one copy is known to have taken something without the other:
 * reading every key would hold the screen up.
 */
const long = 20_000;

type Ours = {
  readonly asides: readonly Aside[];
  readonly jobs: ReadonlySet<string>;
  readonly whole: boolean;
};

/** Whether both logs have the same count and keys. Rows set aside count with the log: the journal has them in it. */
async function holdsThe(tx: Reading, sum: Sum, { asides, jobs, whole }: Ours): Promise<boolean> {
  const count = await countOf(tx);
  const moved = asides.filter(({ from }) => jobs.has(from)).flatMap(({ row }) => keyOfRow(row));
  if (moved.length === 0 && (count !== sum.count || (count > long && !whole))) return count === sum.count;
  const found = sumOf(new Set([...(await keysIn(tx)), ...moved]));
  return found.count === sum.count && found.hash === sum.hash;
}

function keyOfRow(row: unknown): readonly string[] {
  const { job, device, count } = (row ?? {}) as Partial<Entry>;
  const is = typeof job === 'string' && typeof device === 'string' && typeof count === 'number';
  return is ? [rowKey({ job, device, count })] : [];
}

type Evened = {
  /** Entries the database had lost. */
  readonly restored: number;
  readonly both: boolean;
  /** Figures or settings came into the database that the journal had taken alone. */
  readonly values: boolean;
};

/** Takes away the note that the journal lacks rows, unless another page has written it anew since. */
async function forget(db: Database, seen: unknown): Promise<void> {
  const tx = db.transaction('settings', 'readwrite', strict);
  await whole(tx, async () => {
    const noted = await tx.store.get(behindKey);
    if (noted === seen) sent(tx.store.delete(behindKey));
  });
}

type Evening = {
  readonly connection: Connection;
  readonly journal: Journal;
  /** Called with what is on its way into the database, before it is written there. */
  readonly show: (rows: readonly Row[]) => void;
};

/**
 * Brings database and journal to hold the same: each gets what it lacks of the other, and of a value both have the
 * later stands in both (D9).
 */
export async function evenOut({ connection, journal, show }: Evening): Promise<Evened> {
  const summary = await journal.summary();
  if (!summary) return { restored: 0, both: false, values: false };
  const difference = await connection.use((db) => differenceOf(db, summary), 'long');
  const theirs = difference.rows ? await journal.rows() : [];
  if (!theirs) return { restored: 0, both: false, values: false };
  const logs = difference.rows?.(theirs) ?? { toDatabase: [], toJournal: [] };
  const coming = [...difference.toDatabase, ...logs.toDatabase];
  show(coming);
  const restored = coming.length === 0 ? 0 : await connection.write((db) => restore(db, coming), 'long');
  const note = summary.settings.get(aloneKey);
  const alone: readonly Row[] = note?.value ? [['settings', aloneKey, null, note.at]] : [];
  const both = await added(journal, [...difference.toJournal, ...logs.toJournal, ...alone]);
  if (both) await connection.write((db) => forget(db, difference.noted));
  return { restored, both, values: difference.toDatabase.length > 0 };
}

const added = async (journal: Journal, rows: readonly Row[]): Promise<boolean> =>
  rows.length === 0 || journal.append(rows);
