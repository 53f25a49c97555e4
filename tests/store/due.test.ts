import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Due, dueNow, readDue } from '../../src/store/due';
import { runs } from '../runs';

type Start = Parameters<typeof dueNow>[1];
const cameTo = (starts: readonly Start[]) =>
  starts.reduce<{ readonly due: Due; readonly gone: readonly string[] }>(
    (at, start) => dueNow(at.due, start),
    {
      due: {},
      gone: [],
    },
  );
const start = (day: string, entries: number, past = ['j1']): Start => ({ day, entries, past });

describe('a deleted job past its time', () => {
  test('goes when starts on three days have found it so, and work was done between', () => {
    const three = [start('2026-12-01', 40), start('2026-12-02', 45), start('2026-12-05', 50)];
    expect(cameTo(three.slice(0, 2)).gone).toEqual([]);
    expect(cameTo(three)).toEqual({ due: {}, gone: ['j1'] });
  });

  test('stays where the phone was hardly used meanwhile', () => {
    expect(cameTo([start('2026-12-01', 40), start('2026-12-02', 41), start('2026-12-05', 49)]).gone).toEqual(
      [],
    );
  });

  test('stays after any number of starts on one day, however much was done', () => {
    expect(cameTo(Array.from({ length: 9 }, (_, k) => start('2027-01-08', 100 * k))).gone).toEqual([]);
  });

  test('stays where a start between did not find it so, or the clock went back', () => {
    const wrong = start('2027-01-08', 40);
    expect(
      cameTo([wrong, start('2026-11-30', 60, []), wrong, start('2026-12-01', 80, []), wrong]).gone,
    ).toEqual([]);
    expect(cameTo([wrong, start('2026-12-01', 60), start('2027-01-09', 80)]).gone).toEqual([]);
  });

  test('no clock that is right at every third start throws away what is not past its time', () => {
    const wrong = fc.record({ ahead: fc.integer({ min: 31, max: 4000 }), done: fc.nat(200) });
    fc.assert(
      fc.property(fc.array(wrong, { maxLength: 40 }), (starts) => {
        let at: { readonly due: Due; readonly gone: readonly string[] } = { due: {}, gone: [] };
        let entries = 0;
        for (const [k, { ahead, done }] of starts.entries()) {
          entries += done;
          const right = k % 3 === 2;
          const day = new Date(Date.UTC(2026, 10, 29 + (right ? 0 : ahead))).toISOString().slice(0, 10);
          at = dueNow(at.due, { day, entries, past: right ? [] : ['j1'] });
          expect(at.gone).toEqual([]);
        }
      }),
      { numRuns: runs(200) },
    );
  });
});

test('what was kept reads back, and what is none of it is nothing', () => {
  const { due } = cameTo([start('2026-12-01', 40)]);
  expect(readDue(JSON.parse(JSON.stringify(due)))).toEqual(due);
  for (const kept of [undefined, null, 7, 'x', { j1: 3 }, { j1: { days: [1], entries: 2 } }])
    expect(readDue(kept)).toEqual({});
});
