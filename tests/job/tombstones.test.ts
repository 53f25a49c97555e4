import { describe, expect, test } from 'vitest';
import type { Change } from '../../src/job/entry';
import { merge } from '../../src/job/log';
import { passed, tap } from './phones';
import { edit, readings, start, tick, untick, value } from './two-phones';

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

  test('a thing whose id only begins the same is not meant', () => {
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
