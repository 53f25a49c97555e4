import { describe, expect, test } from 'vitest';
import { fromMillimetres, inches, ratio } from '../../../src/length/length';
import { calibrated, readRule, writeRule } from '../../../src/screens/rule/kept';
import { drawnPoints, reachOf, ticksFor } from '../../../src/screens/rule/rule.model';
import { cardDoubt } from '../../../src/trade/paper/screen-rule';
import { w } from '../../length/write-figures';

/** 428 points along 85.6 mm: 5 to the millimetre, 127 to the inch. */
const at = { points: ratio(428n), doubt: ratio(1n), cardDoubt };

describe('ticksFor', () => {
  test('an inch is divided in sixteenths, the whole ones numbered', () => {
    const ticks = ticksFor(260, at, 'in');
    expect(ticks.filter(({ label }) => label).map(({ label, at: y }) => [label, y])).toEqual([
      ['1', 127],
      ['2', 254],
    ]);
    expect(ticks.length).toBe(33); // 32 sixteenths are 254 points, the next at 261.9
    expect(w(reachOf(260, at, 'in'))).toBe('2');
  });

  test('millimetres, each tenth numbered', () => {
    const ticks = ticksFor(104, at, 'mm');
    expect(ticks.map(({ at: y }) => y).slice(0, 3)).toEqual([0, 5, 10]);
    expect(ticks.filter(({ label }) => label).map(({ label, at: y }) => [label, y])).toEqual([
      ['10', 50],
      ['20', 100],
    ]);
  });

  test('a thing is drawn as thick as it is', () => {
    expect(drawnPoints(fromMillimetres(18n), at)).toBe(90);
    expect(drawnPoints(inches(1n, 2n), at)).toBe(63.5);
  });
});

describe('what is kept of a screen', () => {
  const look = { dpr: 2.75, scale: 1 };
  test('it reads back, and not once the screen is zoomed', () => {
    const kept = writeRule(ratio(1713n, 4n), look);
    const found = readRule(kept, look);
    expect(typeof found === 'object' && found.points.equals(ratio(1713n, 4n))).toBe(true);
    expect(readRule(kept, { ...look, scale: 1.5 })).toBe('zoomed');
    expect(readRule(kept, { dpr: 3, scale: 1 })).toBe('zoomed');
  });

  test.each([[undefined], ['x'], [[]], [{}], [{ points: '0', dpr: 2.75, scale: 1 }], [{ points: 'x' }]])(
    'nothing of %j',
    (json) => expect(readRule(json, look)).toBeUndefined(),
  );

  test('a card whose short edge does not come out is no calibration', () => {
    // 53.98 mm are 269.9 points: 270 stands, 260 is two millimetres short
    expect(calibrated(428 * 4, 270 * 4).ok).toBe(true);
    expect(calibrated(428 * 4, 260 * 4)).toMatchObject({ ok: false, error: { code: 'short-edge' } });
  });
});
