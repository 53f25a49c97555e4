import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import type { Entry } from '../../src/job/entry';
import { readJobFile } from '../../src/job/file';
import { fold, merge } from '../../src/job/log';
import { undoable } from '../../src/job/undo';
import { passed, takenBack, tap } from './phones';
import { at, edit, op, readings, start, tick, untick, value } from './two-phones';

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

  test('M10: one of two readings taken back leaves the other, and no question', () => {
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

  test('M4: a reading written by someone who had seen the other is no question', () => {
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

  test('M13: rows without `over` replace all such rows before them, in order', () => {
    const old = [plain('anna', 1, '1'), plain('ben', 2, '2'), plain('anna', 2, '3')];
    expect([value(old), readings(old)]).toEqual(['2', []]);
  });

  test('M13: a row without `over` never replaces one that has it: its phone could not have read it', () => {
    const old = [plain('anna', 1, '1')];
    const met = merge(tap(old, 'anna', [edit('2')]), [...old, plain('ben', 9, '3')]);
    expect(readings(met)).toEqual([[at, '2', '3']]);
  });

  test('M13: acts of version 1 can be taken back', () => {
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
