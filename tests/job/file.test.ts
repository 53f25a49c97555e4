import 'fake-indexeddb/auto';
import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Entry } from '../../src/job/entry';
import { compareWith, mostBytes, readJobFile, writeJobFile } from '../../src/job/file';
import { openStore } from '../../src/store/store';
import { runs } from '../runs';

const sample = readFileSync('demo-data/mineral-and-shell-cabinet.json', 'utf8');
const read = (text: string) => {
  const file = readJobFile(text);
  if (!file.ok) throw new Error(file.error.code);
  return file.value;
};

describe('readJobFile', () => {
  test('the sample job reads, and writes back to the letter', () =>
    expect(writeJobFile(read(sample))).toBe(sample));

  test('a newer file is refused by its version', () => {
    expect(readJobFile(sample.replace('"knifeline": 1', '"knifeline": 3'))).toEqual({
      ok: false,
      error: { code: 'newer-file', version: 3 },
    });
  });

  test('a damaged entry is named by its place', () => {
    const bad = readJobFile(sample.replace('"value":"257/4"', '"value":"257/0"'));
    expect(!bad.ok && bad.error).toMatchObject({ code: 'bad-entry', at: 22 });
  });

  test('too big a file is not even looked at', () => {
    expect(readJobFile(' '.repeat(mostBytes + 1))).toMatchObject({ ok: false, error: { code: 'too-big' } });
  });

  test('the longest log that is taken goes out as a file that comes back in', () => {
    const id = 'abcdefghijklmnop';
    const tick = (count: number): Entry => ({
      job: id,
      device: id,
      count,
      at: '2026-11-25T10:00:00.000Z',
      act: `${id}.${count}`,
      label: 'Cut: Left, no. 30 on face A',
      kind: 'tick',
      op: `cut/${id}/${id}~30~near/left`,
      figure: '3809/64',
    });
    const entries = Array.from({ length: 1000 }, (_, k) => tick(199_000 + k));
    expect(writeJobFile({ job: id, entries }).length * 200).toBeLessThan(mostBytes);
  });

  test('whatever JSON it is given, it answers, and takes only what is whole', () => {
    fc.assert(
      fc.property(fc.json({ maxDepth: 4 }), (text) => {
        expect(readJobFile(text).ok).toBe(false);
      }),
      { numRuns: runs(500) },
    );
  });

  test('one value of one entry replaced by anything is read the same or refused, never half taken', () => {
    const { entries } = read(sample);
    const odd = fc.oneof(
      fc.jsonValue({ maxDepth: 2 }),
      fc.constantFrom('1/0', '1e9', '__proto__', -1, 1.5, Number.MAX_VALUE, ''),
    );
    fc.assert(
      fc.property(
        fc.nat(entries.length - 1),
        fc.constantFrom(
          'job',
          'device',
          'count',
          'at',
          'act',
          'label',
          'kind',
          'path',
          'value',
          'constructor',
        ),
        odd,
        (k, key, value) => {
          const changed = entries.map((e, j) => (j === k ? { ...e, [key]: value } : e));
          const found = readJobFile(JSON.stringify({ knifeline: 1, job: 'mineralshell', entries: changed }));
          if (found.ok) expect(found.value.entries).toHaveLength(entries.length);
          else expect(found.error.code).toMatch(/bad-entry/);
        },
      ),
      { numRuns: runs(1000) },
    );
  });
});

describe('taking a file in', () => {
  const at = { name: 'files', randomId: () => 'me', now: () => '2026-11-25T10:00:00.000Z' };

  test('M1, M3: merge adds what is new, twice changes nothing, and what differs is set aside', async () => {
    const store = await openStore(at);
    if (!store.ok) throw new Error(store.error.code);
    const { job, entries } = read(sample);
    expect(await store.value.addEntries(job, entries.slice(0, 40))).toMatchObject({ ok: true, value: 40 });
    expect(await store.value.addEntries(job, entries)).toMatchObject({
      ok: true,
      value: entries.length - 40,
    });
    expect(await store.value.addEntries(job, entries)).toMatchObject({ ok: true, value: 0 });
    const { entries: now } = await store.value.load(job);
    expect(writeJobFile({ job, entries: now })).toBe(sample);
    const other: Entry[] = entries.map((e, k) => (k === 3 ? { ...e, label: 'another' } : e));
    const against = compareWith(now, other);
    expect([against.fresh.length, against.differing.length, against.same]).toEqual([
      0,
      1,
      entries.length - 1,
    ]);
    store.value.close();
  });
});
