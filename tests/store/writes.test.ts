import 'fake-indexeddb/auto';
import { IDBFactory } from 'fake-indexeddb';
import { beforeEach, describe, expect, test } from 'vitest';
import { doubledIn } from '../../src/job/doubled';
import { editBoard } from '../../src/job/edits';
import { fold } from '../../src/job/log';
import { said } from '../../src/job/merge';
import { open } from './schema';
import { versionTwo } from './version-two';

beforeEach(() => {
  globalThis.indexedDB = new IDBFactory();
});

describe('writing', () => {
  const job = 'cabinet';
  const length = (value: string) => ({ kind: 'edit', path: 'boards/side/length', value }) as const;

  test('M9: a change that does not say what it is over is over all that stands on the phone', async () => {
    await versionTwo('kept');
    const store = await open();
    await store.append({ job, label: 'Length', changes: [length('65')] });
    const { entries } = await store.load(job);
    expect(entries.map((e) => e.over).pop()).toEqual(['2.phone1', '2.phone2']);
    expect(fold(entries).doubled.size).toBe(0);
  });

  test('M9: a change that says what it is over replaces that alone: what another page took in meanwhile stands beside it', async () => {
    await versionTwo('kept');
    const store = await open();
    await store.append({ job, label: 'Length', changes: [{ ...length('65'), over: ['2.phone1'] }] });
    const readings = doubledIn(fold((await store.load(job)).entries)).map((d) => d.readings.map(said));
    expect(readings).toEqual([['513/8', '65']]);
  });

  test('a name that two phones gave is listed as it stands', async () => {
    const store = await open();
    const made = await store.makeJob({
      job: 'j',
      label: 'New',
      changes: [{ kind: 'edit', path: 'name', value: 'A' }],
    });
    if (!made.ok) throw new Error(made.error.code);
    const [mine] = made.value;
    if (!mine) throw new Error('nothing written');
    const theirs = { ...mine, device: 'ben', count: 2, act: 'ben.2', over: ['1.me'] };
    await store.addEntries('j', [{ ...theirs, kind: 'edit', path: 'name', value: null }]);
    await store.append({
      job: 'j',
      label: 'Named',
      changes: [{ kind: 'edit', path: 'name', value: 'B', over: ['1.me'] }],
    });
    expect((await store.jobs())[0]?.name).toBe('B');
    expect(
      (await store.append({ job: 'j', label: 'Board', changes: editBoard('b', { name: 'x' }) })).ok,
    ).toBe(true);
  });
});
