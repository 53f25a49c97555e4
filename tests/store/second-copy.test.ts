import 'fake-indexeddb/auto';
import { IDBFactory as Factory } from 'fake-indexeddb';
import { openDB } from 'idb';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { logInHand } from '../../src/app/log-in-hand';
import { inches } from '../../src/length/length';
import type { Change, Entry } from '../../src/store/entry';
import { editJob } from '../../src/store/job';
import { findJournal, tidied } from '../../src/store/journal/files';
import type { Journal } from '../../src/store/journal/journal';
import { bytesOf } from '../../src/store/journal/lines';
import { keptOf, type Row } from '../../src/store/journal/row';
import { fold, over, undoable, undoOf } from '../../src/store/log';
import { schemaVersion } from '../../src/store/migrations';
import { openStore, type Store } from '../../src/store/store';
import { type Faults, failAt } from './faults';
import { type MemoryFolder, memoryFolder } from './journal/memory-folder';
import { memoryJournal } from './journal/memory-journal';

const at = '2026-11-25T10:00:00.000Z';
const tick = (op: string): Change => ({ kind: 'tick', op: `cut/b1/${op}/1`, figure: '3/4' });
let ids = 0;
let moments = 0;
/** A clock that goes on. */
const now = () => new Date(Date.parse(at) + ++moments).toISOString();
let faults: Faults | undefined;
beforeEach(() => {
  globalThis.indexedDB = new Factory();
});
afterEach(() => faults?.clear());

async function openWith(journal: Journal | undefined, patience = 3000): Promise<Store> {
  const opened = await openStore({ randomId: () => `id${++ids}`, now, patience, journal });
  if (!opened.ok) throw new Error(opened.error.code);
  return opened.value;
}
const open = (folder?: MemoryFolder, patience?: number) =>
  openWith(folder && memoryJournal(folder), patience);

async function begun(folder?: MemoryFolder): Promise<Store> {
  const store = await open(folder);
  await store.makeJob({ job: 'j1', label: 'New', changes: editJob({ name: 'Case' }) });
  await store.load('j1');
  return store;
}

const cut = (store: Store, op: string) => store.append({ job: 'j1', label: op, changes: [tick(op)] });
const ticks = async (store: Store) =>
  [...fold((await store.load('j1')).entries).ticks.keys()].map((op) => op.split('/')[2]).sort();

/** While the database takes nothing. */
async function broken<T>(work: () => Promise<T>): Promise<T> {
  faults = failAt(0, 'closed', true);
  const done = await work();
  faults.clear();
  return done;
}

/** While it is read and takes nothing. */
async function refusing(work: () => Promise<void>): Promise<void> {
  const { add, put } = IDBObjectStore.prototype;
  const no = () => {
    throw new DOMException('no', 'UnknownError');
  };
  Object.assign(IDBObjectStore.prototype, { add: no, put: no });
  await work().finally(() => Object.assign(IDBObjectStore.prototype, { add, put }));
}

/** The first transaction ends before its time. */
async function brokenOffOnce(work: () => Promise<unknown>): Promise<void> {
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

const reopened = async (folder: MemoryFolder) => {
  const store = await open(folder);
  await store.evenOut();
  return store;
};

describe('what the journal takes alone', () => {
  test('two taps at once are two acts', async () => {
    const folder = memoryFolder();
    const store = await begun(folder);
    const said = await broken(() => Promise.all([cut(store, 'a'), cut(store, 'b')]));
    expect(said.map(({ ok }) => ok)).toEqual([true, true]);
    expect(await ticks(await reopened(folder))).toEqual(['a', 'b']);
  });

  test('is heard of at the next start, whoever compares the copies first', async () => {
    const folder = memoryFolder();
    const store = await begun(folder);
    await broken(() => cut(store, 'a'));
    store.close();
    const again = await open(folder);
    const heard: number[] = [];
    again.onRestored((entries) => void heard.push(entries));
    await again.purge('2020-01-01T00:00:00.000Z');
    await again.evenOut();
    expect(heard).toEqual([1]);
  });

  test('so are those of two pages, and of one opened again in between', async () => {
    const folder = memoryFolder();
    const store = await begun(folder);
    const page = await open(folder);
    await page.load('j1');
    await broken(() => cut(store, 'a'));
    await broken(() => cut(page, 'b'));
    store.close();
    page.close();
    const again = await open(folder);
    await again.load('j1');
    await broken(() => cut(again, 'c'));
    again.close();
    expect(await ticks(await reopened(folder))).toEqual(['a', 'b', 'c']);
  });

  test('comes back on a long log too, where the database alone took as many others', async () => {
    const folder = memoryFolder();
    const store = await begun(folder);
    const many = Array.from({ length: 20_001 }, (_, k): Entry => {
      const count = 50 + k;
      const place = { job: 'j1', device: 'other', count, at, act: `other.${count}`, label: 'x' };
      return { ...place, kind: 'tick', op: 'cut/b1/o/1', figure: '3/4' };
    });
    await store.addEntries('j1', many);
    await store.load('j1');
    await store.evenOut();
    await broken(() => cut(store, 'a'));
    folder.fail = () => {
      throw new Error('no');
    };
    await cut(store, 'b');
    folder.fail = undefined;
    store.close();
    const again = await reopened(folder);
    expect(await ticks(again)).toEqual(['a', 'b', 'o']);
    expect(again.keptIn()).toBe('both');
  }, 60_000);
});

describe('while the database takes nothing', () => {
  test('what the journal alone has is read as if it stood there, on a job opened again too', async () => {
    const folder = memoryFolder();
    const store = await begun(folder);
    await store.makeJob({ job: 'j2', label: 'New', changes: editJob({ name: 'Bench' }) });
    await refusing(async () => {
      await cut(store, 'a');
      const now = fold((await store.load('j1')).entries);
      const renamed = over(now, editJob({ name: 'Shell case' }));
      await store.append({ job: 'j1', label: 'Name', changes: renamed });
      await store.keepShop('kerf', inches(3n, 32n));
      await store.load('j2');
      expect(await ticks(store)).toEqual(['a']);
      expect((await store.since('j1', 2)).map(({ kind }) => kind)).toEqual(['tick', 'edit']);
      expect((await store.jobs()).map(({ name }) => name).sort()).toEqual(['Bench', 'Shell case']);
      expect((await store.shop()).kerf).toEqual(inches(3n, 32n));
    });
    await store.evenOut();
    expect([await ticks(store), (await store.shop()).kerf]).toEqual([['a'], inches(3n, 32n)]);
  });

  test('a page opened anew shows it all the same, and says where it is', async () => {
    const folder = memoryFolder();
    const store = await begun(folder);
    await broken(() => cut(store, 'a'));
    store.close();
    const again = await open(folder);
    const heard: number[] = [];
    again.onRestored((entries) => void heard.push(entries));
    await refusing(async () => {
      await again.evenOut().catch(() => undefined);
      await again.evenOut().catch(() => undefined);
      expect([await ticks(again), again.keptIn(), heard]).toEqual([['a'], 'journal', [0]]);
    });
    expect(await again.evenOut()).toBe(1);
    expect([await ticks(again), again.keptIn()]).toEqual([['a'], 'both']);
  });

  test('its acts can be taken back on the page that made them', async () => {
    const store = await begun(memoryFolder());
    await broken(() => cut(store, 'a'));
    const { entries } = await store.load('j1');
    const [act] = undoable(entries, store.own);
    if (!act) throw new Error('no act');
    const back = { job: 'j1', label: 'Undo', changes: undoOf(entries, act), undoes: act.act };
    await store.append(back);
    expect(await ticks(store)).toEqual([]);
    const left = undoable((await store.load('j1')).entries, store.own);
    expect(left.map(({ label }) => label)).toEqual(['New']);
  });

  test('a figure is the newer word, and no longer one once the database took another', async () => {
    const folder = memoryFolder();
    const store = await begun(folder);
    await broken(() => store.keepShop('kerf', inches(3n, 32n)));
    folder.fail = () => {
      throw new Error('no');
    };
    await store.keepShop('kerf', inches(1n, 8n));
    expect((await store.shop()).kerf).toEqual(inches(1n, 8n));
    folder.fail = undefined;
    store.close();
    for (let k = 0; k < 2; k += 1)
      expect((await (await reopened(folder)).shop()).kerf).toEqual(inches(1n, 8n));
    globalThis.indexedDB = new Factory();
    expect((await (await reopened(folder)).shop()).kerf).toEqual(inches(1n, 8n));
  });
});

describe('an emptied database', () => {
  const wiped = async (folder: MemoryFolder) => {
    const store = await begun(folder);
    await cut(store, 'a');
    await store.keepShop('kerf', inches(1n, 8n));
    await store.evenOut();
    store.close();
    globalThis.indexedDB = new Factory();
  };

  test('is shown whole before it is filled, and a tap made meanwhile follows', async () => {
    const folder = memoryFolder();
    await wiped(folder);
    const store = await open(folder);
    const early = cut(store, 'b');
    expect([await ticks(store), (await store.shop()).kerf]).toEqual([['a'], inches(1n, 8n)]);
    expect((await store.jobs()).map(({ name }) => name)).toEqual(['Case']);
    const said = await early;
    expect(said.ok && said.value[0]?.count).toBe(3);
    expect([await ticks(store), store.restored(), store.keptIn()]).toEqual([['a', 'b'], 2, 'both']);
    store.close();
    expect(await ticks(await open())).toEqual(['a', 'b']); // with the database alone
  });

  test('that cannot be filled is shown and written beside', async () => {
    const folder = memoryFolder();
    await wiped(folder);
    const store = await open(folder, 60);
    await refusing(async () => {
      expect((await cut(store, 'b')).ok).toBe(true);
      expect([await ticks(store), store.keptIn()]).toEqual([['a', 'b'], 'journal']);
    });
    store.close();
    expect(await ticks(await reopened(folder))).toEqual(['a', 'b']);
  });
});

describe('a job deleted long ago', () => {
  const deletion: Entry = {
    job: 'j1',
    device: 'other',
    count: 9,
    at: '2026-10-01T10:00:00.000Z',
    act: 'other.9',
    label: 'Job deleted',
    kind: 'edit',
    path: 'deleted',
    value: '2026-10-01T10:00:00.000Z',
  };

  test('on another phone: brought in, it throws no work of this one away', async () => {
    const store = await begun();
    await cut(store, 'mine');
    await store.addEntries('j1', [deletion]);
    await cut(store, 'after');
    await store.purge('2026-10-26T10:00:00.000Z');
    expect(await ticks(store)).toEqual(['after', 'mine']);
  });

  test('and brought back in one copy alone is not thrown out of both', async () => {
    const folder = memoryFolder();
    const store = await begun(folder);
    await cut(store, 'mine');
    await store.append({ job: 'j1', label: 'Deleted', changes: editJob({ deleted: deletion.at }) });
    await store.evenOut();
    const now = fold((await store.load('j1')).entries);
    const back = { job: 'j1', label: 'Back', changes: over(now, editJob({ deleted: undefined })) };
    expect((await broken(() => store.append(back))).ok).toBe(true);
    store.close();
    const again = await open(folder);
    await Promise.all([again.purge('2027-10-26T10:00:00.000Z'), again.evenOut()]);
    expect(await ticks(again)).toEqual(['mine']);
  });
});

describe('a journal in trouble', () => {
  test('with no room to begin anew, it is read and written all the same', async () => {
    const folder = memoryFolder();
    const store = await begun(folder);
    await cut(store, 'a');
    for (let k = 0; k < 6; k += 1) await store.keep('figure', `${'x'.repeat(60_000)}${k}`);
    store.close();
    globalThis.indexedDB = new Factory();
    const full = {
      ...folder,
      write: async () => {
        throw new DOMException('short write', 'QuotaExceededError');
      },
    };
    const again = await openWith(memoryJournal(full));
    await again.evenOut();
    expect([await ticks(again), (await cut(again, 'b')).ok, again.keptIn()]).toEqual([['a'], true, 'both']);
  });

  test('a file left half written says nothing newer than the one it was to take the place of', async () => {
    const folder = memoryFolder();
    const first = await tidied(folder, await findJournal(folder));
    const rows = Array.from(
      { length: 9 },
      (_, k): Row => ['settings', 'figure', `${'x'.repeat(60_000)}${k}`],
    );
    await folder.append(first.current, bytesOf([['shop', 'kerf', '1/8'], ...rows]));
    const torn = {
      ...folder,
      write: async (name: string, bytes: Uint8Array) => {
        await folder.write(name, bytes.subarray(0, bytes.length - 20));
        throw new Error('full');
      },
    };
    const now = await tidied(torn, await findJournal(folder));
    await folder.append(now.current, bytesOf([['shop', 'kerf', '3/32']]));
    expect(keptOf((await findJournal(folder)).rows).shop.get('kerf')?.value).toBe('3/32');
  });

  test('one that does not answer at a start with an empty database is asked again, and loses nothing by it', async () => {
    const folder = memoryFolder();
    const store = await begun(folder);
    await cut(store, 'a');
    await store.keepShop('kerf', inches(1n, 8n));
    store.close();
    globalThis.indexedDB = new Factory();
    const journal = memoryJournal(folder);
    let asked = 0;
    const late: Journal = {
      ...journal,
      rows: async () => {
        asked += 1;
        return asked <= 2 ? undefined : journal.rows();
      },
    };
    const again = await openWith(late);
    expect(await again.evenOut()).toBe(0);
    expect(await again.evenOut()).toBe(2);
    expect(await ticks(again)).toEqual(['a']);
    expect((await again.shop()).kerf).toEqual(inches(1n, 8n));
    again.close();
    expect((await (await reopened(folder)).shop()).kerf).toEqual(inches(1n, 8n));
  });
});

describe('tried again', () => {
  test('an act that was kept unheard is there once', async () => {
    const store = await openWith(undefined, 20);
    await store.makeJob({ job: 'j1', label: 'New', changes: editJob({ name: 'Case' }) });
    const own = IDBDatabase.prototype.transaction;
    IDBDatabase.prototype.transaction = function silent(this: IDBDatabase, ...args) {
      if (args[1] !== 'readwrite') throw new DOMException('x', 'UnknownError');
      const tx = own.apply(this, args);
      const listen = tx.addEventListener.bind(tx);
      tx.addEventListener = (name: string, heard: EventListener) => {
        if (name !== 'complete') listen(name, heard);
      };
      return tx;
    };
    const act = { job: 'j1', label: 'a', changes: [tick('a')] };
    const said = await store.append(act);
    IDBDatabase.prototype.transaction = own;
    const before = (await store.load('j1')).entries.length;
    await store.append(act);
    expect([said.ok, before, (await store.load('j1')).entries.length]).toEqual([false, 2, 2]);
  });

  test('twice at once, too', async () => {
    const store = await begun();
    const act = { job: 'j1', label: 'a', changes: [tick('a')] };
    await Promise.all([store.append(act), store.append(act)]);
    expect((await store.load('j1')).entries.length).toBe(2);
  });

  test('an unsaved change never writes by itself over what another page has said since', async () => {
    const [store, other] = [await begun(), await open()];
    let full = true;
    const append: Store['append'] = async (act) =>
      full ? { ok: false, error: { code: 'full' } } : store.append(act);
    const log = logInHand({ ...store, append }, { setAside: 0, onOther: () => undefined });
    await log.load('j1');
    const length = (value: string): Change => ({ kind: 'edit', path: 'boards/b1/length', value });
    await log.write('old', [length('5')]);
    await other.append({ job: 'j1', label: 'new', changes: [length('6')] });
    await log.catchUp();
    full = false;
    await log.write('x', [tick('x')]);
    expect(fold((await store.load('j1')).entries).values.get('boards/b1/length')).toBe('6');
    expect(log.unsaved.now.value?.act?.label).toBe('old');
    // said anew of the same thing, the old one is done with
    await log.write('newer', [length('7')]);
    expect(log.unsaved.now.value).toBeUndefined();
  });
});

test('a load that began before a tick does not take the tick off the screen', async () => {
  const store = await begun();
  let go = () => {};
  let slow = false;
  const held = new Promise<void>((done) => {
    go = done;
  });
  const load: Store['load'] = async (id) => {
    const loaded = await store.load(id);
    if (slow) await held;
    return loaded;
  };
  const log = logInHand({ ...store, load }, { setAside: 0, onOther: () => undefined });
  await log.load('j1');
  slow = true;
  const loading = log.load('j1');
  await new Promise((done) => setTimeout(done, 20));
  expect(await log.write('a', [tick('a')])).toBe(true);
  go();
  await loading;
  expect([...log.folded.value.ticks.keys()]).toEqual(['cut/b1/a/1']);
});

describe('settings and figures of which each copy missed something', () => {
  const kerfOf = async (store: Store) => (await store.shop()).kerf;
  const away = () => {
    throw new Error('no');
  };

  test('one taken away while the journal was away stays away', async () => {
    const folder = memoryFolder();
    const store = await begun(folder);
    await store.keepShop('kerf', inches(3n, 32n));
    await store.evenOut();
    folder.fail = away;
    await store.keepShop('kerf', undefined);
    await cut(store, 'a');
    folder.fail = undefined;
    store.close();
    const again = await reopened(folder);
    await again.evenOut();
    expect(await kerfOf(again)).toBeUndefined();
    again.close();
    globalThis.indexedDB = new Factory();
    expect(await kerfOf(await reopened(folder))).toBeUndefined();
  });

  test('one kept while the copies are compared stands, in both', async () => {
    const folder = memoryFolder();
    const store = await begun(folder);
    await broken(() => store.keepShop('kerf', inches(3n, 32n)));
    store.close();
    const journal = memoryJournal(folder);
    let once = true;
    const again: Store = await openWith({
      ...journal,
      summary: async () => {
        const found = await journal.summary();
        if (once) {
          once = false;
          await again.keepShop('kerf', inches(1n, 8n));
        }
        return found;
      },
    });
    for (let k = 0; k < 2; k += 1) await again.evenOut();
    expect(await kerfOf(again)).toEqual(inches(1n, 8n));
    again.close();
    globalThis.indexedDB = new Factory();
    expect(await kerfOf(await reopened(folder))).toEqual(inches(1n, 8n));
  });

  test('those of an emptied database that could not be filled at once stay in the journal', async () => {
    for (const jobs of [true, false]) {
      globalThis.indexedDB = new Factory();
      const folder = memoryFolder();
      const store = jobs ? await begun(folder) : await open(folder);
      await store.keepShop('kerf', inches(1n, 8n));
      store.close();
      globalThis.indexedDB = new Factory();
      const again = await open(folder, 60);
      await refusing(async () => void (await again.evenOut().catch(() => 0)));
      await again.evenOut();
      again.close();
      globalThis.indexedDB = new Factory();
      expect(await kerfOf(await reopened(folder))).toEqual(inches(1n, 8n));
    }
  });

  test('nor does a journal that did not answer at the start lose them to a job begun meanwhile', async () => {
    const folder = memoryFolder();
    const store = await open(folder);
    await store.keepShop('kerf', inches(1n, 8n));
    store.close();
    globalThis.indexedDB = new Factory();
    const again = await openWith({ ...memoryJournal(folder), rows: async () => undefined });
    await again.makeJob({ job: 'j1', label: 'New', changes: editJob({ name: 'Case' }) });
    expect(await again.secure()).toBe(false);
    again.close();
    expect(await kerfOf(await reopened(folder))).toEqual(inches(1n, 8n));
  });

  test('a write broken off and tried again does not land over a newer one', async () => {
    const store = await begun();
    const seen = fold((await store.load('j1')).entries);
    const name = (text: string) =>
      store.append({ job: 'j1', label: text, changes: over(seen, editJob({ name: text })) });
    await brokenOffOnce(() =>
      Promise.all([store.keepShop('kerf', inches(3n, 32n)), store.keepShop('kerf', inches(1n, 8n))]),
    );
    await brokenOffOnce(() => Promise.all([name('older'), name('newer')]));
    expect(await kerfOf(store)).toEqual(inches(1n, 8n));
    expect(fold((await store.load('j1')).entries).values.get('name')).toBe('newer');
  });

  test('a figure another page kept since is shown, also where this one had its own in the journal', async () => {
    const folder = memoryFolder();
    const store = await begun(folder);
    const other = await open(folder);
    await broken(() => store.keepShop('kerf', inches(3n, 32n)));
    const heard = new Promise<void>((done) => store.onChange(() => done()));
    await other.keepShop('kerf', inches(1n, 8n));
    await heard;
    expect(await kerfOf(store)).toEqual(inches(1n, 8n));
  });
});

describe('what else the copies are told apart by', () => {
  test('both is not said of a change the journal missed while they were compared', async () => {
    const folder = memoryFolder();
    const store = await begun(folder);
    await broken(() => cut(store, 'x'));
    store.close();
    const journal = memoryJournal(folder);
    let once = true;
    const again: Store = await openWith({
      ...journal,
      append: async (rows) => !JSON.stringify(rows).includes('cut/b1/a/1') && journal.append(rows),
      rows: async () => {
        const found = await journal.rows();
        if (once) {
          once = false;
          await cut(again, 'a');
        }
        return found;
      },
    });
    await again.evenOut();
    expect(again.keptIn()).toBe('database');
  });

  test('rows set aside while the journal was away are in it at last', async () => {
    const folder = memoryFolder();
    const store = await begun(folder);
    folder.fail = () => {
      throw new Error('no');
    };
    await store.addEntries('j1', [], [{ from: 'j1', why: 'differs', row: { hello: 1 } }]);
    folder.fail = undefined;
    await store.evenOut();
    store.close();
    globalThis.indexedDB = new Factory();
    expect(await (await reopened(folder)).aside()).toHaveLength(1);
  });

  test('a row moved out of the log is no difference ever after', async () => {
    const folder = memoryFolder();
    const store = await begun(folder);
    store.close();
    const journal = memoryJournal(folder);
    const strange = { job: 'j1', device: 'q', count: 7, at, act: 'q.7', label: 'x', kind: 'tick' };
    await journal.append([['log', { ...strange, op: 'strange', figure: 'no' } as Entry]]);
    let asked = 0;
    const again = await openWith({
      ...journal,
      rows: () => {
        asked += 1;
        return journal.rows();
      },
    });
    expect(await again.evenOut()).toBe(1);
    expect((await again.load('j1')).setAside).toBe(1);
    await again.evenOut();
    asked = 0;
    await again.evenOut();
    expect(asked).toBe(0);
  });

  test('a first answer of the journal that comes too late hides nothing', async () => {
    const folder = memoryFolder();
    const store = await begun(folder);
    store.close();
    globalThis.indexedDB = new Factory();
    const journal = memoryJournal(folder);
    let calls = 0;
    const late = async () => {
      calls += 1;
      if (calls === 1) await new Promise((done) => setTimeout(done, 700));
      return journal.rows();
    };
    const again = await openWith({ ...journal, rows: late }, 30);
    await again.evenOut();
    await new Promise((done) => setTimeout(done, 900));
    await again.makeJob({ job: 'j2', label: 'New', changes: editJob({ name: 'Bench' }) });
    expect((await again.jobs()).map(({ name }) => name).sort()).toEqual(['Bench', 'Case']);
  });

  test('nothing is written into a database that a later version took meanwhile', async () => {
    const store = await begun(memoryFolder());
    const own = IDBDatabase.prototype.transaction;
    let first = true;
    IDBDatabase.prototype.transaction = function transaction(...args) {
      if (!first || args[1] !== 'readwrite') return own.apply(this, args);
      first = false;
      throw new DOMException('closing', 'InvalidStateError');
    };
    const opening = openDB('knifeline', schemaVersion + 1);
    const said = await cut(store, 'a');
    IDBDatabase.prototype.transaction = own;
    expect([said.ok, store.readOnly()]).toEqual([false, true]);
    const newer = await opening;
    expect(await newer.getAll('log')).toHaveLength(1);
    newer.close();
  });

  test('one comparing serves all who ask for it meanwhile', async () => {
    const folder = memoryFolder();
    const journal = memoryJournal(folder);
    let [summaries, bad] = [0, false];
    const store = await openWith({
      ...journal,
      append: async (rows) => !bad && journal.append(rows),
      summary: async () => {
        summaries += 1;
        await new Promise((done) => setTimeout(done, 20));
        return journal.summary();
      },
    });
    await store.makeJob({ job: 'j1', label: 'New', changes: editJob({ name: 'Case' }) });
    bad = true;
    await cut(store, 'x');
    bad = false;
    await Promise.all(Array.from({ length: 20 }, (_, k) => store.keep('figure', `${k}`)));
    await store.evenOut();
    expect([store.keptIn(), summaries]).toEqual(['both', expect.any(Number)]);
    expect(summaries).toBeLessThan(6);
  });

  test('many jobs shown from the journal are listed as fast as from the database', async () => {
    const folder = memoryFolder();
    const journal = memoryJournal(folder);
    const rows = Array.from({ length: 30_000 }, (_, k): Row => {
      const [job, count] = [`j${Math.floor(k / 100)}`, 1 + (k % 100)];
      const place = { job, device: 'd', count, at, act: `d.${count}`, label: 'x' };
      return ['log', { ...place, kind: 'tick', op: `cut/b1/o${count}/1`, figure: '3/4' }];
    });
    await journal.append(rows);
    const store = await open(folder, 60_000);
    const from = performance.now();
    expect(await store.jobs()).toHaveLength(300);
    const shown = performance.now() - from;
    await store.evenOut();
    const again = performance.now();
    expect(await store.jobs()).toHaveLength(300);
    // going over every row once for each job took forty times as long
    expect(shown).toBeLessThan(15 * (performance.now() - again));
  }, 120_000);
});
