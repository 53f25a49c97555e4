import { expect, test } from 'vitest';
import { inches } from '../../src/length/length';
import { markOf } from '../../src/store/mark';
import type { Store } from '../../src/store/store';
import { begun, cut, eachAnew, open, tick } from './page-of-phone';

eachAnew();

/** Many ticks, an act each hundred: more than stay single once they are packed. */
async function cutMany(store: Store): Promise<void> {
  for (let k = 0; k < 300; k += 100) {
    const changes = Array.from({ length: 100 }, (_, n) => ({ ...tick(`s${k + n}`), over: [] }));
    await store.append({ job: 'j1', label: `Cut ${k}`, changes });
  }
}

test.each<readonly [string, (store: Store) => Promise<unknown>]>([
  ['a tick', (store) => cut(store, 'b')],
  [
    'an entry of another phone, with a lower count',
    (store) =>
      store.addEntries('j1', [
        { job: 'j1', device: 'other', count: 1, at: '', act: 'other.1', label: '', ...tick('b') },
      ]),
  ],
  ['a setting', (store) => store.keep('job', 'j1')],
  ['a setting that says what it said', (store) => store.keep('here', '#/cuts')],
  ['a figure of the shop', (store) => store.keepShop('kerf', inches(1n, 8n))],
  ['a figure taken away', (store) => store.keepShop('kerf', undefined)],
])('%s makes another mark', async (_, change) => {
  const store = await begun();
  await cut(store, 'a');
  await store.keep('here', '#/cuts');
  const before = await markOf('j1');
  expect(await markOf('j1')).toBe(before);
  await change(store);
  expect(await markOf('j1')).not.toBe(before);
});

test('what is not of the job leaves its mark as it was: another job, a start, packing', async () => {
  const store = await begun();
  await cutMany(store);
  const before = await markOf('j1');
  await store.makeJob({ job: 'j2', label: 'New', changes: [tick('z')] });
  await store.pack();
  store.close();
  (await open()).close();
  expect(await markOf('j1')).toBe(before);
});

test('where no database is there is no mark, and none is made', async () => {
  await expect(markOf('j1')).rejects.toBeDefined();
  expect(await indexedDB.databases()).toEqual([]);
});
