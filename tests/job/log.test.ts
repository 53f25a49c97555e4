import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Change, Entry } from '../../src/job/entry';
import { extend, type Folded, fold, inOrder, merge } from '../../src/job/log';
import { undoable, undoDepth, undoOf } from '../../src/job/undo';
import { runs } from '../runs';

const change = fc.oneof(
  fc.record({
    kind: fc.constant('edit' as const),
    path: fc.constantFrom('name', 'place', 'note'),
    value: fc.constantFrom('a', 'b', null),
  }),
  fc.record({
    kind: fc.constant('tick' as const),
    op: fc.constantFrom('cut/b/s/1', 'cut/b/s/2'),
    figure: fc.constantFrom('1/2', '3'),
  }),
  fc.record({ kind: fc.constant('untick' as const), op: fc.constantFrom('cut/b/s/1', 'cut/b/s/2') }),
);

/** Several phones writing to one job, each seeing some of what the others wrote. */
const log: fc.Arbitrary<readonly Entry[]> = fc
  .array(fc.tuple(fc.constantFrom('anna', 'ben', 'carl'), change, fc.integer({ min: 0, max: 3 })), {
    maxLength: 40,
  })
  .map((rows) => {
    const counts = new Map<string, number>();
    return rows.map(([device, what, jump], k) => {
      const count = (counts.get(device) ?? 0) + 1 + jump;
      counts.set(device, count);
      // clocks are off by years and have no say
      const at = new Date(Date.UTC(2016 + ((k * 7) % 20), 1, 1)).toISOString();
      return { job: 'j', device, count, at, act: `${device}.${count}`, label: 'x', ...what } as Entry;
    });
  });

const state = ({ values, ticks }: Folded) => [[...values].sort(), [...ticks].sort()];

const isAnna = (name: string) => name === 'anna';

describe('fold and merge', () => {
  test('M1: two copies come to the same state whichever is taken in first, and again changes nothing', () => {
    fc.assert(
      fc.property(
        log,
        fc.array(fc.boolean(), { minLength: 40, maxLength: 40 }),
        fc.array(fc.boolean(), { minLength: 40, maxLength: 40 }),
        (all, p, q) => {
          const mine = all.filter((_, k) => p[k] || !q[k]);
          const yours = all.filter((_, k) => q[k] || !p[k]);
          const [ab, ba] = [merge(mine, yours), merge(yours, mine)];
          expect(ab).toEqual(ba);
          expect(state(fold(ab))).toEqual(state(fold(all)));
          expect(merge(ab, yours)).toEqual(ab);
        },
      ),
      { numRuns: runs(1000) },
    );
  });

  test('a log is worked out the same in any order it is given', () => {
    fc.assert(
      fc.property(
        log.chain((all) =>
          fc.tuple(fc.constant(all), fc.shuffledSubarray([...all], { minLength: all.length })),
        ),
        ([all, mixed]) => {
          expect(state(fold(mixed))).toEqual(state(fold(all)));
        },
      ),
      { numRuns: runs(500) },
    );
  });

  test('M18: adding the newest entry comes to what folding the whole comes to', () => {
    fc.assert(
      fc.property(log, (all) => {
        const sorted = [...all].sort(inOrder);
        const grown = sorted.reduce<Folded>((at, e) => extend(at, [e]) ?? fold([e]), fold([]));
        expect(state(grown)).toEqual(state(fold(all)));
      }),
      { numRuns: runs(500) },
    );
  });

  test('an entry that belongs earlier asks for the whole to be folded', () => {
    const one = fold([entry(2, 'edit')]);
    expect(extend(one, [entry(1, 'edit')])).toBeUndefined();
  });
});

function entry(count: number, kind: 'edit' | 'tick', over: Partial<Entry> = {}): Entry {
  const what: Change =
    kind === 'edit'
      ? { kind, path: 'name', value: `n${count}` }
      : { kind, op: 'cut/b/s/1', figure: `${count}` };
  return {
    job: 'j',
    device: 'anna',
    count,
    at: '2026-01-01T00:00:00.000Z',
    act: `anna.${count}`,
    label: `act ${count}`,
    ...what,
    ...over,
  } as Entry;
}

/** Appends the entries that take the newest act back, as the app does. */
function undo(entries: readonly Entry[]): readonly Entry[] {
  const act = undoable(entries, isAnna)[0];
  if (!act) return entries;
  const from = Math.max(...entries.map((e) => e.count));
  const back = undoOf(entries, act).map(
    (c, k) =>
      ({
        job: 'j',
        device: 'anna',
        count: from + 1 + k,
        at: '',
        act: `anna.${from + 1}`,
        label: 'undo',
        undoes: act.act,
        ...c,
      }) as Entry,
  );
  return [...entries, ...back];
}

describe('undo', () => {
  test('an edit goes back to the value before it, a first one to none', () => {
    let entries: readonly Entry[] = [entry(1, 'edit'), entry(2, 'edit')];
    entries = undo(entries);
    expect(fold(entries).values.get('name')).toBe('n1');
    entries = undo(entries);
    expect(fold(entries).values.has('name')).toBe(false);
    expect(undoable(entries, isAnna)).toHaveLength(0);
  });

  test('a tick made twice goes back to the first one, figure and all', () => {
    const twice = undo([entry(1, 'tick'), entry(2, 'tick')]);
    expect(fold(twice).ticks.get('cut/b/s/1')?.figure).toBe('1');
    expect(fold(undo(twice)).ticks.size).toBe(0);
  });

  test('an act of several entries goes back whole', () => {
    const act = 'anna.2';
    const entries = [entry(1, 'edit'), entry(2, 'edit', { act }), entry(3, 'tick', { act })];
    const back = fold(undo(entries));
    expect([back.values.get('name'), back.ticks.size]).toEqual(['n1', 0]);
  });

  test('M10: another phone’s acts are not ours to take back', () => {
    expect(undoable([entry(1, 'edit', { device: 'ben' })], isAnna)).toHaveLength(0);
  });

  test('fifty acts can be taken back', () => {
    const many = Array.from({ length: 80 }, (_, k) => entry(k + 1, 'edit'));
    expect(undoable(many, isAnna)).toHaveLength(undoDepth);
    let entries: readonly Entry[] = many;
    for (let k = 0; k < undoDepth; k += 1) entries = undo(entries);
    expect(fold(entries).values.get('name')).toBe('n30');
  });

  test('M10: what another phone wrote since stands, and the act counts as taken back', () => {
    const log = [entry(1, 'edit'), entry(2, 'edit'), entry(3, 'edit', { device: 'ben', act: 'ben.3' })];
    const back = undo(log);
    expect(fold(back).values.get('name')).toBe('n3');
    expect(undoable(back, isAnna).map(({ act }) => act)).toEqual(['anna.1']);
    expect(fold(undo(back)).values.get('name')).toBe('n3');
  });

  test('what another phone took back itself does not come back', () => {
    const ben = entry(2, 'edit', { device: 'ben', act: 'ben.2' });
    const benUndoes = entry(3, 'edit', {
      device: 'ben',
      act: 'ben.3',
      undoes: 'ben.2',
      value: 'n1',
    });
    const back = undo([entry(1, 'edit'), ben, benUndoes]);
    expect(fold(back).values.has('name')).toBe(false);
  });

  test('taking back all of one phone’s acts leaves what the others wrote, as if it had never been there', () => {
    fc.assert(
      fc.property(log, (all) => {
        let entries: readonly Entry[] = [...all].sort(inOrder);
        while (undoable(entries, isAnna).length > 0) entries = undo(entries);
        const others = fold(all.filter((e) => e.device !== 'anna'));
        const figures = ({ values, ticks }: Folded) => [
          [...values].sort(),
          [...ticks].map(([op, t]) => [op, t.figure]).sort(),
        ];
        expect(figures(fold(entries))).toEqual(figures(others));
      }),
      { numRuns: runs(500) },
    );
  });

  test('taking back everything leaves the state as it was before', () => {
    fc.assert(
      fc.property(log, fc.integer({ min: 1, max: 10 }), (all, n) => {
        const before = all
          .map((e) => ({ ...e, device: e.device === 'anna' ? 'ben2' : e.device }))
          .sort(inOrder);
        const from = Math.max(0, ...before.map((e) => e.count));
        let entries: readonly Entry[] = [
          ...before,
          ...Array.from({ length: n }, (_, k) => entry(from + 1 + k, k % 2 ? 'edit' : 'tick')),
        ];
        for (let k = 0; k < n; k += 1) entries = undo(entries);
        const was = fold(before);
        const is = fold(entries);
        expect([...is.values].sort()).toEqual([...was.values].sort());
        expect([...is.ticks.keys()].sort()).toEqual([...was.ticks.keys()].sort());
      }),
      { numRuns: runs(300) },
    );
  });
});

/** A map that counts each place looked up, and all of them where it is gone through. */
class Watched<K, V> extends Map<K, V> {
  looks = 0;
  override get(key: K): V | undefined {
    this.looks += 1;
    return super.get(key);
  }
  override [Symbol.iterator]() {
    this.looks += this.size;
    return super[Symbol.iterator]();
  }
}

test('M18: one tick on a long log looks at its own place and no other', () => {
  const stamp = { job: 'j', device: 'anna', at: '', label: 'x' };
  const cut = (count: number, op: string): Entry => ({
    ...stamp,
    count,
    act: `anna.${count}`,
    kind: 'tick',
    op,
    figure: '1',
    over: [],
  });
  const long = fold(Array.from({ length: 1000 }, (_, k) => cut(k + 1, `cut/side/c${k}/1`)));
  const places = new Watched(long.places);
  places.looks = 0;
  const grown = extend({ ...long, places }, [cut(1001, 'cut/side/c7/1')]);
  expect(grown?.ticks.size).toBe(1000);
  expect(places.looks).toBeLessThan(10);
});
