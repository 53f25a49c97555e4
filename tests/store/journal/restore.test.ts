import { IDBFactory as Factory } from 'fake-indexeddb';
import { describe, expect, test } from 'vitest';
import { inches } from '../../../src/length/length';
import { findJournal, tidied } from '../../../src/store/journal/files';
import type { Journal } from '../../../src/store/journal/journal';
import { keptOf } from '../../../src/store/journal/kept-rows';
import { bytesOf } from '../../../src/store/journal/lines';
import type { Row } from '../../../src/store/journal/row';
import { begun, cut, eachAnew, open, openWith, refusing, reopened, ticks } from '../page-of-phone';
import { type MemoryFolder, memoryFolder } from './memory-folder';
import { memoryJournal } from './memory-journal';

eachAnew();

describe('an emptied database', () => {
  const wiped = async (folder: MemoryFolder) => {
    const store = await begun(folder);
    await cut(store, 'a');
    await store.keepShop('kerf', inches(1n, 8n));
    await store.evenOut();
    store.close();
    globalThis.indexedDB = new Factory();
  };

  test('D8: is shown whole before it is filled, and a tap made meanwhile follows', async () => {
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
