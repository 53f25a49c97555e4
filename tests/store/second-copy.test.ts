import { IDBFactory as Factory } from 'fake-indexeddb';
import { describe, expect, test } from 'vitest';
import { logInHand } from '../../src/app/log-in-hand';
import { editJob } from '../../src/job/edits';
import type { Change, Entry } from '../../src/job/entry';
import { fold, over, undoable, undoOf } from '../../src/job/log';
import { inches } from '../../src/length/length';
import { findJournal, tidied } from '../../src/store/journal/files';
import type { Journal } from '../../src/store/journal/journal';
import { bytesOf } from '../../src/store/journal/lines';
import { keptOf, type Row } from '../../src/store/journal/row';
import type { Store } from '../../src/store/store';
import { type MemoryFolder, memoryFolder } from './journal/memory-folder';
import { memoryJournal } from './journal/memory-journal';
import {
  aging,
  at,
  begun,
  broken,
  cut,
  eachAnew,
  open,
  openWith,
  purged,
  refusing,
  reopened,
  tick,
  ticks,
} from './page-of-phone';

eachAnew();

describe('what the journal takes alone', () => {
  test('D3: two taps at once are two acts', async () => {
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
  test('D6: what the journal alone has is read as if it stood there, on a job opened again too', async () => {
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

  test('its acts can be taken back, on a page opened later too', async () => {
    const folder = memoryFolder();
    const made = await begun(folder);
    await broken(() => cut(made, 'a'));
    for (const store of [made, await reopened(folder)]) {
      const { entries } = await store.load('j1');
      const [act] = undoable(entries, store.own);
      expect(act?.label).toBe('a');
    }
    made.close();
    const store = await reopened(folder);
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
    await purged(store, '2026-12-20T10:00:00.000Z');
    expect(await ticks(store)).toEqual(['after', 'mine']);
  });

  test('D15: and brought back in one copy alone is not thrown out of both', async () => {
    const folder = memoryFolder();
    const store = await begun(folder);
    await cut(store, 'mine');
    await store.append({ job: 'j1', label: 'Deleted', changes: editJob({ deleted: deletion.at }) });
    await store.evenOut();
    const now = fold((await store.load('j1')).entries);
    const back = { job: 'j1', label: 'Back', changes: over(now, editJob({ deleted: undefined })) };
    await aging(store, '2027-10-26T10:00:00.000Z');
    expect((await broken(() => store.append(back))).ok).toBe(true);
    store.close();
    const again = await open(folder);
    await Promise.all([again.purge('2027-10-26T10:00:00.000Z'), again.evenOut()]);
    expect(await ticks(again)).toEqual(['mine']);
  });

  describe('by the clock of one start', () => {
    const days = (n: number) => new Date(Date.now() + n * 24 * 3600 * 1000).toISOString();
    const deleted = async (store: Store) => {
      const changes = editJob({ deleted: days(0) });
      await store.append({ job: 'j1', label: 'Deleted', changes });
      await store.append({ job: 'j2', label: 'Cut', changes: ['a', 'b', 'c', 'd'].map(tick) });
    };
    const there = async (store: Store) => (await store.jobs()).some(({ id }) => id === 'j1');

    test('40 days ahead it comes back all the same, and after many such starts', async () => {
      const store = await begun(memoryFolder());
      await deleted(store);
      for (let k = 0; k < 20; k += 1) {
        for (const off of [40 + k, 0]) await store.purge(days(off));
        const changes = ['a', 'b', 'c', 'd'].map(tick);
        await store.append({ job: 'j2', label: 'Cut', changes });
      }
      expect(await there(store)).toBe(true);
      expect(await store.settings()).not.toHaveProperty('watch');
    });

    test('brought back and deleted again, or worked on since, its days begin anew', async () => {
      const store = await begun(memoryFolder());
      await deleted(store);
      await aging(store, days(49));
      await store.addEntries('j1', [{ ...deletion, path: 'name', value: 'Shells', at: days(-3) }]);
      await store.purge(days(100));
      expect(await there(store)).toBe(true);
    });

    test('D15: on eight starts that bear each other out it goes, with those deleted with it alone', async () => {
      const store = await begun(memoryFolder());
      await deleted(store);
      await purged(store, days(80));
      expect((await store.jobs()).map(({ id }) => id).sort()).toEqual(['elsewhere', 'j2']);
    });
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
  test('D7: an act that was kept unheard is there once', async () => {
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
    expect(log.unsaved.now.value.map(({ label }) => label)).toEqual(['old']);
    // said anew of the same thing, the old one is done with
    await log.write('newer', [length('7')]);
    expect(log.unsaved.now.value).toEqual([]);
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
