import 'fake-indexeddb/auto';
import { IDBFactory } from 'fake-indexeddb';
import { openDB } from 'idb';
import { beforeEach, describe, expect, test } from 'vitest';
import { doubledIn } from '../../src/job/doubled';
import { jobOf } from '../../src/job/job';
import { fold } from '../../src/job/log';
import { said } from '../../src/job/merge';
import { picturesIn } from '../../src/job/pictures';
import { schemaVersion } from '../../src/store/migrations';
import { readPicture } from '../../src/store/pictures/kept';
import { pictureKey } from '../../src/store/pictures/keys';
import { open } from './schema';
import { versionFour } from './version-four';
import { versionOne } from './version-one';
import { versionThree } from './version-three';
import { versionTwo } from './version-two';

beforeEach(() => {
  globalThis.indexedDB = new IDBFactory();
});

/** Every row of every store, and the names of the indexes. `log` of version 2 is `entries` of version 3. */
async function everything(version: number): Promise<unknown> {
  const db = await openDB('kept', version);
  const names = [...db.objectStoreNames];
  const rows = await Promise.all(names.map((name) => db.getAll(name)));
  const indexes = names.map((name) => [...db.transaction(name).objectStore(name).indexNames]);
  db.close();
  return Object.fromEntries(names.map((name, k) => [newName(name), { rows: rows[k], indexes: indexes[k] }]));
}

const newName = (store: string): string => (store === 'log' ? 'entries' : store);
/** What versions 3 and 4 add. */
const added = { packs: { rows: [], indexes: ['byTo'] }, pictures: { rows: [], indexes: [] } };

describe('a database of every version shipped', () => {
  test.each([
    [1, versionOne],
    [2, versionTwo],
    [3, versionThree],
    [4, versionFour],
  ])('D14: version %i opens equal, row for row', async (version, make) => {
    await make('kept');
    const before = await everything(version);
    const store = await open();
    expect((await store.load('cabinet')).setAside).toBe(0);
    store.stands(); // its own note of the start goes
    await store.settings();
    store.close();
    expect(await everything(schemaVersion)).toEqual({ ...added, ...(before as object) });
  });

  test('there is a fixture of each', () => expect(schemaVersion).toBe(4));

  test('of version 2, two readings that did not know of each other both stand', async () => {
    await versionTwo('kept');
    const { entries } = await (await open()).load('cabinet');
    expect(doubledIn(fold(entries)).map((d) => d.readings.map(said))).toEqual([['257/4', '513/8']]);
  });

  test('of version 3, packed entries are read in their place among single ones', async () => {
    await versionThree('kept');
    const store = await open();
    const { entries, setAside } = await store.load('cabinet');
    expect([entries.map((e) => `${e.count} ${e.device} ${e.label}`), setAside]).toEqual([
      [
        '1 phone1 New job',
        '2 phone1 Side measured',
        '2 phone2 Side measured',
        '3 phone1 Cut: Left',
        '4 phone1 Cut: Left',
        '5 phone1 Undo',
        '6 phone1 Cut: Left',
      ],
      0,
    ]);
    const { values, ticks } = fold(entries);
    expect([values.get('boards/side/length'), ticks.get('cut/side/r1~1~p1/left')?.figure]).toEqual([
      '513/8',
      '53/4',
    ]);
    expect((await store.jobs())[0]).toMatchObject({ name: 'Mineral and shell cabinet' });
  });

  test('of version 4, the picture its log names is there, byte for byte', async () => {
    await versionFour('kept');
    const store = await open();
    const { entries } = await store.load('cabinet');
    const [picture] = picturesIn(jobOf('cabinet', fold(entries).values));
    const here = { connection: store.connection, files: undefined };
    const bytes = await readPicture(here, pictureKey('cabinet', picture?.hash ?? ''));
    expect(typeof bytes === 'string' ? bytes : new TextDecoder().decode(bytes)).toBe('abc');
  });

  test('code of version 2 finds no log it could show a part of', async () => {
    await versionTwo('kept');
    (await open()).close();
    const db = await openDB('kept');
    expect([...db.objectStoreNames]).not.toContain('log');
    db.close();
  });

  test('code of version 1 cannot open what this one has written', async () => {
    await versionOne('kept');
    (await open()).close();
    await expect(openDB('kept', 1)).rejects.toMatchObject({ name: 'VersionError' });
  });
});
