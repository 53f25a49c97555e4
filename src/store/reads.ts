import type { IDBPIndex, StoreNames } from 'idb';
import type { Entry } from '../job/entry';
import { notesIn } from '../job/install';
import { fold, inOrder } from '../job/log';
import { readEntry } from '../job/rows';
import { type Database, saveError } from './db';
import type { Schema } from './migrations';
import { behindKey } from './own-keys';
import { reading, sent, strict, whole } from './whole';

export type JobLine = {
  readonly id: string;
  readonly name: string;
  readonly place: string;
  readonly deleted?: string;
  /** Notes for next time, where there are any. */
  readonly next?: readonly string[];
  /** When it was last written to, ISO 8601. */
  readonly last: string;
};

export type Loaded = { readonly entries: readonly Entry[]; readonly setAside: number };

/** A job's rows by count, and by key: the second also finds a row with a damaged count. */
export const byCount = (job: string, from = 0) =>
  IDBKeyRange.bound([job, from], [job, Number.POSITIVE_INFINITY]);
export const byKey = (job: string) => IDBKeyRange.bound([job], [job, []]);

/**
 * The whole log of a job, in order; rows that cannot be read are moved out of it, whole. On a full disk they stay
 * where they are, left out and counted all the same: the job opens.
 */
export async function load(db: Database, job: string): Promise<Loaded> {
  const rows: unknown[] = await reading(db.transaction('log')).store.getAll(byKey(job));
  const entries: Entry[] = [];
  const bad: Bad[] = [];
  for (const row of rows) {
    const read = readEntry(row);
    if ('entry' in read) entries.push(read.entry);
    else bad.push({ row, why: read.why });
  }
  if (bad.length > 0) await setAside(db, job, bad).catch(unlessFull);
  return { entries: entries.sort(inOrder), setAside: bad.length };
}

function unlessFull(error: unknown): void {
  if (saveError(error).code !== 'full') throw error;
}

type Bad = { readonly row: unknown; readonly why: string };

/** Moves rows that cannot be read out of the log, in one transaction (D13). */
async function setAside(db: Database, job: string, bad: readonly Bad[]): Promise<void> {
  const tx = db.transaction(['log', 'aside', 'settings'], 'readwrite', strict);
  const [log, aside] = [tx.objectStore('log'), tx.objectStore('aside')];
  await whole(tx, async () => {
    // the journal may have them whole
    sent(tx.objectStore('settings').put(true, behindKey));
    for (const { row, why } of bad) {
      const { device, count } = row as Entry;
      const key: [string, string, number] = [job, device, count];
      // another page that loads the same job may have moved it already
      if ((await log.getKey(key)) === undefined) continue;
      sent(aside.add({ from: job, why, row }));
      sent(log.delete(key));
    }
  });
}

/** Entries of a job from a count on; the rest of the rows wait for the next `load`. */
export async function since(db: Database, job: string, count: number): Promise<readonly Entry[]> {
  return readable(await reading(db.transaction('log')).store.index('byCount').getAll(byCount(job, count)));
}

/** Those of some rows that can be read. */
export const readable = (rows: readonly unknown[]): readonly Entry[] =>
  rows.flatMap((row) => {
    const read = readEntry(row);
    return 'entry' in read ? [read.entry] : [];
  });

type ByPath = IDBPIndex<Schema, StoreNames<Schema>[], 'log', 'byPath', IDBTransactionMode>;

/** The value that stands at a path of a job, when it is a text. */
export async function textAt(index: ByPath, job: string, path: string): Promise<string> {
  const found = fold(readable(await index.getAll([job, path]))).values.get(path);
  return typeof found === 'string' ? found : '';
}

/** Notes of a job for next time, from the rows of their paths alone. */
async function notesAt(index: ByPath, job: string): Promise<Pick<JobLine, 'next'>> {
  // `0` comes right after `/`
  const rows = await index.getAll(IDBKeyRange.bound([job, 'next/'], [job, 'next0']));
  return nextOf(readable(rows));
}

/** Notes for next time among entries, where there are any. */
export function nextOf(entries: readonly Entry[]): Pick<JobLine, 'next'> {
  const next = notesIn(fold(entries).values);
  return next.length > 0 ? { next } : {};
}

/** What a line of the list says of a job. */
export const lineFields: readonly string[] = ['name', 'place', 'deleted'];

/** Every job, the one last written to first, without reading whole logs. */
export async function listJobs(db: Database): Promise<readonly JobLine[]> {
  const tx = reading(db.transaction(['jobs', 'log']));
  const all = await tx.objectStore('jobs').getAll();
  const log = tx.objectStore('log');
  const paths = log.index('byPath') as unknown as ByPath;
  const lines = await Promise.all(
    all.map(async ({ id, made }): Promise<JobLine> => {
      const newest = await log.index('byCount').openCursor(byCount(id), 'prev');
      const texts = lineFields.map((path) => textAt(paths, id, path));
      const [name = '', place = '', deleted = ''] = await Promise.all(texts);
      const at: unknown = newest?.value.at; // not read through: it may be damaged
      const last = typeof at === 'string' ? at : made;
      const next = await notesAt(paths, id);
      return { id, name, place, last, ...next, ...(deleted ? { deleted } : {}) };
    }),
  );
  return lastFirst(lines);
}

/** The job last written to first. */
export const lastFirst = (lines: readonly JobLine[]): readonly JobLine[] =>
  [...lines].sort((a, b) => (a.last === b.last ? 0 : a.last < b.last ? 1 : -1));
