import type { DBSchema, IDBPDatabase, IDBPTransaction, StoreNames } from 'idb';
import type { Entry, Json } from '../job/entry';
import type { Aside } from '../job/rows';
import type { Pack } from './pack';

/** What is kept on the phone. */
export type Schema = DBSchema & {
  jobs: { key: string; value: { readonly id: string; readonly made: string } };
  /** Entries of the log that stand single: the newest, and those of places read by themselves. */
  entries: {
    key: [string, string, number];
    value: Entry;
    indexes: { byCount: [string, number]; byPath: [string, string] };
  };
  packs: { key: [string, number, number]; value: Pack; indexes: { byTo: [string, number] } };
  settings: { key: string; value: Json };
  shop: { key: string; value: string };
  aside: { key: number; value: Aside };
  /** Bytes of pictures, by job and hash: see `pictures/`. */
  pictures: { key: string; value: ArrayBuffer };
};

type Step = (
  db: IDBPDatabase<Schema>,
  tx: IDBPTransaction<Schema, StoreNames<Schema>[], 'versionchange'>,
) => void;

/**
 * Upgrade steps, synchronous, only ever added, never edited: step k makes version k + 1 of version k.
 * A name once retired is never used again.
 */
export const steps: readonly Step[] = [
  (db) => {
    db.createObjectStore('jobs', { keyPath: 'id' });
    const log = db.createObjectStore('log' as 'entries', { keyPath: ['job', 'device', 'count'] });
    log.createIndex('byCount', ['job', 'count']);
    log.createIndex('byPath', ['job', 'path']); // edits alone have a path: names of all jobs without all logs
    db.createObjectStore('settings');
    db.createObjectStore('shop');
    db.createObjectStore('aside', { keyPath: 'id', autoIncrement: true });
  },
  // entries have `over`: no store changes, but code of version 1 cannot read them and must not try
  () => undefined,
  // old entries are packed, in ordinary transactions later; code of version 2 would show what is single as the whole
  (db, tx) => {
    tx.objectStore('log' as 'entries').name = 'entries';
    db.createObjectStore('packs', { keyPath: ['job', 'no', 'size'] }).createIndex('byTo', ['job', 'to']);
  },
  (db) => void db.createObjectStore('pictures'),
];

export const schemaVersion = steps.length;
