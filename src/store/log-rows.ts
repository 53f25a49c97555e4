import type { IDBPTransaction, StoreNames } from 'idb';
import type { Entry } from '../job/entry';
import type { Database } from './db';
import { rowKey } from './journal/row';
import type { Schema } from './migrations';
import { type Pack, rowsIn } from './pack';
import { atOnce, reading, strict } from './whole';

// A log is kept in two stores: old entries packed, many to a row, and the newest single. This file and
// `log-keys.ts` alone know in which of the two an entry stands; `pack-up.ts` moves them.

type Names = StoreNames<Schema>[];
export type Reading = IDBPTransaction<Schema, Names, IDBTransactionMode>;
export type Writing = IDBPTransaction<Schema, Names, 'readwrite'>;

const logStores: Names = ['entries', 'packs'];

/** A transaction on the logs and more stores, that only reads. */
export const readingLog = (db: Database, ...more: Names): Reading =>
  reading(db.transaction([...logStores, ...more]));

/** A transaction on the logs and more stores, that writes. */
export const writingLog = (db: Database, ...more: Names): Writing =>
  db.transaction([...logStores, ...more], 'readwrite', strict);

/** Rows of a job by key, in either store; this also finds a row with a damaged count. */
export const byKey = (job: string) => IDBKeyRange.bound([job], [job, []]);
export const byCount = (job: string, from = 0) =>
  IDBKeyRange.bound([job, from], [job, Number.POSITIVE_INFINITY]);

/** The rows of a log as they are kept, unread. */
type KeptRows = { readonly packs: readonly Pack[]; readonly single: readonly unknown[] };

/** @param job one job; all, unless told */
export async function keptRows(tx: Reading, job?: string): Promise<KeptRows> {
  const range = job === undefined ? undefined : byKey(job);
  const [packs, single] = await atOnce(
    () => tx.objectStore('packs').getAll(range),
    () => tx.objectStore('entries').getAll(range),
  );
  return { packs, single };
}

/** All rows, of those packs that can be read. */
export const unpacked = ({ packs, single }: KeptRows): readonly unknown[] => [
  ...packs.flatMap((pack) => rowsIn(pack) ?? []),
  ...single,
];

/** Rows of a job from a count on. */
export async function rowsSince(tx: Reading, job: string, count: number): Promise<readonly unknown[]> {
  const range = byCount(job, count);
  const packs = await tx.objectStore('packs').index('byTo').getAll(range);
  const single = await tx.objectStore('entries').index('byCount').getAll(range);
  return [...unpacked({ packs, single: [] }).filter((row) => (row as Entry).count >= count), ...single];
}

/** Places that are read by themselves, without the log: their entries stay single. */
export const isReadAlone = (path: string): boolean => lineFields.includes(path) || path.startsWith('next/');

/** What a line of the list says of a job, but for its notes for next time. */
export const lineFields: readonly string[] = ['name', 'place', 'deleted'];

/** Rows of a job at one path. */
export async function rowsAt(tx: Reading, job: string, path: string): Promise<readonly unknown[]> {
  const single = await tx.objectStore('entries').index('byPath').getAll([job, path]);
  if (isReadAlone(path)) return single;
  const packs = await tx.objectStore('packs').getAll(byKey(job));
  const isHere = (row: unknown) => (row as Partial<{ path: unknown }>).path === path;
  return [...unpacked({ packs, single: [] }).filter(isHere), ...single];
}

/** Rows of a job's notes for next time. */
export const noteRows = (tx: Reading, job: string): Promise<readonly unknown[]> =>
  // `0` comes right after `/`
  tx
    .objectStore('entries')
    .index('byPath')
    .getAll(IDBKeyRange.bound([job, 'next/'], [job, 'next0']));

/** The row of the greatest count of a job; it may be damaged. It is always single. */
export async function newestRow(tx: Reading, job: string): Promise<unknown> {
  const cursor = await tx.objectStore('entries').index('byCount').openCursor(byCount(job), 'prev');
  return cursor?.value;
}

/** The greatest count of a job; 0 where it has no entry. */
export async function greatestCount(tx: Reading, job: string): Promise<number> {
  const cursor = await tx.objectStore('entries').index('byCount').openKeyCursor(byCount(job), 'prev');
  return cursor ? Number((cursor.key as [string, number])[1]) : 0;
}

/** The row that stands where this entry would. */
export async function rowOf(tx: Reading, { job, device, count }: Entry): Promise<unknown> {
  const single: unknown = await tx.objectStore('entries').get([job, device, count]);
  if (single !== undefined) return single;
  const packs = await tx.objectStore('packs').index('byTo').getAll(byCount(job, count));
  const key = rowKey({ job, device, count });
  return unpacked({ packs, single: [] }).find((row) => rowKey(row as Entry) === key);
}

/** Whether there is no entry at all. */
export const isEmpty = async (tx: Reading): Promise<boolean> =>
  (await tx.objectStore('entries').openKeyCursor()) === null &&
  (await tx.objectStore('packs').openKeyCursor()) === null;
