import 'fake-indexeddb/auto';
import { IDBFactory as Factory } from 'fake-indexeddb';
import { afterEach, beforeEach } from 'vitest';
import { editJob } from '../../src/job/edits';
import type { Change } from '../../src/job/entry';
import { fold } from '../../src/job/log';
import type { Journal } from '../../src/store/journal/journal';
import { openStore, type Store } from '../../src/store/store';
import { type Faults, failAt } from './faults';
import type { MemoryFolder } from './journal/memory-folder';
import { memoryJournal } from './journal/memory-journal';

export const at = '2026-11-25T10:00:00.000Z';
export const tick = (op: string): Change => ({ kind: 'tick', op: `cut/b1/${op}/1`, figure: '3/4' });
let ids = 0;
let moments = 0;
/** A clock that goes on. */
export const now = () => new Date(Date.parse(at) + ++moments).toISOString();
let faults: Faults | undefined;

/** A new phone for every test. */
export function eachAnew(): void {
  beforeEach(() => {
    globalThis.indexedDB = new Factory();
  });
  afterEach(() => faults?.clear());
}

export async function openWith(journal: Journal | undefined, patience = 3000): Promise<Store> {
  const opened = await openStore({ randomId: () => `id${++ids}`, now, patience, journal });
  if (!opened.ok) throw new Error(opened.error.code);
  return opened.value;
}
export const open = (folder?: MemoryFolder, patience?: number) =>
  openWith(folder && memoryJournal(folder), patience);

export async function begun(folder?: MemoryFolder): Promise<Store> {
  const store = await open(folder);
  await store.makeJob({ job: 'j1', label: 'New', changes: editJob({ name: 'Case' }) });
  await store.load('j1');
  return store;
}

export const cut = (store: Store, op: string) => store.append({ job: 'j1', label: op, changes: [tick(op)] });
export const ticks = async (store: Store) =>
  [...fold((await store.load('j1')).entries).ticks.keys()].map((op) => op.split('/')[2]).sort();

/** While the database takes nothing. */
export async function broken<T>(work: () => Promise<T>): Promise<T> {
  faults = failAt(0, 'closed', true);
  const done = await work();
  faults.clear();
  return done;
}

/** While it is read and takes nothing. */
export async function refusing(work: () => Promise<void>): Promise<void> {
  const { add, put } = IDBObjectStore.prototype;
  const no = () => {
    throw new DOMException('no', 'UnknownError');
  };
  Object.assign(IDBObjectStore.prototype, { add: no, put: no });
  await work().finally(() => Object.assign(IDBObjectStore.prototype, { add, put }));
}

/** The first transaction ends before its time. */
export async function brokenOffOnce(work: () => Promise<unknown>): Promise<void> {
  const own = IDBDatabase.prototype.transaction;
  let first = true;
  IDBDatabase.prototype.transaction = function transaction(...args) {
    const tx = own.apply(this, args);
    if (first) queueMicrotask(() => tx.abort());
    first = false;
    return tx;
  };
  await work().finally(() => {
    IDBDatabase.prototype.transaction = own;
  });
}

export const reopened = async (folder: MemoryFolder) => {
  const store = await open(folder);
  await store.evenOut();
  return store;
};

/**
 * Seven starts of the app a week apart, with work in another job: what was deleted before the first may go at the
 * last after them.
 */
export async function aging(store: Store, last: string): Promise<void> {
  const week = 7 * 24 * 3600 * 1000;
  for (let k = 7; k > 0; k -= 1) {
    await store.purge(new Date(Date.parse(last) - k * week).toISOString());
    const changes = Array.from({ length: 5 }, (_, n) => tick(`w${k}${n}`));
    await store.append({ job: 'elsewhere', label: 'Cut', changes });
  }
}
export async function purged(store: Store, last: string): Promise<void> {
  await aging(store, last);
  await store.purge(last);
}
