import type { Entry } from '../job/entry';
import { fold, inOrder } from '../job/log';
import { notesIn } from '../job/notes-in';
import type { Database } from './db';
import {
  keptRows,
  lineFields,
  newestRow,
  noteRows,
  type Reading,
  readingLog,
  rowsAt,
  rowsSince,
} from './log-rows';
import { type Bad, readPack, readRows } from './read-rows';
import { atOnce } from './whole';

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

/** A log as it was read, with the single rows of it that cannot be read, and how many of them there are in all. */
type ReadLog = { readonly entries: readonly Entry[]; readonly single: readonly Bad[]; readonly bad: number };

/** The whole log of a job, in order. */
export async function readLog(db: Database, job: string): Promise<ReadLog> {
  const kept = await keptRows(readingLog(db), job);
  const packed = kept.packs.map(readPack);
  const single = readRows(kept.single);
  return {
    entries: [...packed, single].flatMap(({ good }) => good).sort(inOrder),
    single: single.bad,
    bad: packed.reduce((sum, { bad }) => sum + bad.length, single.bad.length),
  };
}

/** Entries of a job from a count on; the rest of the rows wait for the next `load`. */
export async function since(db: Database, job: string, count: number): Promise<readonly Entry[]> {
  return readable(await rowsSince(readingLog(db), job, count));
}

/** Those of some rows that can be read. */
export const readable = (rows: readonly unknown[]): readonly Entry[] => readRows(rows).good;

/** The value that stands at a path of a job, when it is a text. */
export async function textAt(tx: Reading, job: string, path: string): Promise<string> {
  const found = fold(readable(await rowsAt(tx, job, path))).values.get(path);
  return typeof found === 'string' ? found : '';
}

/** Notes for next time among entries, where there are any. */
export function nextOf(entries: readonly Entry[]): Pick<JobLine, 'next'> {
  const next = notesIn(fold(entries).values);
  return next.length > 0 ? { next } : {};
}

/** Every job, the one last written to first, without reading whole logs. */
export async function listJobs(db: Database): Promise<readonly JobLine[]> {
  const tx = readingLog(db, 'jobs');
  const all = await tx.objectStore('jobs').getAll();
  const lines = await Promise.all(
    all.map(async ({ id, made }): Promise<JobLine> => {
      const [newest, notes, ...texts] = await atOnce<[unknown, readonly unknown[], ...string[]]>(
        () => newestRow(tx, id),
        () => noteRows(tx, id),
        ...lineFields.map((path) => () => textAt(tx, id, path)),
      );
      const [name = '', place = '', deleted = ''] = texts;
      const at: unknown = (newest as Partial<Entry> | undefined)?.at; // not read through: it may be damaged
      const last = typeof at === 'string' ? at : made;
      const next = nextOf(readable(notes));
      return { id, name, place, last, ...next, ...(deleted ? { deleted } : {}) };
    }),
  );
  return lastFirst(lines);
}

/** The job last written to first. */
export const lastFirst = (lines: readonly JobLine[]): readonly JobLine[] =>
  [...lines].sort((a, b) => (a.last === b.last ? 0 : a.last < b.last ? 1 : -1));
