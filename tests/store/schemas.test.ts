import 'fake-indexeddb/auto';
import { IDBFactory } from 'fake-indexeddb';
import { openDB } from 'idb';
import { beforeEach, describe, expect, test } from 'vitest';
import { doubledIn } from '../../src/job/doubled';
import { editBoard } from '../../src/job/edits';
import { said } from '../../src/job/heads';
import { fold } from '../../src/job/log';
import { schemaVersion } from '../../src/store/migrations';
import { openStore, type Store } from '../../src/store/store';
import { versionOne } from './version-one';
import { versionTwo } from './version-two';

beforeEach(() => {
  globalThis.indexedDB = new IDBFactory();
});

async function open(): Promise<Store> {
  const store = await openStore({
    name: 'kept',
    randomId: () => 'me',
    now: () => '2026-11-26T10:00:00.000Z',
  });
  if (!store.ok) throw new Error(store.error.code);
  return store.value;
}

/** Every row of every store, and the names of the indexes. */
async function everything(version: number): Promise<unknown> {
  const db = await openDB('kept', version);
  const names = [...db.objectStoreNames];
  const rows = await Promise.all(names.map((name) => db.getAll(name)));
  const indexes = names.map((name) => [...db.transaction(name).objectStore(name).indexNames]);
  db.close();
  return { names, rows, indexes };
}

describe('a database of every version shipped', () => {
  test.each([
    [1, versionOne],
    [2, versionTwo],
  ])('D14: version %i opens equal, row for row', async (version, make) => {
    await make('kept');
    const before = await everything(version);
    const store = await open();
    expect((await store.load('cabinet')).setAside).toBe(0);
    store.stands(); // its own note of the start goes
    await store.settings();
    store.close();
    expect(await everything(schemaVersion)).toEqual(before);
  });

  test('there is a fixture of each', () => expect(schemaVersion).toBe(2));

  test('of version 2, two readings that did not know of each other both stand', async () => {
    await versionTwo('kept');
    const { entries } = await (await open()).load('cabinet');
    expect(doubledIn(fold(entries)).map((d) => d.readings.map(said))).toEqual([['257/4', '513/8']]);
  });

  test('code of version 1 cannot open what this one has written', async () => {
    await versionOne('kept');
    (await open()).close();
    await expect(openDB('kept', 1)).rejects.toMatchObject({ name: 'VersionError' });
  });
});

describe('writing', () => {
  const job = 'cabinet';
  const length = (value: string) => ({ kind: 'edit', path: 'boards/side/length', value }) as const;

  test('M9: a change that does not say what it is over is over all that stands on the phone', async () => {
    await versionTwo('kept');
    const store = await open();
    await store.append({ job, label: 'Length', changes: [length('65')] });
    const { entries } = await store.load(job);
    expect(entries.map((e) => e.over).pop()).toEqual(['2.phone1', '2.phone2']);
    expect(fold(entries).doubled.size).toBe(0);
  });

  test('M9: one that says so is over that alone: what another page took in meanwhile stands beside it', async () => {
    await versionTwo('kept');
    const store = await open();
    await store.append({ job, label: 'Length', changes: [{ ...length('65'), over: ['2.phone1'] }] });
    const readings = doubledIn(fold((await store.load(job)).entries)).map((d) => d.readings.map(said));
    expect(readings).toEqual([['513/8', '65']]);
  });

  test('a name that two phones gave is listed as it stands', async () => {
    const store = await open();
    const made = await store.makeJob({
      job: 'j',
      label: 'New',
      changes: [{ kind: 'edit', path: 'name', value: 'A' }],
    });
    if (!made.ok) throw new Error(made.error.code);
    const [mine] = made.value;
    if (!mine) throw new Error('nothing written');
    const theirs = { ...mine, device: 'ben', count: 2, act: 'ben.2', over: ['1.me'] };
    await store.addEntries('j', [{ ...theirs, kind: 'edit', path: 'name', value: null }]);
    await store.append({
      job: 'j',
      label: 'Named',
      changes: [{ kind: 'edit', path: 'name', value: 'B', over: ['1.me'] }],
    });
    expect((await store.jobs())[0]?.name).toBe('B');
    expect(
      (await store.append({ job: 'j', label: 'Board', changes: editBoard('b', { name: 'x' }) })).ok,
    ).toBe(true);
  });
});
