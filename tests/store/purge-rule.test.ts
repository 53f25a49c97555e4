import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readWatch, type Watch, watched } from '../../src/store/purge-rule';
import { runs } from '../runs';

const today = 20_786;
type Start = readonly [day: number, entries: number];

/** On which of some starts a job goes, that is deleted before the first; -1 when on none. */
function goesAt(starts: readonly Start[]): number {
  let watch: Watch = readWatch(undefined);
  return starts.findIndex((start) => {
    const seen = watched(watch, start, ['j1']);
    watch = seen.watch;
    return seen.due.length > 0;
  });
}
/** Starts on days counted from the first, 25 entries written before each. */
const on = (...days: readonly number[]): readonly Start[] =>
  days.map((day, k) => [today + day, 100 + 25 * k] as const);
const daily = Array.from({ length: 50 }, (_, k) => k);

describe('watched', () => {
  test('D15: a start every day lets a job go after 30 days and a week', () =>
    expect(goesAt(on(...daily))).toBe(38));
  test('one every week, after six weeks', () => expect(goesAt(on(0, 7, 14, 21, 28, 35, 42, 49))).toBe(7));
  test('one every two months, after as many', () =>
    expect(goesAt(on(0, 60, 120, 180, 240, 300, 360, 420))).toBe(7));

  test.each([
    ['one start with the clock 40 days ahead', on(0, 40)],
    ['forty such starts on one day', on(0, ...daily.map(() => 40))],
    ['a clock set ahead and back, over and over', on(...daily.flatMap((k) => [0, 40 + k]))],
    ['ever further ahead and back a day', on(...daily.flatMap((k) => [0, 40 * k]))],
    ['a clock 40 days ahead for four weeks', on(0, 40, 47, 54, 61, 68)],
    ['a clock put right that stood in 1970', on(-today, 0, 1, 2, 3, 4, 5, 6)],
    ['a phone nobody works on', daily.map((day): Start => [today + day, 100 + Math.min(day, 19)])],
    ['a phone whose logs shrink', daily.map((day): Start => [today + day, 1000 - day])],
  ])('%s lets none go', (_, starts) => expect(goesAt(starts)).toBe(-1));

  test('a job deleted again begins anew, and so does one deleted later', () => {
    let watch = readWatch(undefined);
    const look = (start: Start, ...names: string[]) => {
      const seen = watched(watch, start, names);
      watch = seen.watch;
      return seen.due;
    };
    for (const start of on(...daily.slice(0, 38))) look(start, 'first');
    expect(look([today + 38, 2000], 'again', 'first')).toEqual(['first']);
    expect(look([today + 39, 2000], 'again')).toEqual([]);
  });

  test('what is kept does not grow with the days', () => {
    let watch = readWatch(undefined);
    for (let day = 0; day < 1000; day += 1) watch = watched(watch, [day, 100], ['j1']).watch;
    expect(watch.days.length).toBeLessThanOrEqual(60);
    expect(readWatch(JSON.parse(JSON.stringify(watch)))).toEqual(watch);
  });

  test('D15: no run of clocks lets a job go on fewer than eight starts, less work, or a leap believed for more than a week', () => {
    const start = fc.tuple(fc.integer({ min: 0, max: 400 }), fc.integer({ min: 0, max: 12 }));
    fc.assert(
      fc.property(fc.array(start, { maxLength: 40 }), (moves) => {
        let entries = 50;
        const starts = moves.map(([day, more]): Start => {
          entries += more;
          return [day, entries];
        });
        const k = goesAt(starts);
        if (k < 0) return;
        expect(k).toBeGreaterThanOrEqual(7);
        expect((starts[k]?.[1] ?? 0) - (starts[0]?.[1] ?? 0)).toBeGreaterThanOrEqual(20);
        // the days no later start went back behind
        const stand = starts.slice(0, k + 1).flatMap(([day], n, all) => {
          const later = all.slice(n + 1).map(([other]) => other);
          return later.some((other) => other <= day) ? [] : [day];
        });
        const believed = stand.slice(1, -1).map((day, n) => Math.min(7, day - (stand[n] ?? day)));
        expect(believed.reduce((sum, days) => sum + days, 0)).toBeGreaterThanOrEqual(37);
      }),
      { numRuns: runs(2000) },
    );
  });

  test('a wild clock on one start alone makes no job go earlier', () => {
    const arb = fc.tuple(fc.nat(49), fc.integer({ min: -30_000, max: 30_000 }));
    fc.assert(
      fc.property(arb, ([at, off]) => {
        const starts = daily.map((day): Start => [today + day + (day === at ? off : 0), 100 + 25 * day]);
        const k = goesAt(starts);
        expect(k < 0 || k >= 30).toBe(true);
      }),
      { numRuns: runs(500) },
    );
  });
});

test.each([
  [undefined],
  [null],
  [7],
  ['x'],
  [{}],
  [{ days: [1], seen: { j1: 'x' } }],
  [{ days: 'x', seen: {} }],
  [{ days: [null], seen: {} }],
])('readWatch begins anew from %j', (kept) => expect(readWatch(kept)).toEqual({ days: [], seen: {} }));
