import { IDBFactory as Factory } from 'fake-indexeddb';
import { openDB } from 'idb';
import { describe, expect, test } from 'vitest';
import { editJob } from '../../src/job/edits';
import type { Entry } from '../../src/job/entry';
import { fold, over } from '../../src/job/log';
import { inches } from '../../src/length/length';
import { schemaVersion } from '../../src/store/migrations';
import type { Store } from '../../src/store/store';
import { memoryFolder } from './journal/memory-folder';
import { memoryJournal } from './journal/memory-journal';
import {
  at,
  begun,
  broken,
  brokenOffOnce,
  cut,
  eachAnew,
  open,
  openWith,
  refusing,
  reopened,
} from './page-of-phone';

eachAnew();

describe('settings and figures of which each copy missed something', () => {
  const kerfOf = async (store: Store) => (await store.shop()).kerf;
  const away = () => {
    throw new Error('no');
  };

  test('D9: one taken away while the journal was away stays away', async () => {
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

  test('values stay in the journal while an emptied database cannot be filled', async () => {
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

  test('a journal that did not answer at the start keeps its values, also when a job was begun meanwhile', async () => {
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

  test('D7: a write broken off and tried again does not land over a newer one', async () => {
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
  test('a change the journal missed while the copies were compared is said to be in the database alone', async () => {
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

  test('rows set aside while the journal did not answer come into it later', async () => {
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

  test('a row set aside does not make the copies differ at every comparison', async () => {
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
      if (calls === 1) await new Promise((done) => setTimeout(done, 1500));
      return journal.rows();
    };
    const again = await openWith({ ...journal, rows: late }, 60);
    await again.evenOut();
    await new Promise((done) => setTimeout(done, 1600));
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
    expect(await newer.getAll('entries')).toHaveLength(1);
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
});
