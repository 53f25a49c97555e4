import { describe, expect, test } from 'vitest';
import { editJob } from '../../src/job/edits';
import type { Entry } from '../../src/job/entry';
import { fold, over } from '../../src/job/log';
import type { Store } from '../../src/store/store';
import { memoryFolder } from './journal/memory-folder';
import { aging, begun, broken, cut, eachAnew, open, purged, tick, ticks } from './page-of-phone';

eachAnew();

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
