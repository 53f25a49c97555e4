import { IDBFactory as Factory } from 'fake-indexeddb';
import { openDB } from 'idb';
import { describe, expect, test, vi } from 'vitest';
import { makeUnsaved } from '../../src/app/unsaved';
import { valuesInHand } from '../../src/app/values-in-hand';
import { editJob } from '../../src/job/edits';
import type { Entry } from '../../src/job/entry';
import { shopTools } from '../../src/job/shop-tools';
import { undoable, undoOf } from '../../src/job/undo';
import { inches } from '../../src/length/length';
import type { Journal } from '../../src/store/journal/journal';
import { openStore, type Store } from '../../src/store/store';
import { failAt } from './faults';
import { memoryFolder } from './journal/memory-folder';
import { memoryJournal } from './journal/memory-journal';
import {
  at,
  begun,
  broken,
  cut,
  eachAnew,
  open,
  openWith,
  purged,
  reopened,
  tick,
  ticks,
} from './page-of-phone';

eachAnew();

const [eighth, thirtySeconds] = [inches(1n, 8n), inches(3n, 32n)];
const kerfOf = async (store: Store) => (await store.shop()).kerf;
const soon = () => new Promise((done) => setTimeout(done, 40));

/** A page by a clock of its own. */
async function openAt(journal: Journal, clock: () => string): Promise<Store> {
  let ids = 0;
  const opened = await openStore({ randomId: () => `clock${++ids}`, now: clock, journal });
  if (!opened.ok) throw new Error(opened.error.code);
  return opened.value;
}

test('a figure the version before took in the journal alone, which said no moment, is the later word', async () => {
  const folder = memoryFolder();
  (await begun(folder)).close();
  const db = await openDB('knifeline');
  await db.put('shop', '1/8', 'kerf');
  db.close();
  await memoryJournal(folder).append([
    ['shop', 'kerf', '1/8'],
    ['shop', 'kerf', '3/32'],
    ['settings', 'alone/shop/kerf', true],
  ]);
  expect(await kerfOf(await reopened(folder))).toEqual(thirtySeconds);
});

describe('values that come into the database late are on the screen', () => {
  async function handOf(store: Store) {
    const hand = await valuesInHand(store, makeUnsaved(), Promise.resolve({ shopTools }));
    store.onValues(() => void hand.load());
    return hand;
  }

  test('also where the journal did not answer at the start', async () => {
    const folder = memoryFolder();
    const store = await begun(folder);
    await store.keepShop('kerf', eighth);
    await store.keep('lists', { shims: [1, 2, 3] });
    store.close();
    globalThis.indexedDB = new Factory();
    const journal = memoryJournal(folder);
    let calls = 0;
    const rows = async () => {
      calls += 1;
      return calls === 1 ? undefined : journal.rows();
    };
    const again = await openWith({ ...journal, rows });
    const hand = await handOf(again);
    await again.evenOut();
    await vi.waitFor(() =>
      expect([hand.shop.value.kerf, hand.settings.value.lists]).toEqual([eighth, { shims: [1, 2, 3] }]),
    );
  });

  test('also the sum of Figure, with a job and with none', async () => {
    for (const job of [true, false]) {
      globalThis.indexedDB = new Factory();
      const folder = memoryFolder();
      const store = job ? await begun(folder) : await open(folder);
      await store.keep('figure', 'old');
      await broken(() => store.keep('figure', 'new'));
      store.close();
      const again = await open(folder);
      const hand = await handOf(again);
      await again.evenOut();
      await vi.waitFor(() => expect(hand.figure.value).toEqual({ figure: 'new' }));
      expect(await again.setting('figure')).toBe('new');
    }
  });

  test('another page that moves about does not take late values off the screen', async () => {
    const folder = memoryFolder();
    const store = await begun(folder);
    await store.keepShop('kerf', eighth);
    const other = await open(folder);
    await broken(() => store.keepShop('kerf', thirtySeconds));
    const heard = new Promise<void>((done) => store.onChange(() => done()));
    await other.keep('here', '#/jobs');
    await heard;
    expect([await kerfOf(store), store.keptIn()]).toEqual([thirtySeconds, 'journal']);
  });
});

describe('a clock set back', () => {
  const [noon, before] = ['2026-11-26T12:00:00.000Z', '2026-11-26T11:00:00.000Z'];

  test('makes no later figure older, whichever copy took it', async () => {
    for (const alone of ['first', 'second'] as const) {
      globalThis.indexedDB = new Factory();
      const folder = memoryFolder();
      let clock = noon;
      const first = await openAt(memoryJournal(folder), () => clock);
      const keep = () => first.keepShop('kerf', thirtySeconds);
      await (alone === 'first' ? broken(keep) : keep());
      clock = before;
      const again = alone === 'first' ? first : await openAt(memoryJournal(folder), () => clock);
      const later = () => again.keepShop('kerf', eighth);
      await (alone === 'second' ? broken(later) : later());
      await again.evenOut();
      expect(await kerfOf(again)).toEqual(eighth);
    }
  });

  test('does not have the logs compared again and again', async () => {
    const journal = memoryJournal(memoryFolder());
    let [asked, bad, clock] = [0, false, noon];
    const append: Journal['append'] = async (rows) => !bad && journal.append(rows);
    const rows = () => {
      asked += 1;
      return journal.rows();
    };
    const store = await openAt({ ...journal, append, rows }, () => clock);
    await store.makeJob({ job: 'j1', label: 'New', changes: editJob({ name: 'Case' }) });
    bad = true;
    await cut(store, 'a');
    bad = false;
    await soon();
    clock = before;
    await store.evenOut();
    asked = 0;
    for (let k = 0; k < 3; k += 1) await store.evenOut();
    expect([asked, store.keptIn()]).toEqual([0, 'both']);
  });
});

describe('rows set aside', () => {
  const differing = async (store: Store) => {
    const [entry] = (await store.load('j1')).entries;
    return [{ from: 'j1', why: 'differs', row: { ...(entry as Entry), label: 'theirs' } }];
  };

  test('a row damaged in the database comes back from the journal whole', async () => {
    const folder = memoryFolder();
    const store = await begun(folder);
    await cut(store, 'a');
    await store.evenOut();
    store.close();
    const db = await openDB('knifeline');
    const row = (await db.getAll('entries')).find(({ kind }) => kind === 'tick');
    await db.put('entries', { ...row, figure: 'junk' });
    db.close();
    const again = await open(folder);
    const first = await ticks(again);
    await again.evenOut();
    expect([first, await ticks(again)]).toEqual([[], ['a']]);
  });

  test('those of a job thrown away have no logs compared', async () => {
    const folder = memoryFolder();
    const store = await begun(folder);
    await store.addEntries('j1', [], await differing(store));
    await store.append({ job: 'j1', label: 'Deleted', changes: editJob({ deleted: at }) });
    await store.evenOut();
    await purged(store, '2027-10-26T10:00:00.000Z');
    await store.makeJob({ job: 'j2', label: 'New', changes: editJob({ name: 'Bench' }) });
    store.close();
    const journal = memoryJournal(folder);
    let asked = 0;
    const rows = () => {
      asked += 1;
      return journal.rows();
    };
    const again = await openWith({ ...journal, rows });
    for (let k = 0; k < 3; k += 1) await again.evenOut();
    expect(asked).toBeLessThan(2);
  });

  test('those the journal missed while it had not answered before either are in it at last', async () => {
    const folder = memoryFolder();
    const journal = memoryJournal(folder);
    let bad = false;
    const store = await openWith({
      ...journal,
      append: async (rows) => !bad && journal.append(rows),
      summary: async () => (bad ? undefined : journal.summary()),
    });
    await store.makeJob({ job: 'j1', label: 'New', changes: editJob({ name: 'Case' }) });
    bad = true;
    await store.evenOut();
    expect(store.keptIn()).toBe('database');
    await store.addEntries('j1', [], await differing(store));
    bad = false;
    await soon();
    await store.evenOut();
    expect(store.keptIn()).toBe('both');
    store.close();
    globalThis.indexedDB = new Factory();
    expect(await (await reopened(folder)).aside()).toHaveLength(1);
  });
});

test('an act the journal took too late, tried again, is there once, and its undo stands', async () => {
  for (const even of [false, true]) {
    globalThis.indexedDB = new Factory();
    const folder = memoryFolder();
    (await begun(folder)).close();
    const journal = memoryJournal(folder);
    let late = true;
    const store = await openWith({
      ...journal,
      append: async (rows) => (await journal.append(rows)) && !late,
    });
    await store.load('j1');
    const act = { job: 'j1', label: 'a', changes: [tick('a')] };
    expect((await broken(() => store.append(act))).ok).toBe(false);
    late = false;
    if (even) await store.evenOut();
    expect((await store.append(act)).ok).toBe(true);
    const { entries } = await store.load('j1');
    expect(entries).toHaveLength(2);
    const [one] = undoable(entries, store.own);
    if (!one) throw new Error('no act');
    await store.append({ job: 'j1', label: 'Undo', changes: undoOf(entries, one), undoes: one.act });
    await store.evenOut();
    expect(await ticks(store)).toEqual([]);
  }
});

describe('settings and figures asked for in one breath', () => {
  const never = Number.POSITIVE_INFINITY;

  test('are read once', async () => {
    const store = await begun();
    const calls = failAt(never, 'closed', false);
    await store.settings();
    const alone = calls.count();
    await Promise.all([store.settings(), store.shop(), store.settings()]);
    expect(alone).toBeGreaterThan(0);
    expect(calls.count()).toBe(2 * alone);
    calls.clear();
  });

  test('D1: what is asked after something was kept has it, also while an earlier asking is still unanswered', async () => {
    const store = await begun();
    const before = store.settings();
    const keeping = store.keep('here', '#/figure');
    const both = Promise.all([before, keeping.then(() => store.settings())]);
    expect((await both)[1]).toMatchObject({ here: '#/figure' });
  });
});
