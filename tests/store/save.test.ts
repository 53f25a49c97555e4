import 'fake-indexeddb/auto';
import { IDBFactory as Factory } from 'fake-indexeddb';
import { afterEach, describe, expect, test } from 'vitest';
import { editJob } from '../../src/job/edits';
import type { Change, Entry } from '../../src/job/entry';
import { fold } from '../../src/job/log';
import { inches } from '../../src/length/length';
import type { Result } from '../../src/length/result';
import { openStore, type Store } from '../../src/store/store';
import { type Fault, type Faults, failAt } from './faults';
import { type MemoryFolder, memoryFolder } from './journal/memory-folder';
import { memoryJournal } from './journal/memory-journal';
import { aging } from './page-of-phone';

const tick = (op: string): Change => ({ kind: 'tick', op: `cut/b1/${op}/1`, figure: '3/4' });
const at = '2026-11-25T10:00:00.000Z';
const theirs: Entry = {
  job: 'j1',
  device: 'other',
  count: 40,
  at,
  act: 'other.40',
  label: 'Cut',
  kind: 'tick',
  op: 'cut/b1/other/1',
  figure: '3/4',
};

let ids = 0;
let faults: Faults | undefined;
afterEach(() => faults?.clear());

const open = (folder: MemoryFolder | undefined, patience = 3000) =>
  openStore({
    randomId: () => `id${++ids}`,
    now: () => at,
    patience,
    journal: folder && memoryJournal(folder),
  });

type Found = { readonly ticks: ReadonlySet<string>; readonly settings: unknown; readonly kerf: unknown };

/** Everything a user does in a short visit, each with whether it was said to be saved, and how to see that it was. */
const acts: readonly {
  readonly name: string;
  readonly does: (store: Store) => Promise<Result<unknown, unknown>>;
  readonly there: (found: Found) => boolean;
}[] = [
  {
    name: 'new job',
    does: (s) => s.makeJob({ job: 'j1', label: 'New', changes: [...editJob({ name: 'Case' }), tick('new')] }),
    there: ({ ticks }) => ticks.has('cut/b1/new/1'),
  },
  ...['s1', 's2', 's3'].map((op) => ({
    name: op,
    does: (s: Store) => s.append({ job: 'j1', label: 'Cut', changes: [tick(op), tick(`${op}b`)] }),
    there: ({ ticks }: Found) => ticks.has(`cut/b1/${op}/1`) && ticks.has(`cut/b1/${op}b/1`),
  })),
  {
    name: 'taken in',
    does: (s) => s.addEntries('j1', [theirs]),
    there: ({ ticks }) => ticks.has(theirs.kind === 'tick' ? theirs.op : ''),
  },
  {
    name: 'setting',
    does: (s) => s.keep('theme', 'blued'),
    there: ({ settings }) => (settings as { readonly theme?: string }).theme === 'blued',
  },
  {
    name: 'shop figure',
    does: (s) => s.keepShop('kerf', inches(1n, 8n)),
    there: ({ kerf }) => kerf !== undefined,
  },
  {
    name: 'last',
    does: (s) => s.append({ job: 'j1', label: 'Cut', changes: [tick('last')] }),
    there: ({ ticks }) => ticks.has('cut/b1/last/1'),
  },
];

/** The visit; then the phone is well again and the app is opened anew. */
async function visit(folder: MemoryFolder | undefined, faulty: () => void, patience?: number) {
  globalThis.indexedDB = new Factory();
  const said = new Map<string, boolean>();
  faulty();
  const opened = await open(folder, patience);
  if (opened.ok) {
    await opened.value.evenOut().catch(() => 0);
    for (const { name, does } of acts) said.set(name, (await does(opened.value)).ok);
    opened.value.close();
  }
  const calls = faults?.count() ?? 0;
  faults?.clear();
  if (folder) folder.fail = undefined;
  const well = await openStore({
    randomId: () => `id${++ids}`,
    now: () => at,
    journal: folder && memoryJournal(folder),
  });
  if (!well.ok) throw new Error(well.error.code);
  await well.value.evenOut();
  const { entries } = await well.value.load('j1');
  const found: Found = {
    ticks: new Set(entries.flatMap((e) => (e.kind === 'tick' ? [e.op] : []))),
    settings: await well.value.settings(),
    kerf: (await well.value.shop()).kerf,
  };
  const torn = ['s1', 's2', 's3'].filter(
    (op) => found.ticks.has(`cut/b1/${op}/1`) !== found.ticks.has(`cut/b1/${op}b/1`),
  );
  well.value.close();
  return { said, found, torn, calls };
}

/** Every call of the visit goes wrong in turn. */
async function everyCall(fault: Fault, forEver: boolean, second: boolean): Promise<void> {
  let k = 0;
  let refused = 0;
  for (;;) {
    const folder = second ? memoryFolder() : undefined;
    const faulty = () => {
      faults = failAt(k, fault, forEver);
    };
    const { said, found, torn, calls } = await visit(folder, faulty, fault === 'silent' ? 12 : undefined);
    const where = `${fault} ${forEver ? 'for ever' : 'once'} at call ${k}`;
    expect(torn, where).toEqual([]);
    for (const { name, there } of acts) {
      if (said.get(name) === true) expect(there(found), `${where}: ${name} was said to be saved`).toBe(true);
      else {
        refused += 1;
        // a call that was carried out unheard may be there
        if (fault !== 'silent')
          expect(there(found), `${where}: ${name} was said not to be saved`).toBe(false);
      }
    }
    if (calls <= k) break;
    k += forEver && fault === 'silent' ? 7 : 1;
  }
  expect(k).toBeGreaterThan(30);
  if (forEver && !second) expect(refused).toBeGreaterThan(0);
}

describe.each<Fault>(['closed', 'full', 'broken off', 'silent'])(
  'the database, call by call: %s',
  (fault) => {
    test.each([
      ['once', false, true],
      ['for ever', true, true],
      ['once, with no second copy', false, false],
      ['for ever, with no second copy', true, false],
    ] as const)(
      'D1, D2, D4: %s: what was said to be saved is there, what was not is not',
      async (_, forEver, second) => {
        await everyCall(fault, forEver, second);
      },
      120_000,
    );
  },
);

describe('the journal, call by call', () => {
  test.each([
    ['once', false],
    ['for ever', true],
  ] as const)(
    'D1: failing %s: nothing said to be saved is lost, and a single copy is said',
    async (_, forEver) => {
      let failures = 1;
      for (let k = 0; failures > 0; k += 1) {
        const folder = memoryFolder();
        let calls = 0;
        failures = 0;
        const { said, found } = await visit(folder, () => {
          folder.fail = () => {
            const now = calls;
            calls += 1;
            if (forEver ? now < k : now !== k) return undefined;
            failures += 1;
            if (now % 2 === 0) throw new Error('no');
            return 5;
          };
        });
        for (const { name, there } of acts) {
          expect(said.get(name), `journal call ${k}: ${name}`).toBe(true);
          expect(there(found), `journal call ${k}: ${name}`).toBe(true);
        }
      }
    },
  );

  test('D5: says how many copies there are, and says so again once both are there', async () => {
    globalThis.indexedDB = new Factory();
    const folder = memoryFolder();
    const opened = await open(folder);
    if (!opened.ok) throw new Error(opened.error.code);
    const store = opened.value;
    const heard: string[] = [];
    store.onKeptIn((now) => void heard.push(now));
    await store.makeJob({ job: 'j1', label: 'New', changes: editJob({ name: 'Case' }) });
    expect(store.keptIn()).toBe('both');
    folder.fail = () => {
      throw new Error('no');
    };
    await store.append({ job: 'j1', label: 'Cut', changes: [tick('s1')] });
    expect(store.keptIn()).toBe('database');
    expect(await store.secure()).toBe(false);
    folder.fail = undefined;
    // the next change finds it well again, and what it missed follows
    await store.append({ job: 'j1', label: 'Cut', changes: [tick('s2')] });
    expect(await store.secure()).toBe(true);
    expect([store.keptIn(), heard]).toEqual(['both', ['database', 'both']]);
    globalThis.indexedDB = new Factory();
    const wiped = await open(folder);
    if (!wiped.ok) throw new Error(wiped.error.code);
    const { ticks } = fold((await wiped.value.load('j1')).entries);
    expect([...ticks.keys()]).toEqual(['cut/b1/s1/1', 'cut/b1/s2/1']);
  });
});

test('D9: a figure the journal took alone is the newer one, also where nothing else differs', async () => {
  globalThis.indexedDB = new Factory();
  const folder = memoryFolder();
  const opened = await open(folder);
  if (!opened.ok) throw new Error(opened.error.code);
  const store = opened.value;
  await store.makeJob({ job: 'j1', label: 'New', changes: editJob({ name: 'Case' }) });
  await store.keepShop('kerf', inches(1n, 8n));
  await store.keepShop('capacity', inches(30n));
  await store.evenOut();
  faults = failAt(0, 'closed', true);
  expect((await store.keepShop('kerf', inches(3n, 32n))).ok).toBe(true);
  expect((await store.keepShop('capacity', undefined)).ok).toBe(true);
  expect((await store.keep('theme', 'blued')).ok).toBe(true);
  expect(store.keptIn()).toBe('journal');
  faults.clear();
  store.close();
  const again = await open(folder);
  if (!again.ok) throw new Error(again.error.code);
  for (let k = 0; k < 2; k += 1) {
    await again.value.evenOut();
    expect(await again.value.shop()).toEqual({ kerf: inches(3n, 32n) });
    expect(await again.value.settings()).toMatchObject({ theme: 'blued' });
  }
  expect(Object.keys(await again.value.settings()).some((key) => key.startsWith('alone'))).toBe(false);
  again.value.close();
});

describe('a full phone', () => {
  test('D4: gives up its reserve for the last change, once; it is laid by again when there is room', async () => {
    globalThis.indexedDB = new Factory();
    const opened = await open(memoryFolder());
    if (!opened.ok) throw new Error(opened.error.code);
    const store = opened.value;
    await store.makeJob({ job: 'j1', label: 'New', changes: editJob({ name: 'Case' }) });
    await store.evenOut();
    const raw = await new Promise<IDBDatabase>((resolve) => {
      const asked = indexedDB.open('knifeline');
      asked.onsuccess = () => resolve(asked.result);
    });
    const reserve = () =>
      new Promise<unknown>((resolve) => {
        const asked = raw.transaction('settings').objectStore('settings').get('reserve');
        asked.onsuccess = () => resolve(asked.result);
      });
    const own = IDBObjectStore.prototype.add;
    let room = false;
    IDBObjectStore.prototype.add = function add(this: IDBObjectStore, ...args) {
      if (room) return own.apply(this, args);
      throw new DOMException('no room', 'QuotaExceededError');
    };
    const cut = (op: string) => store.append({ job: 'j1', label: 'Cut', changes: [tick(op)] });
    try {
      expect(await reserve()).toBeDefined();
      // the reserve's room is what the change then has
      const taken = IDBObjectStore.prototype.delete;
      IDBObjectStore.prototype.delete = function del(this: IDBObjectStore, ...args) {
        room = true;
        return taken.apply(this, args);
      };
      expect((await cut('s1')).ok).toBe(true);
      IDBObjectStore.prototype.delete = taken;
      expect(await reserve()).toBeUndefined();
      room = false;
      expect(await cut('s2')).toEqual({ ok: false, error: { code: 'full' } });
    } finally {
      IDBObjectStore.prototype.add = own;
    }
    await store.evenOut();
    expect(await reserve()).toBeDefined();
    expect(Object.keys(await store.settings())).not.toContain('reserve');
    expect((await store.load('j1')).entries.length).toBe(2);
    raw.close();
    store.close();
  });
});

describe('the database wiped', () => {
  async function filled(count: number) {
    globalThis.indexedDB = new Factory();
    const folder = memoryFolder();
    const first = await open(folder);
    if (!first.ok) throw new Error(first.error.code);
    const store = first.value;
    await store.makeJob({ job: 'j1', label: 'New', changes: editJob({ name: 'Case' }) });
    await store.keepShop('kerf', inches(1n, 8n));
    await store.keep('theme', 'blued');
    const many = Array.from({ length: count }, (_, k): Entry => ({ ...theirs, count: 50 + k }));
    await store.addEntries('j1', many);
    const rows = await store.load('j1');
    store.close();
    return { folder, rows, device: store.device };
  }

  test('D8: comes back whole before anything is shown: jobs, figures, settings; the phone takes a new name', async () => {
    const { folder, rows, device } = await filled(500);
    globalThis.indexedDB = new Factory();
    const again = await open(folder);
    if (!again.ok) throw new Error(again.error.code);
    const store = again.value;
    expect(store.restored()).toBe(rows.entries.length);
    // entries of the old name that the journal missed may be on another phone
    expect(store.device).not.toBe(device);
    expect(await store.load('j1')).toEqual(rows);
    expect((await store.jobs())[0]).toMatchObject({ id: 'j1', name: 'Case' });
    expect((await store.shop()).kerf).toEqual(inches(1n, 8n));
    expect((await store.settings()).theme).toBe('blued');
    // and it goes on as before
    expect((await store.append({ job: 'j1', label: 'Cut', changes: [tick('s1')] })).ok).toBe(true);
    store.close();
  });

  test('D8: emptied under an open page, it is filled again before that page writes, and counts go on', async () => {
    const { folder, rows } = await filled(20);
    const opened = await open(folder);
    if (!opened.ok) throw new Error(opened.error.code);
    const store = opened.value;
    const heard: number[] = [];
    store.onRestored((entries) => void heard.push(entries));
    await store.load('j1');
    // as clearing site data does: the connection closes, and the next one finds nothing
    globalThis.indexedDB = new Factory();
    faults = failAt(0, 'closed', false);
    const done = await store.append({ job: 'j1', label: 'Cut', changes: [tick('s9')] });
    faults.clear();
    const most = Math.max(...rows.entries.map((e) => e.count));
    expect(done.ok && done.value.map((e) => e.count)).toEqual([most + 1]);
    expect(heard).toEqual([rows.entries.length]);
    expect((await store.load('j1')).entries.length).toBe(rows.entries.length + 1);
    store.close();
  });

  test('D9: rows gone one by one come back too, and how many is said', async () => {
    const { folder, rows } = await filled(40);
    const again = await open(folder);
    if (!again.ok) throw new Error(again.error.code);
    expect(again.value.restored()).toBe(0);
    const raw = await new Promise<IDBDatabase>((resolve) => {
      const asked = indexedDB.open('knifeline');
      asked.onsuccess = () => resolve(asked.result);
    });
    const tx = raw.transaction('entries', 'readwrite');
    for (const count of [50, 51, 60]) tx.objectStore('entries').delete(['j1', 'other', count]);
    await new Promise((done) => {
      tx.oncomplete = done;
    });
    raw.close();
    expect(await again.value.evenOut()).toBe(3);
    expect(await again.value.load('j1')).toEqual(rows);
    expect(await again.value.evenOut()).toBe(0);
    again.value.close();
  });

  test('a phone that kept its jobs before there was a journal gets one', async () => {
    globalThis.indexedDB = new Factory();
    const before = await open(undefined);
    if (!before.ok) throw new Error(before.error.code);
    await before.value.makeJob({ job: 'j1', label: 'New', changes: editJob({ name: 'Case' }) });
    await before.value.keepShop('kerf', inches(1n, 8n));
    before.value.close();
    const folder = memoryFolder();
    const now = await open(folder);
    if (!now.ok) throw new Error(now.error.code);
    expect(await now.value.evenOut()).toBe(0);
    now.value.close();
    globalThis.indexedDB = new Factory();
    const wiped = await open(folder);
    if (!wiped.ok) throw new Error(wiped.error.code);
    expect((await wiped.value.jobs()).map((j) => j.name)).toEqual(['Case']);
    expect((await wiped.value.shop()).kerf).toEqual(inches(1n, 8n));
    wiped.value.close();
  });

  test('a job deleted for good stays gone', async () => {
    const { folder } = await filled(5);
    const store = await open(folder);
    if (!store.ok) throw new Error(store.error.code);
    await store.value.append({
      job: 'j1',
      label: 'Deleted',
      changes: editJob({ deleted: '2020-01-01T00:00:00.000Z' }),
    });
    await aging(store.value, '2027-01-01T00:00:00.000Z');
    // compared while it is taken out, as a start does
    const [, back] = await Promise.all([
      store.value.purge('2027-01-01T00:00:00.000Z'),
      store.value.evenOut(),
    ]);
    expect([back, (await store.value.jobs()).map(({ id }) => id)]).toEqual([0, ['elsewhere']]);
    store.value.close();
    globalThis.indexedDB = new Factory();
    const again = await open(folder);
    if (!again.ok) throw new Error(again.error.code);
    expect((await again.value.jobs()).map(({ id }) => id)).toEqual(['elsewhere']);
    again.value.close();
  });
});
