import 'fake-indexeddb/auto';
import { IDBFactory } from 'fake-indexeddb';
import { deleteDB, openDB } from 'idb';
import { beforeEach, describe, expect, test, vi } from 'vitest';
import { editBoard, editJob } from '../../src/job/edits';
import type { Change } from '../../src/job/entry';
import { asideOf, compareWith } from '../../src/job/file';
import { fold } from '../../src/job/log';
import { undoable, undoOf } from '../../src/job/undo';
import { inches } from '../../src/length/length';
import { frozen } from '../../src/store/journal/starting';
import { schemaVersion } from '../../src/store/migrations';
import { openStore, type Store } from '../../src/store/store';
import { memoryFolder } from './journal/memory-folder';
import { memoryJournal } from './journal/memory-journal';
import { purged } from './page-of-phone';
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
  test('D1: what was acknowledged is there after the app is closed and opened', async () => {
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

  test('D3: two pages writing at once never take the same place and lose nothing', async () => {
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

  test('D4: a full disk shows only when the transaction ends: nothing of the change is kept, and it is said', async () => {
    const store = await open();
    await store.makeJob({ job: 'j1', label: 'New', changes: editJob({ name: 'Case' }) });
    const add = vi.spyOn(IDBObjectStore.prototype, 'add').mockImplementation(function (
      this: IDBObjectStore,
      value: unknown,
    ) {
      add.mockRestore();
      const request = this.add(value); // succeeds first, as browsers do
      request.onsuccess = () => {
        const tx = request.transaction;
        Object.defineProperty(tx, 'error', { value: new DOMException('no room', 'QuotaExceededError') });
        tx?.abort();
      };
      return request;
    });
    const act = { job: 'j1', label: 'Cut', changes: [tick('s1')] };
    expect(await store.append(act)).toEqual({ ok: false, error: { code: 'full' } });
    expect((await store.load('j1')).entries).toHaveLength(1);
    expect((await store.append(act)).ok).toBe(true); // and it goes on
  });

  test('a full disk is said of a new job, a file taken in and a setting too', async () => {
    const store = await open();
    const noRoom = () => {
      throw new DOMException('no room', 'QuotaExceededError');
    };
    const spies = [
      vi.spyOn(IDBObjectStore.prototype, 'add').mockImplementation(noRoom),
      vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(noRoom),
    ];
    const full = { ok: false, error: { code: 'full' } };
    const made = { job: 'j1', label: 'New', changes: editJob({ name: 'Case' }) };
    expect(await store.makeJob(made)).toEqual(full);
    expect(await store.addEntries('j1', [])).toEqual(full);
    expect(await store.keep('theme', 'blued')).toEqual(full);
    expect(await store.keepShop('kerf', inches(1n, 8n))).toEqual(full);
    for (const spy of spies) spy.mockRestore();
    expect(await store.jobs()).toEqual([]);
    expect((await store.makeJob(made)).ok).toBe(true);
  });

  test('a connection the phone dropped is opened again, once for all who wait', async () => {
    const store = await open();
    for (const job of ['j1', 'j2'])
      await store.makeJob({ job, label: 'New', changes: editJob({ name: 'Case' }) });
    const opens = vi.spyOn(indexedDB, 'open');
    const real = IDBDatabase.prototype.transaction;
    let drops = 2;
    const dropped = vi.spyOn(IDBDatabase.prototype, 'transaction').mockImplementation(function (
      this: IDBDatabase,
      ...args
    ) {
      drops -= 1;
      if (drops < 0) return real.apply(this, args);
      throw new DOMException('The database connection is closing.', 'InvalidStateError');
    });
    const done = await Promise.all(
      ['j1', 'j2'].map((job) => store.append({ job, label: 'Cut', changes: [tick('s1')] })),
    );
    dropped.mockRestore();
    expect(done.map(({ ok }) => ok)).toEqual([true, true]);
    expect(opens).toHaveBeenCalledTimes(1);
    for (const job of ['j1', 'j2']) expect((await store.load(job)).entries).toHaveLength(2);
  });

  test('D2: an act that breaks off after its first entry leaves none of it', async () => {
    const store = await open();
    await store.makeJob({ job: 'j1', label: 'New', changes: editJob({ name: 'Case' }) });
    const real = IDBObjectStore.prototype.add;
    let adds = 0;
    const broken = vi.spyOn(IDBObjectStore.prototype, 'add').mockImplementation(function (
      this: IDBObjectStore,
      value: unknown,
    ) {
      adds += 1;
      if (adds === 2) throw new DOMException('no room', 'QuotaExceededError');
      return real.call(this, value);
    });
    const done = await store.append({ job: 'j1', label: 'Cut', changes: [tick('s1'), tick('s2')] });
    broken.mockRestore();
    expect([adds, done.ok]).toEqual([2, false]);
    expect((await store.load('j1')).entries).toHaveLength(1);
  });

  test.each(['AbortError', 'TransactionInactiveError'])(
    'a transaction the phone broke off (%s) is done again, and its act is there once',
    async (name) => {
      const store = await open();
      await store.makeJob({ job: 'j1', label: 'New', changes: editJob({ name: 'Case' }) });
      const add = vi.spyOn(IDBObjectStore.prototype, 'add').mockImplementation(function (
        this: IDBObjectStore,
        value: unknown,
      ) {
        add.mockRestore();
        const request = this.add(value);
        if (name === 'AbortError') request.transaction?.abort();
        else throw new DOMException('not active', name);
        return request;
      });
      const done = await store.append({ job: 'j1', label: 'Cut', changes: [tick('s1')] });
      expect(done.ok).toBe(true);
      expect((await store.load('j1')).entries.map((e) => e.count)).toEqual([1, 2]);
    },
  );

  test('a value that would not read back is refused, not lost at the next opening', async () => {
    const store = await open();
    await store.makeJob({ job: 'j1', label: 'New', changes: editJob({ name: 'Case' }) });
    const tooMany = [...editBoard('b1', { name: 'Side' }), ...editBoard('b1', { copies: 5000 })];
    const done = await store.append({ job: 'j1', label: 'Copies', changes: tooMany });
    expect(done).toMatchObject({ ok: false, error: { code: 'failed' } });
    expect((await store.load('j1')).entries).toHaveLength(1);
    const job = { job: 'No such id', label: 'New', changes: editJob({ name: 'Case' }) };
    expect((await store.makeJob(job)).ok).toBe(false);
    expect(await store.jobs()).toHaveLength(1);
  });

  test('what is taken back stays so, and more can be, after the app is closed and opened', async () => {
    const first = await open();
    await first.makeJob({ job: 'j1', label: 'New', changes: editJob({ name: 'Case' }) });
    await first.append({ job: 'j1', label: 'Named', changes: editJob({ name: 'Tray case' }) });
    await first.append({ job: 'j1', label: 'Cut', changes: [tick('s1')] });
    first.close();
    const states: unknown[] = [];
    for (let k = 0; k < 2; k += 1) {
      const store = await open();
      const { entries } = await store.load('j1');
      const [act] = undoable(entries, store.own);
      if (!act) throw new Error('nothing to take back');
      await store.append({ job: 'j1', label: 'Undo', changes: undoOf(entries, act), undoes: act.act });
      const now = fold((await store.load('j1')).entries);
      states.push([act.label, now.ticks.size, now.values.get('name')]);
      store.close();
    }
    expect(states).toEqual([
      ['Cut', 0, 'Tray case'],
      ['Named', 0, 'Case'],
    ]);
  });

  test('where pages cannot hear each other all is kept the same', async () => {
    vi.stubGlobal('BroadcastChannel', undefined);
    Reflect.deleteProperty(globalThis, 'BroadcastChannel');
    const store = await open();
    vi.unstubAllGlobals();
    store.onChange(() => undefined);
    const made = await store.makeJob({ job: 'j1', label: 'New', changes: editJob({ name: 'Case' }) });
    store.close();
    expect(made.ok).toBe(true);
    expect((await (await open()).load('j1')).entries).toHaveLength(1);
  });

  test('a tick on a job another page has removed for good is not lost from sight', async () => {
    const store = await open();
    const deleted = editJob({ name: 'Case', deleted: '2026-01-01T00:00:00.000Z' });
    await store.makeJob({ job: 'j1', label: 'New', changes: deleted });
    await purged(store, '2027-06-01T00:00:00.000Z');
    expect((await store.jobs()).map(({ id }) => id)).toEqual(['elsewhere']);
    await store.append({ job: 'j1', label: 'Cut', changes: [tick('s1')] });
    expect((await store.jobs()).map(({ id }) => id).sort()).toEqual(['elsewhere', 'j1']);
  });
});

describe('load', () => {
  test('D13: a row that cannot be read is set aside whole, never deleted, and counted', async () => {
    const store = await open();
    await store.makeJob({ job: 'j1', label: 'New', changes: editJob({ name: 'Case' }) });
    const db = await openDB('test', schemaVersion);
    const bad = { job: 'j1', device: 'x', count: 7, kind: 'edit', path: 'boards/b1/length', value: 12.5 };
    await db.put('entries', bad);
    db.close();
    const loaded = await store.load('j1');
    expect([loaded.entries.length, loaded.setAside]).toEqual([1, 1]);
    expect((await store.aside())[0]).toMatchObject({ from: 'j1', row: bad });
    expect((await store.load('j1')).setAside).toBe(0);
  });

  test('D13: on a full disk such a row stays where it is, and the job opens without it', async () => {
    const store = await open();
    await store.makeJob({ job: 'j1', label: 'New', changes: editJob({ name: 'Case' }) });
    const db = await openDB('test', schemaVersion);
    await db.put('entries', { job: 'j1', device: 'x', count: 7 });
    const add = vi.spyOn(IDBObjectStore.prototype, 'add').mockImplementation(() => {
      throw new DOMException('no room', 'QuotaExceededError');
    });
    const loaded = await store.load('j1');
    add.mockRestore();
    expect([loaded.entries.length, loaded.setAside]).toEqual([1, 1]);
    expect([await db.count('entries'), await db.count('aside')]).toEqual([2, 0]);
    await store.load('j1');
    expect([await db.count('entries'), await db.count('aside')]).toEqual([1, 1]);
    db.close();
  });

  test('a row whose very place is damaged is found and set aside too, once, whoever loads first', async () => {
    const [a, b] = [await open(), await open()];
    await a.makeJob({ job: 'j1', label: 'New', changes: editJob({ name: 'Case' }) });
    const db = await openDB('test', schemaVersion);
    for (const count of ['7', 2 ** 60]) await db.put('entries', { job: 'j1', device: 'x', count });
    db.close();
    await Promise.all([a.load('j1'), b.load('j1')]);
    expect(await a.aside()).toHaveLength(2);
    expect((await a.append({ job: 'j1', label: 'Cut', changes: [tick('s1')] })).ok).toBe(true);
    expect((await a.load('j1')).entries.map((e) => e.count)).toEqual([1, 2]);
  });

  test('the list of jobs passes over a name that cannot be read', async () => {
    const store = await open();
    await store.makeJob({ job: 'j1', label: 'New', changes: editJob({ name: 'Case' }) });
    const db = await openDB('test', schemaVersion);
    await db.put('entries', {
      job: 'j1',
      device: 'x',
      count: 7,
      at: 5,
      kind: 'edit',
      path: 'name',
      value: 12,
    });
    db.close();
    expect(await store.jobs()).toMatchObject([{ id: 'j1', name: 'Case', last: '2026-11-25T10:00:00.000Z' }]);
  });
});

describe('addEntries', () => {
  test('what differs is set aside once, however often the file is taken in', async () => {
    const store = await open();
    const made = await store.makeJob({ job: 'j1', label: 'New', changes: editJob({ name: 'Case' }) });
    if (!made.ok) throw new Error(made.error.code);
    const theirs = made.value.map((e) => ({ ...e, label: 'Other' }));
    for (let k = 0; k < 3; k += 1) {
      const { differing } = compareWith(made.value, theirs);
      expect(await store.addEntries('j1', theirs, asideOf(differing))).toEqual({ ok: true, value: 0 });
    }
    expect(await store.aside()).toHaveLength(1);
    expect((await store.load('j1')).entries).toEqual(made.value);
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

  test('a phone whose own name is damaged takes a new one', async () => {
    (await open()).close();
    const db = await openDB('test', schemaVersion);
    await db.put('settings', 'Not An Id', 'device');
    db.close();
    const store = await open();
    expect(store.device).toMatch(/^id\d+$/);
    store.close();
    expect((await open()).device).toBe(store.device);
  });

  test('a phone with no room for its own name says so', async () => {
    const put = vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(() => {
      throw new DOMException('no room', 'QuotaExceededError');
    });
    const store = await openStore({ name: 'test', randomId: () => 'x', now: () => '' });
    put.mockRestore();
    expect(store).toEqual({ ok: false, error: { code: 'no-storage', name: 'QuotaExceededError' } });
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

  test('D14: what a newer version has is shown and not written: an old page goes read-only', async () => {
    const old = await open('test');
    await old.makeJob({ job: 'j1', label: 'New', changes: editJob({ name: 'Case' }) });
    const newer = await openDB('test', schemaVersion + 1, { upgrade: () => undefined });
    const act = { job: 'j1', label: 'Cut', changes: [tick('s1')] };
    const readOnly = { ok: false, error: { code: 'read-only' } };
    // the page that was open when the newer one came
    expect([old.readOnly(), await old.append(act)]).toEqual([true, readOnly]);
    expect((await old.load('j1')).entries).toHaveLength(1);
    // one opened after it
    const late = await open('test');
    expect(late.readOnly()).toBe(true);
    expect((await late.jobs()).map((j) => j.name)).toEqual(['Case']);
    expect((await late.load('j1')).entries).toHaveLength(1);
    expect(await late.append(act)).toEqual(readOnly);
    expect(await late.keep('theme', 'blued')).toEqual(readOnly);
    expect(await late.addEntries('j1', [])).toEqual(readOnly);
    await late.purge('2999-01-01T00:00:00.000Z');
    expect(await late.evenOut()).toBe(0);
    expect(await newer.getAll('entries' as never)).toHaveLength(1);
    newer.close();
    late.close();
    old.close();
  });

  test('a page of an older version that does not let go is named within a few seconds', async () => {
    await versionOne('blocked');
    const stubborn = await openDB('blocked', 1); // hears that a later version wants it, and stays open
    const onGone = vi.fn();
    const store = await openStore({ name: 'blocked', randomId: () => 'x', now: () => '', onGone });
    expect(!store.ok && store.error.code).toBe('blocked');
    stubborn.close();
    await deleteDB('blocked'); // what was given up on opens late, and does not stay open
    expect(onGone).not.toHaveBeenCalled();
  }, 10_000);

  test('a database that is slow to open is told as slow, and waited for until it opens', async () => {
    const stubborn = await openDB('test', 1, { upgrade: () => undefined });
    const clearing = indexedDB.deleteDatabase('test'); // what is opened after it waits for it: nobody is in its way
    const onSlow = vi.fn(() => stubborn.close());
    const store = await openStore({ name: 'test', randomId: () => 'x', now: () => '', onSlow });
    expect(clearing.readyState).toBe('done');
    expect([onSlow.mock.calls.length, store.ok]).toEqual([1, true]);
    if (store.ok) store.value.close();
  }, 10_000);

  test('one that opens and then answers nothing is slow too, not a browser that keeps nothing', async () => {
    (await open()).close();
    const { get } = IDBObjectStore.prototype;
    IDBObjectStore.prototype.get = function silent(...args) {
      const asked = get.apply(this, args);
      asked.addEventListener = () => undefined;
      return asked;
    };
    const opened = await openStore({ name: 'test', randomId: () => 'x', now: () => '', patience: 20 });
    IDBObjectStore.prototype.get = get;
    expect(opened).toEqual({ ok: false, error: { code: 'slow' } });
    (await open()).close(); // the next try is as good as the first
  });
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
    await purged(store, '2026-11-26T00:00:00.000Z');
    expect(await store.jobs()).toHaveLength(2);
    await store.append({ job: 'j1', label: 'Back', changes: editJob({ deleted: undefined }) });
    await purged(store, '2027-10-26T00:00:00.000Z');
    expect((await store.jobs()).find(({ id }) => id === 'j1')).toBeDefined();
    expect((await store.jobs())[0]?.deleted).toBeUndefined();
    await store.append({
      job: 'j1',
      label: 'Deleted',
      changes: editJob({ deleted: '2026-11-01T00:00:00.000Z' }),
    });
    await purged(store, '2028-10-26T00:00:00.000Z');
    expect((await store.jobs()).map(({ id }) => id)).toEqual(['elsewhere']);
    expect((await store.load('j1')).entries).toHaveLength(0);
  });
});

describe('starts that never came to their screen', () => {
  const timeAt = (seconds: number) => new Date(Date.UTC(2026, 10, 29) + seconds * 1000).toISOString();
  /** `seen`: what the journal says of the start before, a short one by its second; undefined without a journal. */
  const openAt = async (seconds: number, seen?: number | '' | typeof frozen): Promise<Store> => {
    const said = typeof seen === 'number' ? timeAt(seen) : seen;
    const journal =
      said === undefined ? undefined : { ...memoryJournal(memoryFolder()), starting: async () => said };
    const now = () => timeAt(seconds);
    const store = await openStore({ name: 'test', randomId: () => `id${++ids}`, now, journal });
    if (!store.ok) throw new Error(store.error.code);
    return store.value;
  };

  test('a first start, and one after a start that stood, are after none that froze', async () => {
    const first = await openAt(0);
    first.stands();
    await first.settings(); // after what was asked before it
    expect([first.froze, (await openAt(60)).froze]).toEqual([false, false]);
  });

  test('D16: where nobody watched, two in a row that never stood froze; one alone may have been killed', async () => {
    await openAt(0);
    const second = await openAt(60);
    const third = await openAt(120);
    third.stands();
    await third.settings();
    expect([second.froze, third.froze, (await openAt(180)).froze]).toEqual([false, true, false]);
  });

  test('D16: nobody saw two, with one between them that stood: neither froze', async () => {
    await openAt(0, '');
    const second = await openAt(60, '');
    second.stands();
    await second.settings();
    const third = await openAt(120, '');
    const fourth = await openAt(180, '');
    expect([second.froze, third.froze, fourth.froze]).toEqual([false, false, false]);
    expect((await openAt(240, '')).froze).toBe(true);
  });

  test('one that was only killed, or stood with its note left behind, by the journal, did not freeze, however often', async () => {
    await openAt(0, '');
    for (const seconds of [60, 120, 180]) expect((await openAt(seconds, seconds - 60)).froze).toBe(false);
  });

  test('D16: the journal naming another start has not watched this one: twice, and it froze', async () => {
    await openAt(0, '');
    await openAt(60, 0);
    expect((await openAt(120, 0)).froze).toBe(false);
    expect((await openAt(180, 0)).froze).toBe(true);
  });

  test('D16: a killed one after one nobody saw did not freeze', async () => {
    await openAt(0, '');
    await openAt(60, '');
    expect((await openAt(120, 60)).froze).toBe(false);
    expect((await openAt(180, '')).froze).toBe(false);
  });

  test('D16: one that took long, by the journal, froze at once; one that stood did not', async () => {
    const first = await openAt(0, '');
    const second = await openAt(60, frozen);
    second.stands();
    await second.settings();
    const third = await openAt(120, frozen);
    expect([first.froze, second.froze, third.froze]).toEqual([false, true, false]);
  });

  test('two pages that start at one time are no start that froze; the note goes into no copy', async () => {
    const first = await openAt(60);
    expect((await openAt(62)).froze).toBe(false);
    expect(Object.keys(await first.settings())).not.toContain('opening');
  });
});
