import { IDBFactory as Factory } from 'fake-indexeddb';
import { openDB } from 'idb';
import { describe, expect, test } from 'vitest';
import { editBoard, editJob } from '../../src/job/edits';
import type { Entry } from '../../src/job/entry';
import { fold } from '../../src/job/log';
import { undoable, undoOf } from '../../src/job/undo';
import { inches } from '../../src/length/length';
import { schemaVersion } from '../../src/store/migrations';
import type { Store } from '../../src/store/store';
import { failAt } from './faults';
import { memoryFolder } from './journal/memory-folder';
import { begun, cut, eachAnew, open, purged, tick } from './page-of-phone';

eachAnew();

/** A log of a thousand ticks and more, each an act of its own, as another phone made it. */
const theirs = (n: number): readonly Entry[] =>
  Array.from({ length: n }, (_, k) => ({
    job: 'j1',
    device: 'other',
    count: k + 2,
    at: '2026-11-25T09:00:00.000Z',
    act: `other.${k + 2}`,
    label: `Cut: ${k}`,
    ...tick(`s${k}`),
  }));

/** Ticks of this phone, written one act at a time: they stand single. */
async function written(store: Store, n: number): Promise<void> {
  const all = Array.from({ length: n }, (_, k) => `s${k}`);
  for (let k = 0; k < n; k += 100)
    await store.append({
      job: 'j1',
      label: `Cut ${k}`,
      changes: all.slice(k, k + 100).map((op) => ({ ...tick(op), over: [] })),
    });
}

/** How many entries stand single and how many packed. */
async function stand(): Promise<readonly [single: number, packed: number]> {
  const db = await openDB('knifeline', schemaVersion);
  const packed = (await db.getAllKeys('packs')) as unknown as readonly [string, number, number][];
  const single = await db.count('entries');
  db.close();
  return [single, packed.reduce((sum, [, , size]) => sum + size, 0)];
}

/** How many entries are read, and how many rows were set aside on the way. */
async function loaded(store: Store): Promise<readonly [entries: number, setAside: number]> {
  const { entries, setAside } = await store.load('j1');
  return [entries.length, setAside];
}

const whole = async (store: Store) => JSON.stringify((await store.load('j1')).entries);

describe('old entries packed', () => {
  test('read back as they were; the newest fifty stand single, and the name of the job', async () => {
    const store = await begun();
    await written(store, 1300);
    const before = await whole(store);
    expect(await stand()).toEqual([1301, 0]);
    await store.pack();
    expect(await stand()).toEqual([51, 1250]);
    expect(JSON.parse(await whole(store))).toEqual(JSON.parse(before));
    expect((await store.jobs())[0]).toMatchObject({ name: 'Case' });
  });

  test('a few more fill the last pack, fewer than a hundred and fifty wait', async () => {
    const store = await begun();
    await written(store, 400);
    await store.pack();
    expect(await stand()).toEqual([51, 350]);
    await written(store, 100);
    await store.pack();
    expect(await stand()).toEqual([151, 350]);
    await written(store, 100);
    const before = await whole(store);
    await store.pack();
    expect(await stand()).toEqual([51, 550]);
    expect(JSON.parse(await whole(store))).toEqual(JSON.parse(before));
  });

  test('D3: the next act follows the greatest count, and is over what is packed', async () => {
    const store = await begun();
    await store.append({ job: 'j1', label: 'Measured', changes: editBoard('b1', { length: inches(64n) }) });
    await written(store, 300);
    await store.pack();
    const next = await store.append({
      job: 'j1',
      label: 'Measured again',
      changes: editBoard('b1', { length: inches(257n, 4n) }),
    });
    expect(next.ok && next.value[0]).toMatchObject({ count: 303, over: [`2.${store.device}`] });
  });

  test('another page that was away catches up with what was packed meanwhile', async () => {
    const [store, other] = [await begun(), await open()];
    await written(store, 100);
    const seen = (await other.load('j1')).entries.length;
    await written(store, 400);
    await store.pack();
    expect((await other.since('j1', seen + 1)).map(({ count }) => count).sort((a, b) => a - b)).toEqual(
      Array.from({ length: 400 }, (_, k) => seen + 1 + k),
    );
  });

  test('an act that was packed can be taken back', async () => {
    const store = await begun();
    await written(store, 400);
    await store.pack();
    const { entries } = await store.load('j1');
    const [, , , first] = undoable(entries, store.own);
    if (!first) throw new Error('four acts were written');
    await store.append({ job: 'j1', label: 'Undo', changes: undoOf(entries, first), undoes: first.act });
    expect(fold((await store.load('j1')).entries).ticks.has('cut/b1/s0/1')).toBe(false);
  });

  test('D7: entries taken in are packed at once, and taken in again nothing is added', async () => {
    const store = await begun();
    const file = theirs(1200);
    expect(await store.addEntries('j1', file)).toEqual({ ok: true, value: 1200 });
    expect(await stand()).toEqual([51, 1150]);
    expect(await store.addEntries('j1', file)).toEqual({ ok: true, value: 0 });
    expect((await store.load('j1')).entries).toHaveLength(1201);
    await cut(store, 'mine');
    expect((await store.load('j1')).entries[1201]).toMatchObject({ count: 1202, device: store.device });
  });

  test('a job purged takes its packs with it', async () => {
    const store = await begun();
    await store.addEntries('j1', theirs(400));
    await store.append({
      job: 'j1',
      label: 'Deleted',
      changes: editJob({ deleted: '2026-11-25T10:00:00.000Z' }),
    });
    await purged(store, '2027-12-20T10:00:00.000Z');
    expect((await store.jobs()).map(({ id }) => id)).toEqual(['elsewhere']);
    expect((await stand())[1]).toBe(0);
  });
});

describe('packs and the second copy', () => {
  test('D8, D9: an emptied database is filled with packs, and both copies hold the same', async () => {
    const folder = memoryFolder();
    const store = await begun(folder);
    await store.addEntries('j1', theirs(1200));
    const before = await whole(store);
    await store.pack();
    expect([await store.evenOut(), store.keptIn()]).toEqual([0, 'both']);
    store.close();
    globalThis.indexedDB = new Factory();
    const again = await open(folder);
    await again.evenOut();
    expect([again.restored(), await whole(again)]).toEqual([1201, before]);
    expect(await stand()).toEqual([51, 1150]);
    expect([await again.evenOut(), again.keptIn()]).toEqual([0, 'both']);
  });

  test('D13: a pack that cannot be read is set aside whole, and its entries come back', async () => {
    const folder = memoryFolder();
    const store = await begun(folder);
    await store.addEntries('j1', theirs(400));
    const before = await whole(store);
    const db = await openDB('knifeline', schemaVersion);
    const [pack] = await db.getAll('packs');
    await db.put('packs', { ...pack, text: pack.text.slice(1) });
    db.close();
    expect(await loaded(store)).toEqual([51, 1]);
    expect(await store.aside()).toMatchObject([{ from: 'j1', why: 'packed entries cannot be read' }]);
    expect(await store.evenOut()).toBe(350);
    expect(await whole(store)).toBe(before);
    expect([await store.evenOut(), await loaded(store)]).toEqual([0, [401, 0]]);
  });

  test('D13: an entry in a pack that cannot be read is set aside alone', async () => {
    const store = await begun();
    await store.addEntries('j1', theirs(400));
    const db = await openDB('knifeline', schemaVersion);
    const [pack] = await db.getAll('packs');
    await db.put('packs', { ...pack, text: pack.text.replace('"3/4"', '"3/0"') });
    db.close();
    expect(await loaded(store)).toEqual([400, 1]);
    expect(await store.aside()).toMatchObject([{ from: 'j1', row: { device: 'other', figure: '3/0' } }]);
    expect(await loaded(store)).toEqual([400, 0]);
  });
});

describe('packing that goes wrong', () => {
  test('D1, D2: whatever call fails and however, every entry stands in one of the two, once', async () => {
    // the calls that look, those that write the pack, and some of those that take the single entries away
    const calls = [0, 1, 2, 3, 4, 5, 6, 7, 8, 60, 140, 180];
    for (const fault of ['closed', 'full', 'broken off'] as const)
      for (const k of calls) {
        globalThis.indexedDB = new Factory();
        const store = await begun();
        await written(store, 230);
        const faults = failAt(k, fault, false);
        await store.pack().catch(() => undefined);
        expect(faults.count()).toBeGreaterThan(k);
        faults.clear();
        const { entries } = await store.load('j1');
        const [single, packed] = await stand();
        expect([entries.length, new Set(entries.map((e) => e.count)).size, single + packed]).toEqual([
          231, 231, 231,
        ]);
        store.close();
      }
  });

  test('two pages that pack at once pack nothing twice', async () => {
    const [a, b] = [await begun(), await open()];
    await written(a, 1300);
    await Promise.all([a.pack(), b.pack(), cut(b, 'x')]);
    const { entries } = await a.load('j1');
    expect([entries.length, new Set(entries.map((e) => `${e.count}${e.device}`)).size]).toEqual([1302, 1302]);
  });
});
