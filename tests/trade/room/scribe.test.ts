import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { add, equals, isNegative, less, longest, subtract } from '../../../src/length/length';
import { scribe } from '../../../src/trade/room/scribe';
import { runs } from '../../runs';
import { figures, l, refusal, row, rows, value, w } from './sample';

const gaps = row('1/8', '9/32', '3/16');

describe('scribe', () => {
  test('Example 3 of room: compass 9/32, off 5/32, 0, 3/32', () => {
    const found = value(scribe(gaps, l('1/4')));
    expect([w(found.compass), figures(found.off), w(found.need)]).toEqual([
      '9/32',
      ['5/32', '0', '3/32'],
      '5/32',
    ]);
  });

  test('an overhang of just what it takes is enough, a 64th less is not', () => {
    expect(scribe(gaps, l('5/32')).ok).toBe(true);
    expect(refusal(scribe(gaps, l('9/64')))).toEqual({ code: 'overhang', need: '5/32', by: '1/64' });
  });

  // 1 3/8 − 15/16 = 7/16 of overhang; 1 3/8 − each
  test('gaps of 15/16, 1 1/8 and 1 3/8 take 7/16 of overhang', () => {
    const found = value(scribe(row('15/16', '1 1/8', '1 3/8'), l('7/16')));
    expect([w(found.need), figures(found.off)]).toEqual(['7/16', ['7/16', '1/4', '0']]);
  });

  test('a wall that is true takes nothing off', () => {
    expect(figures(value(scribe(row('1/4', '1/4'), l('0'))).off)).toEqual(['0', '0']);
  });

  test.each([
    ['no gap read', [], '1', { code: 'no-readings' }],
    [
      'a gap below 0',
      row('1/8', '-1/64'),
      '1',
      { code: 'negative-gap', spot: { at: '40', plane: 'front' }, by: '1/64' },
    ],
    ['an overhang below 0', gaps, '-1/4', { code: 'negative-overhang', by: '1/4' }],
  ])('%s is refused', (_, read, overhang, want) => {
    expect(refusal(scribe(read, l(overhang)))).toEqual(want);
  });

  test('pushed up by the compass the edge leaves no gap anywhere, and takes no more than hangs over', () => {
    fc.assert(
      fc.property(rows(0, 2, 6), rows(0, 2, 1), (read, [over]) => {
        const overhang = over?.value ?? l('0');
        const found = scribe(read, overhang);
        if (!found.ok) {
          const all = read.map((x) => x.value);
          const spread = all.flatMap((a) => all.map((b) => subtract(a, b)));
          expect(less(overhang, longest(l('0'), ...spread))).toBe(true);
          return;
        }
        for (const [k, { value: off }] of found.value.off.entries()) {
          const gap = add(read[k]?.value ?? l('0'), off);
          expect(equals(subtract(gap, found.value.compass), l('0'))).toBe(true);
          expect(isNegative(off) || less(overhang, off)).toBe(false);
        }
      }),
      { numRuns: runs(200) },
    );
  });
});
