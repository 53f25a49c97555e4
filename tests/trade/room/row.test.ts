import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { equals, less, subtract } from '../../../src/length/length';
import { rowOf } from '../../../src/trade/room/row';
import { runs } from '../../runs';
import { back, figures, l, refusal, row, rows, value, w } from './sample';

describe('rowOf', () => {
  test('Example 1 of room: 44 3/4, 44 5/8, 44 5/8 read inside with a body of 3: least 47 5/8, spread 1/8', () => {
    const found = value(rowOf(row('44 3/4', '44 5/8', '44 5/8'), { body: l('3') }));
    expect(figures(found.trues)).toEqual(['47 3/4', '47 5/8', '47 5/8']);
    expect([w(found.least.value), w(found.greatest.value), w(found.spread), found.both]).toEqual([
      '47 5/8',
      '47 3/4',
      '1/8',
      false,
    ]);
    // of two alike the first
    expect(w(found.least.at)).toBe('40');
  });

  test('an inch burned comes off, and both at once are told', () => {
    // 48 - 1 = 47, 49 - 1 + 3 = 51
    expect(figures(value(rowOf(row('48'), { burned: l('1') })).trues)).toEqual(['47']);
    const both = value(rowOf(row('49'), { burned: l('1'), body: l('3') }));
    expect([figures(both.trues), both.both]).toEqual([['51'], true]);
    expect(value(rowOf(row('49'), { burned: l('0'), body: l('3') })).both).toBe(false);
  });

  test.each([
    ['no reading', [], {}, { code: 'no-readings' }],
    ['a spot twice', [...row('48'), ...row('47')], {}, { code: 'twice', spot: { at: '0', plane: 'front' } }],
    // 3/4 - 1 = -1/4
    [
      'less than was burned',
      row('48', '3/4'),
      { burned: l('1') },
      { code: 'less-than-burned', spot: { at: '40', plane: 'front' }, by: '1/4' },
    ],
    [
      'just what was burned',
      back('1'),
      { burned: l('1') },
      { code: 'not-positive', spot: { at: '0', plane: 'back' } },
    ],
    ['nothing', row('0'), {}, { code: 'not-positive', spot: { at: '0', plane: 'front' } }],
  ])('%s is refused', (_, readings, tape, want) => {
    expect(refusal(rowOf(readings, tape))).toEqual(want);
  });

  test('front and back at the same height are two spots', () => {
    expect(figures(value(rowOf([...row('48'), ...back('47')], {})).trues)).toEqual(['48', '47']);
  });

  test('no reading is under the least or over the greatest, and the spread lies between', () => {
    fc.assert(
      fc.property(rows(1, 120, 4), (readings) => {
        const { trues, least, greatest, spread } = value(rowOf(readings, {}));
        for (const { value: x } of trues) expect(less(x, least.value) || less(greatest.value, x)).toBe(false);
        expect(equals(subtract(greatest.value, least.value), spread)).toBe(true);
      }),
      { numRuns: runs(100) },
    );
  });
});
