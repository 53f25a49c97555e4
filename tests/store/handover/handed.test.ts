import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Entry } from '../../../src/job/entry';
import { writeJobFile } from '../../../src/job/file';
import { merge } from '../../../src/job/log';
import { compact, knownBy, readHanded, standing, writeChanges } from '../../../src/store/handover/handed';
import { handedOf, knownIn, together, withHanded } from '../../../src/store/handover/known';
import { runs } from '../../runs';

const entry = (device: string, count: number): Entry => ({
  job: 'j',
  device,
  count,
  at: '2026-11-25T10:00:00.000Z',
  act: `${device}.${count}`,
  label: 'Name given',
  kind: 'edit',
  path: 'name',
  value: `${device} ${count}`,
});
const log = [entry('a', 1), entry('a', 2), entry('b', 3), entry('a', 4), entry('b', 5)];
const file = { job: 'j', entries: log };

const changes = (known: ReadonlyMap<string, number>): string => writeChanges(file, known) ?? '';

describe('writeChanges and readHanded', () => {
  test('a whole job reads as it is, packed or not', () => {
    const whole = { ok: true, value: { file } };
    expect(readHanded(writeJobFile(file))).toEqual(whole);
    expect(readHanded(compact(writeJobFile(file)))).toEqual(whole);
  });

  test('changes hold what the other phone lacks, and say what they stand on', () => {
    const read = readHanded(compact(changes(new Map([['a', 2]]))));
    expect(read).toEqual({
      ok: true,
      value: { file: { job: 'j', entries: log.slice(2) }, since: new Map([['a', [2, 2]]]) },
    });
  });

  test('there are none when the other phone has all', () => {
    expect(writeChanges(file, knownIn(log))).toBeUndefined();
  });

  test.each([
    ['a later version', { knifelineChanges: 2, since: {}, file }, 'newer-changes'],
    ['a version in words', { knifelineChanges: '1', since: {}, file }, 'not-changes'],
    ['nothing it stands on', { knifelineChanges: 1, file }, 'not-changes'],
    ['a list of what it stands on', { knifelineChanges: 1, since: [], file }, 'not-changes'],
    ['a count below one', { knifelineChanges: 1, since: { a: [0, 1] }, file }, 'not-changes'],
    ['a broken count', { knifelineChanges: 1, since: { a: [1.5, 1] }, file }, 'not-changes'],
    [
      'a phone with a path for a name',
      { knifelineChanges: 1, since: { '../a': [1, 1] }, file },
      'not-changes',
    ],
    ['a key nobody knows', { knifelineChanges: 1, since: {}, file, also: 1 }, 'not-changes'],
    ['no file', { knifelineChanges: 1, since: {} }, 'not-json'],
    ['a file of something else', { knifelineChanges: 1, since: {}, file: { a: 1 } }, 'not-a-job-file'],
  ])('%s is refused', (_, json, code) => {
    const read = readHanded(JSON.stringify(json));
    expect(read.ok ? 'taken' : read.error.code).toBe(code);
  });

  test('a text cut short is refused', () => {
    const text = changes(new Map([['a', 2]]));
    for (let k = 0; k < text.trimEnd().length; k += 1) expect(readHanded(text.slice(0, k)).ok).toBe(false);
  });
});

describe('standing', () => {
  const read = (known: ReadonlyMap<string, number>) => {
    const handed = readHanded(changes(known));
    if (!handed.ok) throw new Error(handed.error.code);
    return handed.value;
  };

  test('changes to a job that is not here are no job', () => {
    expect(standing(read(new Map([['a', 2]])), undefined)).toEqual({
      ok: false,
      error: { code: 'job-missing' },
    });
  });

  test('changes whose beginning is not here are refused, and the gap is counted', () => {
    const handed = read(
      new Map([
        ['a', 4],
        ['b', 3],
      ]),
    );
    expect(standing(handed, log.slice(0, 1))).toEqual({
      ok: false,
      error: { code: 'earlier-missing', entries: 3 },
    });
    expect(
      standing(
        handed,
        [log[0], log[3], log[2]].flatMap((e) => e ?? []),
      ),
    ).toEqual({
      ok: false,
      error: { code: 'earlier-missing', entries: 1 },
    });
  });

  test('changes that follow what is here are a whole job', () => {
    const done = standing(read(new Map([['a', 2]])), [...log.slice(0, 2), entry('c', 3)]);
    expect(done.ok && merge(done.value.entries, [])).toEqual(merge(log, [entry('c', 3)]));
  });

  test('an entry of theirs in the place of another of ours is kept in view, not dropped', () => {
    const other = { ...entry('b', 3), label: 'Another' };
    const done = standing(read(new Map([['a', 2]])), [...log.slice(0, 2), other]);
    expect(done.ok && done.value.entries.filter((e) => e.device === 'b' && e.count === 3)).toEqual([log[2]]);
  });
});

describe('known', () => {
  test('the giver is known to have what it gave and what that stands on', () => {
    const handed = readHanded(changes(new Map([['a', 2]])));
    expect(handed.ok && knownBy(handed.value)).toEqual(knownIn(log));
  });

  test('what is kept comes back, one job beside the other; anything else is nothing', () => {
    const one = withHanded(undefined, 'j', new Map([['a', 2]]));
    const two = withHanded(one, 'constructor', new Map([['constructor', 7]]));
    expect(handedOf(two, 'j')).toEqual(new Map([['a', 2]]));
    expect(handedOf(two, 'constructor')).toEqual(new Map([['constructor', 7]]));
    for (const bad of [undefined, null, 7, 'x', [], { j: 3 }, { j: {} }, { j: { a: 'x', b: -1, c: 0.5 } }]) {
      expect(handedOf(bad, 'j')).toBeUndefined();
    }
    expect(handedOf(one, 'constructor')).toBeUndefined();
  });

  test('two phones that hand changes to and fro, some of them lost on the way, end with one log or say what is missing', () => {
    const step = fc.constantFrom(
      'a writes',
      'b writes',
      'a hands',
      'b hands',
      'a hands, lost',
      'b hands, lost',
    );
    fc.assert(
      fc.property(fc.array(step, { maxLength: 40, size: 'max' }), (steps) => {
        const phones = {
          a: {
            log: [entry('a', 1)] as readonly Entry[],
            other: undefined as ReadonlyMap<string, number> | undefined,
          },
          b: {
            log: undefined as readonly Entry[] | undefined,
            other: undefined as ReadonlyMap<string, number> | undefined,
          },
        };
        const hand = (from: 'a' | 'b', to: 'a' | 'b', lost: boolean, whole = false) => {
          const [giver, taker] = [phones[from], phones[to]];
          if (!giver.log) return;
          const now = { job: 'j', entries: giver.log };
          const text = giver.other && !whole ? writeChanges(now, giver.other) : writeJobFile(now);
          const handed = text === undefined ? undefined : readHanded(text);
          // the giver says it has arrived even where it was lost: the worst that can be
          giver.other = together(giver.other ?? new Map(), knownIn(giver.log));
          if (lost || !handed?.ok) return;
          const file = standing(handed.value, taker.log);
          if (!file.ok) return hand(from, to, false, true);
          taker.log = merge(taker.log ?? [], file.value.entries);
          taker.other = together(taker.other ?? new Map(), knownBy(handed.value));
        };
        for (const [k, what] of steps.entries()) {
          const from = what.startsWith('a') ? 'a' : 'b';
          const giver = phones[from];
          if (what.endsWith('writes')) {
            if (giver.log) giver.log = merge(giver.log, [entry(from, 100 + k)]);
          } else hand(from, from === 'a' ? 'b' : 'a', what.endsWith('lost'));
        }
        hand('a', 'b', false, true);
        hand('b', 'a', false, true);
        expect(phones.a.log).toEqual(phones.b.log);
        const written = steps.filter((s) => s === 'a writes').length + 1;
        expect(phones.a.log.filter((e) => e.device === 'a')).toHaveLength(written);
      }),
      { numRuns: runs(200) },
    );
  }, 600_000);
});

test('changes damaged anywhere are refused, or take nothing of ours away; and never crash', () => {
  const text = changes(new Map([['a', 2]]));
  const spot = fc.record({
    at: fc.nat(text.length - 1),
    cut: fc.nat(12),
    put: fc.oneof(
      fc.constantFrom(
        '',
        '"',
        '{',
        '}',
        '[',
        ',',
        ':',
        '\\',
        '\u0000',
        '9',
        '-',
        'null',
        '__proto__',
        'constructor',
      ),
      fc.string({ maxLength: 6 }),
    ),
  });
  let refused = 0;
  fc.assert(
    fc.property(fc.array(spot, { minLength: 1, maxLength: 4 }), (spots) => {
      const bad = spots.reduce((t, { at, cut, put }) => t.slice(0, at) + put + t.slice(at + cut), text);
      const read = readHanded(bad);
      const whole = read.ok ? standing(read.value, log.slice(0, 2)) : read;
      if (!whole.ok) refused += 1;
      else if (read.ok && read.value.since) {
        expect(merge(log.slice(0, 2), whole.value.entries)).toEqual(expect.arrayContaining(log.slice(0, 2)));
      }
    }),
    { numRuns: runs(200), seed: 20261126 },
  );
  expect(refused).toBeGreaterThan(50);
}, 600_000);

test.each([
  [
    'lists in lists, deeper than a parser stands',
    `{"knifelineChanges":1,"since":{},"file":${'['.repeat(200_000)}${']'.repeat(200_000)}}`,
  ],
  [
    'a phone of the language that lacks its entries',
    '{"knifelineChanges":1,"since":{"__proto__":[1,1]},"file":{}}',
  ],
  ['null', '{"knifelineChanges":1,"since":null,"file":null}'],
])('%s is refused', (_, text) => expect(readHanded(text).ok).toBe(false));
