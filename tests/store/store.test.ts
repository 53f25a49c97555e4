import 'fake-indexeddb/auto';
import { IDBFactory } from 'fake-indexeddb';
import { openDB } from 'idb';
import { beforeEach, describe, expect, test, vi } from 'vitest';
import { inches } from '../../src/length/length';
import type { Change } from '../../src/store/entry';
import { editJob } from '../../src/store/job';
import { fold } from '../../src/store/log';
import { schemaVersion } from '../../src/store/migrations';
import { openStore, type Store } from '../../src/store/store';
import { versionOne } from './version-one';

let ids = 0;
beforeEach(() => {
  globalThis.indexedDB = new IDBFactory();
});

async function open(name = 'test', over: { readonly onGone?: () => void } = {}): Promise<Store> {
  const store = await openStore({
    name,
    randomId: () => `id${++ids}`,
    now: () => '2026-11-25T10:00:00.000Z',
    ...over,
  });
  if (!store.ok) throw new Error(store.error.code);
  return store.value;
}

const tick = (op: string): Change => ({ kind: 'tick', op: `cut/b1/${op}/1`, figure: '3/4' });

describe('append', () => {
  test('what was acknowledged is there after the app is closed and opened', async () => {
    const store = await open();
    await store.makeJob({ job: 'j1', label: 'New', changes: editJob({ name: 'Case' }) });
    const done = await store.append({ job: 'j1', label: 'Cut', changes: [tick('s1'), tick('s2')] });
    expect(done.ok && done.value.map((e) => [e.count, e.act])).toEqual([
      [2, `${store.device}.2`],
      [3, `${store.device}.2`],
    ]);
    store.close();
    const again = await open();
    expect(again.device).toBe(store.device);
    const { entries } = await again.load('j1');
    expect(fold(entries).ticks.size).toBe(2);
    expect((await again.jobs())[0]).toMatchObject({ id: 'j1', name: 'Case' });
  });

  test('two pages writing at once never take the same place and lose nothing', async () => {
    const [a, b] = [await open(), await open()];
    await a.makeJob({ job: 'j1', label: 'New', changes: editJob({ name: 'Case' }) });
    await Promise.all(
      Array.from({ length: 60 }, (_, k) =>
        (k % 2 ? a : b).append({ job: 'j1', label: 'Cut', changes: [tick(`s${k}`)] }),
      ),
    );
    const { entries } = await a.load('j1');
    expect(entries).toHaveLength(61);
    expect(new Set(entries.map((e) => e.count)).size).toBe(61);
    expect(fold(entries).ticks.size).toBe(60);
  });

  test('a page hears of what the other wrote', async () => {
    const [a, b] = [await open(), await open()];
    const heard = vi.fn();
    b.onChange(heard);
    await a.makeJob({ job: 'j1', label: 'New', changes: editJob({ name: 'Case' }) });
    await vi.waitFor(() => expect(heard).toHaveBeenCalledWith('j1'));
    expect(await b.since('j1', 1)).toHaveLength(1);
    a.close();
    b.close();
  });

  test('a full disk shows only when the transaction ends: nothing of the change is kept, and it is said', async () => {
    const store = await open();
    await store.makeJob({ job: 'j1', label: 'New', changes: editJob({ name: 'Case' }) });
    const put = vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(function (
      this: IDBObjectStore,
      value: unknown,
    ) {
      put.mockRestore();
      const request = this.put(value); // succeeds first, as browsers do
      request.onsuccess = () => {
        const tx = request.transaction;
        Object.defineProperty(tx, 'error', { value: new DOMException('no room', 'QuotaExceededError') });
        tx?.abort();
      };
      return request;
    });
    const done = await store.append({ job: 'j1', label: 'Cut', changes: [tick('s1')] });
    expect(done.ok).toBe(false);
    expect((await store.load('j1')).entries).toHaveLength(1);
    expect((await store.append({ job: 'j1', label: 'Cut', changes: [tick('s1')] })).ok).toBe(true); // and it goes on
  });

  test('a connection the phone dropped is opened again', async () => {
    const store = await open();
    await store.makeJob({ job: 'j1', label: 'New', changes: editJob({ name: 'Case' }) });
    const real = IDBDatabase.prototype.transaction;
    const once = vi.spyOn(IDBDatabase.prototype, 'transaction').mockImplementation(function (
      this: IDBDatabase,
      ...args
    ) {
      once.mockRestore();
      void real;
      void args;
      throw new DOMException('The database connection is closing.', 'InvalidStateError');
    });
    expect((await store.append({ job: 'j1', label: 'Cut', changes: [tick('s1')] })).ok).toBe(true);
    expect((await store.load('j1')).entries).toHaveLength(2);
  });
});

describe('load', () => {
  test('a row that cannot be read is set aside whole, never deleted, and counted', async () => {
    const store = await open();
    await store.makeJob({ job: 'j1', label: 'New', changes: editJob({ name: 'Case' }) });
    const db = await openDB('test', schemaVersion);
    const bad = { job: 'j1', device: 'x', count: 7, kind: 'edit', path: 'boards/b1/length', value: 12.5 };
    await db.put('log', bad);
    db.close();
    const loaded = await store.load('j1');
    expect([loaded.entries.length, loaded.setAside]).toEqual([1, 1]);
    expect((await store.aside())[0]).toMatchObject({ from: 'j1', row: bad });
    expect((await store.load('j1')).setAside).toBe(0);
  });
});

describe('opening', () => {
  test('the database of version 1, as shipped, opens and reads', async () => {
    await versionOne('test');
    const store = await open();
    const { entries, setAside } = await store.load('cabinet');
    expect([entries.length, setAside]).toEqual([3, 0]);
    expect(fold(entries).values.get('boards/side/length')).toBe('257/4');
    expect(fold(entries).ticks.get('cut/side/r1~1~p1/left')?.figure).toBe('53/4');
    expect((await store.shop()).kerf).toEqual(inches(5n, 64n));
    expect(await store.setting('theme')).toBe('blued');
    expect(store.device).toBe('phone1');
  });

  test('a database of a newer version is refused and left as it is', async () => {
    const newer = await openDB('test', schemaVersion + 1, {
      upgrade: (db) => void db.createObjectStore('later').put('kept', 'x'),
    });
    newer.close();
    const store = await openStore({ name: 'test', randomId: () => 'x', now: () => '' });
    expect(!store.ok && store.error.code).toBe('newer-database');
    const still = await openDB('test', schemaVersion + 1);
    expect(await still.get('later', 'x')).toBe('kept');
    still.close();
  });

  test('an older page lets a newer one upgrade, and is told', async () => {
    const gone = vi.fn();
    await open('test', { onGone: gone });
    const newer = await openDB('test', schemaVersion + 1, {
      upgrade: (db) => void db.createObjectStore('later'),
    });
    expect(gone).toHaveBeenCalled();
    newer.close();
  });

  test('a page that does not let go is named within a few seconds', async () => {
    const stubborn = await openDB('blocked', 1, { upgrade: () => undefined });
    const clearing = indexedDB.deleteDatabase('blocked'); // waits for the page that does not close
    const store = await openStore({ name: 'blocked', randomId: () => 'x', now: () => '' });
    expect(!store.ok && store.error.code).toBe('blocked');
    stubborn.close();
    await new Promise((done) => {
      clearing.onsuccess = done;
    });
  }, 10_000);
});

describe('jobs', () => {
  test('a deleted job is listed as such, comes back, and is purged only when old', async () => {
    const store = await open();
    await store.makeJob({ job: 'j1', label: 'New', changes: editJob({ name: 'Case' }) });
    await store.append({
      job: 'j1',
      label: 'Deleted',
      changes: editJob({ deleted: '2026-11-01T00:00:00.000Z' }),
    });
    expect((await store.jobs())[0]?.deleted).toBe('2026-11-01T00:00:00.000Z');
    await store.purge('2026-10-26T00:00:00.000Z');
    expect(await store.jobs()).toHaveLength(1);
    await store.append({ job: 'j1', label: 'Back', changes: editJob({ deleted: undefined }) });
    await store.purge('2027-10-26T00:00:00.000Z');
    expect((await store.jobs())[0]?.deleted).toBeUndefined();
    await store.append({
      job: 'j1',
      label: 'Deleted',
      changes: editJob({ deleted: '2026-11-01T00:00:00.000Z' }),
    });
    await store.purge('2027-10-26T00:00:00.000Z');
    expect(await store.jobs()).toHaveLength(0);
    expect((await store.load('j1')).entries).toHaveLength(0);
  });
});
