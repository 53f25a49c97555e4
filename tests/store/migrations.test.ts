import 'fake-indexeddb/auto';
import { IDBFactory } from 'fake-indexeddb';
import { openDB } from 'idb';
import { beforeEach, describe, expect, test } from 'vitest';
import { doubledIn } from '../../src/job/doubled';
import { fold } from '../../src/job/log';
import { said } from '../../src/job/merge';
import { schemaVersion } from '../../src/store/migrations';
import { open } from './schema';
import { versionOne } from './version-one';
import { versionTwo } from './version-two';

beforeEach(() => {
  globalThis.indexedDB = new IDBFactory();
});

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
