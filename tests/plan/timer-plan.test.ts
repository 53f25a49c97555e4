import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { minutesOf, overNow, timerStands } from '../../src/plan/timer-plan';

const begun = '2026-11-02T08:30:00.000Z';
const at = (time: string) => Date.parse(`2026-11-02T${time}Z`);
const glue = { id: 'g', name: 'Glue', minutes: 45, begun };

describe('timerStands', () => {
  test.each([
    ['08:30:00', { is: 'runs', left: 45, until: at('09:15:00') }],
    ['08:30:01', { is: 'runs', left: 45, until: at('09:15:00') }],
    ['08:31:00', { is: 'runs', left: 44, until: at('09:15:00') }],
    ['09:14:59', { is: 'runs', left: 1, until: at('09:15:00') }],
    ['09:15:00', { is: 'over', past: 0, until: at('09:15:00') }],
    ['10:16:30', { is: 'over', past: 61, until: at('09:15:00') }],
    ['08:20:30', { is: 'clock-back', by: 10 }],
  ])('at %s', (time, want) => expect(timerStands(glue, at(time))).toEqual(want));

  test('what is not begun, or has no time, waits for that', () => {
    expect(timerStands({ id: 'g', hours: 1 }, at('09:00:00'))).toEqual({ is: 'ready' });
    expect(timerStands({ id: 'g', begun }, at('09:00:00'))).toEqual({ is: 'no-time' });
    expect(minutesOf({ id: 'g', hours: 2, minutes: 30 })).toBe(150);
  });

  test('it runs until its time is gone, and then never again', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 1000 }),
        fc.integer({ min: 0, max: 10 ** 8 }),
        (minutes, past) => {
          const stands = timerStands({ ...glue, minutes }, Date.parse(begun) + past);
          expect(stands.is).toBe(past < minutes * 60_000 ? 'runs' : 'over');
        },
      ),
    );
  });
});

describe('what comes next', () => {
  const finish = { id: 'f', hours: 4, begun };
  test('what is over is told until it was seen', () => {
    const ids = (timers: Parameters<typeof overNow>[0]) =>
      overNow(timers, at('09:20:00')).map(({ id }) => id);
    expect(ids([finish, glue])).toEqual(['g']);
    expect(ids([finish, { ...glue, seen: true }])).toEqual([]);
  });
});
