import { IDBFactory as Factory } from 'fake-indexeddb';
import { expect, test, vi } from 'vitest';
import { memoryFolder } from './journal/memory-folder';
import { begun, cut, eachAnew, open, ticks } from './page-of-phone';

vi.mock('../../src/store/reconcile-copies', () => {
  const missing = async () => {
    throw new TypeError('did not come');
  };
  return { keepEven: missing, purgeJobs: missing, restore: missing };
});

eachAnew();

test('D1, D8: where the file that fills an emptied database does not come, all is shown, and kept in the journal', async () => {
  const folder = memoryFolder();
  const store = await begun(folder);
  expect((await cut(store, 'a')).ok).toBe(true);
  store.close();
  globalThis.indexedDB = new Factory();
  const again = await open(folder);
  await vi.waitFor(() => expect(again.keptIn()).toBe('journal'));
  expect([again.keptIn(), await ticks(again)]).toEqual(['journal', ['a']]);
  expect((await cut(again, 'b')).ok).toBe(true);
  expect(await ticks(again)).toEqual(['a', 'b']);
  again.close();
  globalThis.indexedDB = new Factory();
  expect(await ticks(await open(folder))).toEqual(['a', 'b']);
});

test('D5: a change is kept in both copies without that file', async () => {
  const store = await begun(memoryFolder());
  expect((await cut(store, 'a')).ok).toBe(true);
  expect(store.keptIn()).toBe('both');
  await expect(store.purge('2026-11-25T10:00:00.000Z')).rejects.toThrow();
  expect(await ticks(store)).toEqual(['a']);
});
