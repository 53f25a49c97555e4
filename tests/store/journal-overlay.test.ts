import { IDBFactory as Factory } from 'fake-indexeddb';
import { describe, expect, test } from 'vitest';
import { logInHand } from '../../src/app/log-in-hand';
import { editJob } from '../../src/job/edits';
import type { Entry } from '../../src/job/entry';
import { fold, over } from '../../src/job/log';
import { undoable, undoOf } from '../../src/job/undo';
import { inches } from '../../src/length/length';
import type { Store } from '../../src/store/store';
import { memoryFolder } from './journal/memory-folder';
import { at, begun, broken, cut, eachAnew, open, refusing, reopened, tick, ticks } from './page-of-phone';

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

  test('what the journal took alone from two pages, one opened again in between, is heard of too', async () => {
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

  test('a figure the journal took alone stands until the database takes a newer one', async () => {
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
