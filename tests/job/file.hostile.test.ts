import 'fake-indexeddb/auto';
import { readFileSync } from 'node:fs';
import { IDBFactory } from 'fake-indexeddb';
import fc from 'fast-check';
import { openDB } from 'idb';
import { beforeEach, describe, expect, test } from 'vitest';
import { editJob } from '../../src/job/edits';
import type { Change } from '../../src/job/entry';
import { asideOf, compareWith, readJobFile, writeJobFile } from '../../src/job/file';
import { merge } from '../../src/job/log';
import { schemaVersion } from '../../src/store/migrations';
import { openStore, type Store } from '../../src/store/store';
import { runs } from '../runs';
import { type Log, tap } from './phones';

const sample = readFileSync('demo-data/mineral-and-shell-cabinet.json', 'utf8');
const job = 'mineralshell';
const lines = sample.split('\n');

beforeEach(() => {
  globalThis.indexedDB = new IDBFactory();
});

/** A phone with the sample's first half on it, and a job of its own. */
async function phone(): Promise<Store> {
  const store = await openStore({
    name: 'hostile',
    randomId: () => 'me',
    now: () => '2026-11-25T10:00:00.000Z',
  });
  const whole = readJobFile(sample);
  if (!store.ok || !whole.ok) throw new Error('no phone to try it on');
  await store.value.makeJob({ job: 'own', label: 'New', changes: editJob({ name: 'Own' }) });
  await store.value.addEntries(job, whole.value.entries.slice(0, 60));
  return store.value;
}

/** Every row of every store, as kept. */
async function everything(): Promise<string> {
  const db = await openDB('hostile', schemaVersion);
  const rows = await Promise.all([...db.objectStoreNames].map((name) => db.getAll(name)));
  db.close();
  return JSON.stringify(rows);
}

/** Takes a file in as the app does; says whether anything of it was taken. */
async function takeIn(store: Store, text: string): Promise<boolean> {
  const file = readJobFile(text);
  if (!file.ok) return false;
  const ours = (await store.load(file.value.job)).entries;
  const { differing } = compareWith(ours, file.value.entries);
  const done = await store.addEntries(file.value.job, file.value.entries, asideOf(differing));
  return done.ok;
}

/** The sample's first half as two phones went on with it: most of the file says what it is over. */
function twoPhones(): string {
  const whole = readJobFile(sample);
  if (!whole.ok) throw new Error(whole.error.code);
  const start = whole.value.entries.slice(0, 60);
  const said = start
    .slice(10)
    .flatMap((e): readonly Change[] =>
      e.kind === 'edit' ? [{ kind: e.kind, path: e.path, value: e.value }] : [],
    );
  const again = (device: string) =>
    said.reduce<Log>((log, change) => tap(log, device, [change], { job, label: 'Said again' }), start);
  return writeJobFile({ job, entries: merge(again('anna'), again('ben')) });
}

const line = (over: string, at = 5) => [...lines.slice(0, at), over, ...lines.slice(at + 1)].join('\n');
const entry = (over: Record<string, unknown>) =>
  JSON.stringify({
    knifeline: 1,
    job,
    entries: [
      {
        job,
        device: 'x',
        count: 900,
        at: '2026-11-25T10:00:00.000Z',
        act: 'x.900',
        label: 'l',
        kind: 'edit',
        path: 'name',
        value: 'n',
        ...over,
      },
    ],
  });
const deep = (n: number) => `${'['.repeat(n)}${']'.repeat(n)}`;

describe('a hostile or damaged file', () => {
  test('the file the others are made from is itself taken', async () => {
    const store = await phone();
    expect(await takeIn(store, entry({}))).toBe(true);
    expect(await takeIn(store, sample)).toBe(true);
    store.close();
  });

  test.each([
    ['nothing', ''],
    ['a word', 'hello'],
    ['null', 'null'],
    ['a list', '[]'],
    ['lists in lists, deeper than a parser stands', deep(200_000)],
    ['another kind of JSON', '{"name":"x","version":"1.0.0"}'],
    ['a page', '<!doctype html><script>alert(1)</script>'],
    ['cut short', sample.slice(0, 4000)],
    ['twice over', sample + sample],
    ['no entries', `{"knifeline":1,"job":"${job}","entries":[]}`],
    ['no version', sample.replace('"knifeline": 1,', '')],
    ['version 0', sample.replace('"knifeline": 1', '"knifeline": 0')],
    ['a later version', sample.replace('"knifeline": 1', '"knifeline": 9')],
    ['a version in words', sample.replace('"knifeline": 1', '"knifeline": "1"')],
    ['a key nobody knows', sample.replace('"knifeline": 1', '"knifeline": 1, "also": 1')],
    ['a key of the language', sample.replace('"knifeline": 1', '"knifeline": 1, "__proto__": {"a": 1}')],
    ['too many entries', `{"knifeline":1,"job":"${job}","entries":[${'0,'.repeat(200_000)}0]}`],
    ['too big', entry({ label: 'l'.repeat(65 * 1024 * 1024) })],
    ['the same entry twice', line(`${lines[4]}`)],
    ['an entry of another job', entry({ job: 'other' })],
    ['an entry that is a number', line('12,')],
    ['a field nobody knows', entry({ path: 'boards/b/price' })],
    ['a path of the language', entry({ path: '__proto__/polluted' })],
    ['a path through the language', entry({ path: 'boards/constructor/prototype' })],
    ['a path that climbs', entry({ path: '../name' })],
    ['a path without end', entry({ path: 'boards/'.repeat(100_000) })],
    ['an entry with a key of the language', entry({}).replace('"path"', '"__proto__":{"a":1},"path"')],
    ['an entry with a constructor', entry({ constructor: { name: 'x' } })],
    ['no value', entry({ value: undefined })],
    ['a name that is a number', entry({ value: 12 })],
    ['a name without end', entry({ value: 'n'.repeat(121) })],
    ['a value nested without end', entry({}).replace('"n"', deep(100_000))],
    ['a length as a decimal', entry({ path: 'boards/b/length', value: '64.25' })],
    ['a length as a number', entry({ path: 'boards/b/length', value: 64.25 })],
    ['a length over nothing', entry({ path: 'boards/b/length', value: '1/0' })],
    ['a length with an exponent', entry({ path: 'boards/b/length', value: '1e400' })],
    ['a length of many digits', entry({ path: 'boards/b/length', value: '9'.repeat(61) })],
    ['a length with a line end', entry({ path: 'boards/b/length', value: '12\n' })],
    ['readings without end', entry({ path: 'stock/s/readings', value: Array(501).fill('1') })],
    ['readings one of which is none', entry({ path: 'stock/s/readings', value: ['1', null] })],
    ['more copies than there can be', entry({ path: 'boards/b/copies', value: 1e9 })],
    ['half a copy', entry({ path: 'boards/b/copies', value: 0.5 })],
    ['a deletion on no day', entry({ path: 'deleted', value: '0' })],
    ['a moment no calendar has', entry({ at: '2026-13-45T99:99:99Z' })],
    ['count 0', entry({ count: 0 })],
    ['count below 0', entry({ count: -1 })],
    ['a broken count', entry({ count: 1.5 })],
    ['a count nothing can follow', entry({ count: Number.MAX_SAFE_INTEGER })],
    ['a count that leaves little room', entry({ count: 2 ** 40 })],
    ['a count in words', entry({ count: '900' })],
    ['a phone without a name', entry({ device: '' })],
    ['a phone with a path for a name', entry({ device: '../x' })],
    ['an act of nothing', entry({ act: '' })],
    ['a label without end', entry({ label: 'l'.repeat(201) })],
    ['a kind nobody knows', entry({ kind: 'run' })],
    [
      'a tick of no operation',
      entry({ kind: 'tick', op: 'saw', figure: '1', path: undefined, value: undefined }),
    ],
    [
      'a tick to no figure',
      entry({ kind: 'tick', op: 'cut/b/s/1', figure: 'x', path: undefined, value: undefined }),
    ],
    [
      'a tick with a value',
      entry({ kind: 'tick', op: 'cut/b/s/1', figure: '1', path: undefined, value: 'n' }),
    ],
  ])('%s is refused, and nothing kept changes', async (_, text) => {
    const store = await phone();
    const before = await everything();
    expect(await takeIn(store, text)).toBe(false);
    expect(await everything()).toBe(before);
    store.close();
  });

  /** Damage of a few characters anywhere, as a bad copy or a curious hand does. */
  const spot = fc.record({
    part: fc.double({ min: 0, max: 1, maxExcluded: true, noNaN: true }),
    cut: fc.nat(12),
    put: fc.oneof(
      fc.constantFrom('', '"', '{', '}', '[', ',', ':', '\\', '\u0000', '9', '-', 'null', '/0', '__proto__'),
      fc.string({ maxLength: 6 }),
    ),
  });
  const damaged = (good: string) =>
    fc.array(spot, { minLength: 1, maxLength: 4 }).map((spots) =>
      spots.reduce((text, { part, cut, put }) => {
        const at = Math.floor(part * text.length);
        return text.slice(0, at) + put + text.slice(at + cut);
      }, good),
    );

  test.each([
    ['of version 1', sample],
    ['of version 2', twoPhones()],
  ])(
    'damaged anywhere, one %s is refused whole, or taken with nothing of ours changed',
    async (_, good) => {
      const store = await phone();
      const ours = new Set((await store.load(job)).entries.map((e) => JSON.stringify(e)));
      let refused = 0;
      await fc.assert(
        fc.asyncProperty(damaged(good), async (text) => {
          const before = await everything();
          const taken = await takeIn(store, text);
          if (!taken) {
            refused += 1;
            expect(await everything()).toBe(before);
            return;
          }
          const { entries, setAside } = await store.load(job);
          expect(setAside).toBe(0);
          const now = new Set(entries.map((e) => JSON.stringify(e)));
          for (const entry of ours) expect(now.has(entry)).toBe(true);
          const written = writeJobFile({ job, entries });
          const again = readJobFile(written);
          expect(again.ok && writeJobFile(again.value)).toBe(written);
        }),
        { numRuns: runs(150), seed: 20261125 },
      );
      expect(refused).toBeGreaterThan(50);
      expect((await store.load('own')).entries).toHaveLength(1);
      store.close();
    },
    600_000,
  );
});
