import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { doubledIn } from '../../src/job/doubled';
import type { Change, Entry } from '../../src/job/entry';
import { readJobFile, writeJobFile } from '../../src/job/file';
import { said } from '../../src/job/heads';
import { extend, fold, merge, undoable } from '../../src/job/log';
import { readEntry } from '../../src/job/rows';
import { type Log, passed, takenBack, tap } from './phones';

const at = 'boards/side/length';
const edit = (value: string | null, path = at): Change => ({ kind: 'edit', path, value });
const op = 'cut/side/r1~1~p1/left';
const tick = (figure: string): Change => ({ kind: 'tick', op, figure });
const untick: Change = { kind: 'untick', op };
const start = tap([], 'anna', [edit('64'), edit('Side', 'boards/side/name')]);
const readings = (log: Log) => doubledIn(fold(log)).map((d) => [d.place, ...d.readings.map(said)]);
const value = (log: Log, path = at) => fold(log).values.get(path);

const isAnna = (name: string) => name === 'anna';

describe('two phones that change one reading', () => {
  const anna = tap(start, 'anna', [edit('65')]);
  const ben = tap(start, 'ben', [edit('66')]);
  const both = merge(anna, ben);

  test('M6: both readings stand, whoever takes in whose', () => {
    expect(readings(both)).toEqual([[at, '65', '66']]);
    expect(merge(ben, anna)).toEqual(both);
  });

  test('M2, M7: the last in order is reckoned with meanwhile, on each phone the same, whatever the clocks say', () => {
    const early = ben.map((e) => ({ ...e, at: '2016-01-01T00:00:00Z' }));
    expect(value(both)).toBe('66');
    expect(value(merge(anna, early))).toBe('66');
  });

  test('M8: the one picked stands alone, and nothing written before comes back', () => {
    const picked = tap(both, 'anna', [edit('65')]);
    expect([value(picked), readings(picked)]).toEqual(['65', []]);
    const again = passed(ben, passed(both, picked));
    expect([value(again), readings(again)]).toEqual(['65', []]);
  });

  test('M8: each picks another: both picks stand, and are asked about', () => {
    const one = tap(both, 'anna', [edit('65')]);
    const other = tap(both, 'ben', [edit('66')]);
    expect(readings(merge(one, other))).toEqual([[at, '65', '66']]);
  });

  test('M10: a pick taken back asks again', () => {
    const back = takenBack(tap(both, 'anna', [edit('65')]), 'anna');
    expect([value(back), readings(back)]).toEqual(['66', [[at, '65', '66']]]);
  });

  test('M10: one of them taken back leaves the other, and no question', () => {
    const back = takenBack(both, 'ben');
    expect([value(back), readings(back)]).toEqual(['65', []]);
  });

  test('a third phone that knew neither joins them', () => {
    const carl = tap(start, 'carl', [edit('67')]);
    expect(readings(passed(carl, both))).toEqual([[at, '65', '66', '67']]);
  });

  test('M6: the same reading from both is no question', () => {
    expect(readings(merge(anna, tap(start, 'ben', [edit('65')])))).toEqual([]);
  });

  test('M4: one that had seen the other is no question', () => {
    expect(readings(tap(passed(anna, start), 'ben', [edit('66')]))).toEqual([]);
  });

  test('M5: two pages of one phone never contradict each other', () => {
    const twice = [
      ...anna,
      ...tap(start, 'anna', [edit('66')])
        .slice(-1)
        .map((e) => ({ ...e, count: 9 })),
    ];
    expect([value(twice), readings(twice)]).toEqual(['66', []]);
  });

  test('M7: a reading taken away on one phone and taken anew on the other stands, and is asked about', () => {
    const away = tap(tap(start, 'ben', [edit('66')]), 'ben', [edit(null)]);
    const met = merge(anna, away);
    expect([value(met), readings(met)]).toEqual(['65', [[at, '65', null]]]);
    expect(value(tap(met, 'ben', [edit(null)]))).toBeUndefined();
  });

  test('M14: what the app keeps for itself is not asked about: the last word stands', () => {
    const path = 'layouts/sheeta/rests';
    const met = merge(tap(start, 'anna', [edit('a', path)]), tap(start, 'ben', [edit('b', path)]));
    expect([value(met, path), readings(met)]).toEqual(['b', []]);
  });
});

describe('two phones and the ticks of one cut', () => {
  const cut = tap(start, 'anna', [tick('53/4')]);

  test('M7: a tick and an untick that did not know of each other: the cut is made, and is asked about', () => {
    const met = merge(tap(cut, 'anna', [tick('53/4')]), tap(cut, 'ben', [untick]));
    expect(fold(met).ticks.get(op)?.figure).toBe('53/4');
    expect(readings(met)).toEqual([[op, '53/4', null]]);
  });

  test('an untick that had seen the tick unticks', () => {
    expect(fold(merge(cut, tap(cut, 'ben', [untick]))).ticks.size).toBe(0);
  });

  test('M10: a tick taken back on its phone does not take back the other phone’s', () => {
    const met = merge(takenBack(cut, 'anna'), tap(start, 'ben', [tick('27/2')]));
    expect([fold(met).ticks.get(op)?.figure, readings(met)]).toEqual(['27/2', []]);
  });

  test('one cut made to two figures: both are asked about', () => {
    expect(readings(merge(cut, tap(start, 'ben', [tick('27/2')])))).toEqual([[op, '53/4', '27/2']]);
  });
});

describe('logs of older phones', () => {
  const plain = (device: string, count: number, value: string): Entry => ({
    job: 'j',
    device,
    count,
    at: '2026-11-02T08:00:00Z',
    act: `${device}.${count}`,
    label: 'x',
    ...edit(value),
  });

  test('M13: rows that say nothing of what they are over replace all such rows before them, in order', () => {
    const old = [plain('anna', 1, '1'), plain('ben', 2, '2'), plain('anna', 2, '3')];
    expect([value(old), readings(old)]).toEqual(['2', []]);
  });

  test('M13: such a row never replaces one that does say: its phone could not have read it', () => {
    const old = [plain('anna', 1, '1')];
    const met = merge(tap(old, 'anna', [edit('2')]), [...old, plain('ben', 9, '3')]);
    expect(readings(met)).toEqual([[at, '2', '3']]);
  });

  test('M13: acts of before can be taken back', () => {
    const old = [plain('anna', 1, '1'), plain('anna', 2, '2')];
    const once = takenBack(old, 'anna');
    expect(value(once)).toBe('1');
    expect(value(takenBack(once, 'anna'))).toBeUndefined();
    expect(undoable(takenBack(once, 'anna'), isAnna)).toEqual([]);
  });

  test('the sample job, all of version 1, comes to what the last row of each place says', () => {
    const file = readJobFile(readFileSync('demo-data/mineral-and-shell-cabinet.json', 'utf8'));
    if (!file.ok) throw new Error(file.error.code);
    const last = new Map<string, unknown>();
    for (const e of file.value.entries) if (e.kind === 'edit') last.set(e.path, e.value);
    for (const [path, json] of last) if (json === null) last.delete(path);
    const folded = fold(file.value.entries);
    expect([...folded.values].sort()).toEqual([...last].sort());
    expect(folded.doubled.size).toBe(0);
  });
});

describe('the job file', () => {
  const both = merge(tap(start, 'anna', [edit('65')]), tap(start, 'ben', [edit('66')]));
  const file = writeJobFile({ job: 'j', entries: both });

  test('is of version 2, and says what each entry is over', () => {
    expect(file).toContain('"knifeline": 2');
    expect(file).toContain('"over":["1.anna"]');
    const read = readJobFile(file);
    expect(read.ok && writeJobFile(read.value)).toBe(file);
  });

  test('of version 1 holds no such entry', () => {
    expect(readJobFile(file.replace('"knifeline": 2', '"knifeline": 1'))).toMatchObject({
      ok: false,
      error: { code: 'bad-entry' },
    });
  });

  test.each([
    ['one that comes after', ['99.ben']],
    ['one of its own count', ['3.ben']],
    ['one twice', ['1.anna', '1.anna']],
    ['count 0', ['0.anna']],
    ['no phone', ['1.']],
    ['a phone with a path for a name', ['1.../x']],
    ['a count that is none', ['x.anna']],
    ['a number', [1]],
    ['more than there can be', Array.from({ length: 101 }, (_, k) => `1.p${k}`)],
    ['no list', '1.anna'],
    ['null', null],
  ])('an entry over %s cannot be read', (_, over) => {
    const entry = tap(start, 'anna', [edit('65')])[2];
    expect(entry?.count).toBe(3);
    expect('entry' in readEntry({ ...entry, over: ['1.anna'] })).toBe(true);
    expect('why' in readEntry({ ...entry, over })).toBe(true);
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

describe('a thing taken away on one phone', () => {
  const gone = 'boards/side/gone';
  const away: Change = { kind: 'edit', path: gone, value: true };

  test.each([
    ['measured', edit('65')],
    ['cut', tick('53/4')],
    ['grooved', edit('3/4', 'boards/side/runs/r1/width')],
  ])('M11: and %s on the other, neither knowing, stands and is asked about', (_, work) => {
    const met = merge(tap(start, 'anna', [away]), tap(start, 'ben', [work]));
    expect(value(met, gone)).toBeUndefined();
    expect(readings(met)).toEqual([[gone, true, false]]);
    const early = merge(
      tap(start, 'ben', [work]),
      tap(tap(tap(start, 'anna', [tick('1')]), 'anna', [untick]), 'anna', [away]),
    );
    expect(readings(early).filter(([place]) => place === gone)).toEqual([[gone, true, false]]);
  });

  test('M12: is away when that was known', () => {
    const cut = tap(start, 'ben', [tick('53/4')]);
    const met = passed(cut, tap(cut, 'anna', [away]));
    expect([value(met, gone), readings(met)]).toEqual([true, []]);
  });

  test.each([
    [true, true],
    [false, false],
  ])('picked (%s), that stands', (pick, stands) => {
    const met = merge(tap(start, 'anna', [away]), tap(start, 'ben', [edit('65')]));
    const picked = tap(met, 'ben', [{ kind: 'edit', path: gone, value: pick }]);
    const again = passed(picked, passed(tap(start, 'anna', [away]), met));
    expect([value(again, gone), readings(again)]).toEqual([stands, []]);
  });

  test('the other thing of that name’s beginning is not meant', () => {
    const met = merge(tap(start, 'anna', [away]), tap(start, 'ben', [edit('65', 'boards/side2/length')]));
    expect([value(met, gone), readings(met)]).toEqual([true, []]);
  });

  test('taken away before phones said what they had seen is away', () => {
    const [old] = tap(start, 'anna', [away]).slice(-1);
    if (!old) throw new Error('nothing written');
    const { over: _, ...plain } = old;
    const met = merge([...start, plain], tap(start, 'ben', [edit('65')]));
    expect(value(met, gone)).toBe(true);
  });
});

describe('a thing both phones took away', () => {
  const gone = 'boards/side/gone';
  const away: Change = { kind: 'edit', path: gone, value: true };
  const met = merge(
    tap(tap(start, 'anna', [edit('65')]), 'anna', [away]),
    tap(tap(start, 'ben', [edit('66')]), 'ben', [away]),
  );

  test('M12: is away, and nothing of it is asked about', () =>
    expect([value(met, gone), readings(met)]).toEqual([true, []]));

  test('M12: is not brought back by someone who writes there and has seen that', () =>
    expect(value(tap(met, 'carl', [edit('67')]), gone)).toBe(true));
});
