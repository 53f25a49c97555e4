import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  editBadPlace,
  editBay,
  editCase,
  editPlace,
  editReading,
  editRun,
  editStock,
} from '../../src/job/edits';
import type { Change } from '../../src/job/entry';
import { type Job, jobOf } from '../../src/job/job';
import { fold, merge } from '../../src/job/log';
import { inches } from '../../src/length/length';
import { layOut } from '../../src/trade/grooves/lay-out';
import { runs } from '../runs';
import { board, l, w } from '../trade/grooves/sample';
import { type Log, passed, tap } from './phones';

const jobAt = (log: Log): Job => jobOf('j', fold(log).values);
const sizes = (log: Log) => jobAt(log).stock[0]?.readings.map(w);
const places = (log: Log) => jobAt(log).boards[0]?.runs[0]?.at.map(w);
const given = (more: readonly Change[] = []) => [
  ...editRun('b1', 'r1', { spacing: 'given', width: l('1/2') }),
  ...more,
];
const of = { board: 'b1', run: 'r1' };

describe('readings, each under a path of its own', () => {
  const old = tap([], 'anna', editStock('s1', { name: 'A', readings: [l('.708'), l('.714'), l('.708')] }));

  test('a list kept whole before reads as it did; each of it can be changed or taken away by itself', () => {
    expect(sizes(old)).toEqual(['177/250', '357/500', '177/250']);
    const [first = '', , third = ''] = jobAt(old).stock[0]?.readingIds ?? [];
    expect(first).not.toBe(third);
    const changed = tap(old, 'anna', editReading('s1', first, { size: l('.710') }));
    expect(sizes(changed)).toEqual(['71/100', '357/500', '177/250']);
    expect(sizes(tap(changed, 'anna', editReading('s1', third, { gone: true })))).toEqual([
      '71/100',
      '357/500',
    ]);
  });

  test('M15: two phones that each write a first, then a second reading have four together, and nobody is asked', () => {
    const start = tap([], 'anna', editStock('s1', { name: 'A' }));
    let [anna, ben] = [start, start];
    for (const [k, size] of ['.708', '.714'].entries()) {
      anna = tap(anna, 'anna', editReading('s1', `a${k}`, { size: l(size) }));
      ben = tap(ben, 'ben', editReading('s1', `b${k}`, { size: l(size) }));
    }
    const both = passed(ben, anna);
    expect([...(sizes(both) ?? [])].sort()).toEqual(['177/250', '177/250', '357/500', '357/500']);
    expect(fold(both).doubled.size).toBe(0);
  });

  test('an old phone that writes whole lists and a new one that writes paths lose nothing of each other', () => {
    const mine = tap(old, 'anna', editReading('s1', 'x', { size: l('.721') }));
    const theirs = tap(
      old,
      'ben',
      editStock('s1', { readings: [l('.708'), l('.714'), l('.708'), l('.719')] }),
    );
    expect(sizes(merge(mine, theirs))).toEqual(['177/250', '357/500', '177/250', '719/1000', '721/1000']);
  });

  test('whatever readings are added, changed and taken away, in whatever order logs come together', () => {
    const step = fc.record({
      phone: fc.constantFrom('anna', 'ben'),
      id: fc.constantFrom('a', 'b', 'c'),
      size: fc.option(fc.integer({ min: 600, max: 800 }), { nil: undefined }),
    });
    fc.assert(
      fc.property(fc.array(step, { maxLength: 12 }), (steps) => {
        const logs: Record<string, Log> = { anna: old, ben: old };
        for (const { phone, id, size } of steps)
          logs[phone] = tap(
            logs[phone] ?? old,
            phone,
            editReading(
              's1',
              `${phone}${id}`,
              size ? { size: inches(BigInt(size), 1000n), gone: undefined } : { gone: true },
            ),
          );
        const both = merge(logs.anna ?? [], logs.ben ?? []);
        const own = (log: Log | undefined) => (sizes(log ?? []) ?? []).slice(3);
        expect([...(sizes(both) ?? [])].slice(3).sort()).toEqual(
          [...own(logs.anna), ...own(logs.ben)].sort(),
        );
        expect(fold(both).doubled.size).toBe(0);
      }),
      { numRuns: runs(100) },
    );
  });
});

describe('places given one by one', () => {
  const old = tap([], 'anna', given(editRun('b1', 'r1', { at: [l('4'), undefined, l('12')] })));
  const ids = (log: Log) => {
    const run = jobAt(log).boards[0]?.runs;
    return layOut(board({ length: l('60'), runs: run ?? [] })).grooves.map((g) => `${g.no} ${g.id}`);
  };

  test('a list kept whole before keeps its numbers and the names of its ticks', () => {
    expect([places(old), ids(old)]).toEqual([
      ['4', 'none', '12'],
      ['1 r1~1', '3 r1~3'],
    ]);
    const moved = tap(old, 'anna', editPlace(of, '3', { at: l('13') }));
    expect(ids(moved)).toEqual(['1 r1~1', '3 r1~3']);
    expect(places(tap(moved, 'anna', editPlace(of, '1', { gone: true })))).toEqual(['none', 'none', '13']);
  });

  test('one added has a number of its own and a name of its own; one taken away leaves its number', () => {
    let log = tap(old, 'anna', editPlace(of, 'x', { at: l('20') }));
    log = tap(log, 'anna', editPlace(of, 'y', { at: l('30') }));
    expect(ids(log)).toEqual(['1 r1~1', '3 r1~3', '4 r1~x', '5 r1~y']);
    expect(ids(tap(log, 'anna', editPlace(of, 'x', { gone: true })))).toEqual(['1 r1~1', '3 r1~3', '5 r1~y']);
  });

  test('M15: two phones that add one each add two; their ticks stay with their own', () => {
    const anna = tap(old, 'anna', editPlace(of, 'x', { at: l('20') }));
    const ben = tap(old, 'ben', editPlace(of, 'y', { at: l('30') }));
    const both = merge(anna, ben);
    expect(ids(both).sort()).toEqual(['1 r1~1', '3 r1~3', '4 r1~x', '5 r1~y']);
    expect(fold(both).doubled.size).toBe(0);
  });
});

describe('bad places of a stick and bays of a case', () => {
  test('each bad place is its own; ends that were kept in one list read as they did', () => {
    const bad = (log: Log) => jobAt(log).stock[0]?.badPlaces.map(({ from, to }) => `${w(from)} to ${w(to)}`);
    const old = tap([], 'anna', editStock('s1', { kind: 'stick', bad: [l('10'), l('12'), l('30')] }));
    expect(bad(old)).toEqual(['10 to 12', '30 to none']);
    const [, second] = jobAt(old).stock[0]?.badPlaces ?? [];
    const ended = tap(old, 'anna', editBadPlace('s1', second?.id ?? '', { to: l('31') }));
    expect(bad(ended)).toEqual(['10 to 12', '30 to 31']);
    const more = tap(ended, 'ben', editBadPlace('s1', 'x', { from: l('50') }));
    expect(bad(tap(more, 'anna', editBadPlace('s1', second?.id ?? '', { gone: true })))).toEqual([
      '10 to 12',
      '50 to none',
    ]);
  });

  test('M15: two bays given by two hands stand both; one emptied shares again, also where the list had it', () => {
    const bays = (log: Log) => jobAt(log).cases[0]?.bays.map(w);
    const old = tap([], 'anna', editCase('c1', { partitions: 2, bays: [l('10'), undefined, undefined] }));
    const anna = tap(old, 'anna', editBay('c1', 2, l('11')));
    const ben = tap(old, 'ben', editBay('c1', 3, l('12')));
    const both = merge(anna, ben);
    expect(bays(both)).toEqual(['10', '11', '12']);
    const emptied = tap(both, 'anna', editBay('c1', 1, undefined));
    expect(bays(emptied)).toEqual(['none', '11', '12']);
    expect(bays(tap(emptied, 'anna', editBay('c1', 1, l('9'))))).toEqual(['9', '11', '12']);
  });
});
