import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { add, equals, less, negate, subtract } from '../../../src/length/length';
import { plumbWidth } from '../../../src/trade/room/plumb';
import { rowOf } from '../../../src/trade/room/row';
import { runs } from '../../runs';
import { back, between, figures, l, refusal, row, rows, value, w } from './sample';

const lines = {
  apart: l('46'),
  left: row('5/8', '7/8', '1 1/4'),
  right: row('1 1/8', '3/4', '3/8'),
};

describe('plumbWidth', () => {
  test('Example 2 of room: two walls that lean one way are as wide everywhere and have 5/8 less room', () => {
    const found = value(plumbWidth(lines));
    expect(figures(found.widths)).toEqual(['47 3/4', '47 5/8', '47 5/8']);
    expect([found.least, found.width, found.less].map(w)).toEqual(['47 5/8', '47', '5/8']);
    // 1 1/4 - 5/8 and 1 1/8 - 3/8
    expect([found.nearLeft, found.nearRight, found.outLeft, found.outRight].map(w)).toEqual([
      '5/8',
      '3/8',
      '5/8',
      '3/4',
    ]);
    expect(found.differs).toEqual([]);
  });

  test('walls true and plumb have all their width', () => {
    const found = value(plumbWidth({ apart: l('46'), left: row('1/2', '1/2'), right: row('1/4', '1/4') }));
    expect([found.width, found.less].map(w)).toEqual(['46 3/4', '0']);
  });

  test('a wall that comes in over the line counts below 0, and the back counts as the front does', () => {
    // 46 - 1/8 + 1/4
    const left = [...row('1/2'), ...back('-1/8')];
    const right = [...row('1/4'), ...back('3/8')];
    expect(w(value(plumbWidth({ apart: l('46'), left, right })).width)).toBe('46 1/8');
  });

  test('a width measured across that says less holds it down, and each that differs is told', () => {
    // reckoned 47 3/4, 47 5/8, 47 5/8; measured 47 3/4, 46 7/8, 47 11/16
    const across = value(rowOf(row('47 3/4', '46 7/8', '47 11/16'), {}));
    const found = value(plumbWidth({ ...lines, across }));
    expect([found.least, found.width, found.less].map(w)).toEqual(['46 7/8', '46 7/8', '0']);
    expect(found.differs.map((x) => [w(x.at), w(x.value)])).toEqual([
      ['40', '-3/4'],
      ['80', '1/16'],
    ]);
  });

  test.each([
    ['no reading', { left: [], right: [] }, { code: 'no-readings' }],
    ['lines no way apart', { apart: l('0') }, { code: 'not-positive' }],
    [
      'a spot twice left',
      { left: [...row('1/2'), ...lines.left] },
      { code: 'twice', side: 'left', spot: { at: '0', plane: 'front' } },
    ],
    [
      'a spot twice right',
      { right: [...row('1/2'), ...lines.right] },
      { code: 'twice', side: 'right', spot: { at: '0', plane: 'front' } },
    ],
    [
      'one more left',
      { right: row('1/2', '1/2') },
      { code: 'spots-differ', missing: 'right', spot: { at: '80', plane: 'front' } },
    ],
    [
      'one more right',
      { left: row('1/2', '1/2') },
      { code: 'spots-differ', missing: 'left', spot: { at: '80', plane: 'front' } },
    ],
    [
      'front against back',
      { left: row('1/2'), right: back('1/2') },
      { code: 'spots-differ', missing: 'right', spot: { at: '0', plane: 'front' } },
    ],
    // 46 - 46 - 1/4
    ['walls that meet', { left: row('-46'), right: row('-1/4') }, { code: 'no-room', by: '1/4' }],
    ['walls that touch', { left: row('-46'), right: row('0') }, { code: 'no-room', by: '0' }],
  ])('%s is refused', (_, more, want) => {
    expect(refusal(plumbWidth({ ...lines, ...more }))).toEqual(want);
  });

  const offsets = rows(-2, 3, 5);

  test('a plumb box as wide as found clears both walls at every spot, and touches each at one', () => {
    fc.assert(
      fc.property(between(20, 60), offsets, offsets, (apart, left, right) => {
        const found = value(plumbWidth({ apart, left, right }));
        expect(less(found.least, found.width)).toBe(false);
        // its left side as far left as the walls let it, its right side then a width further
        const side = negate(found.nearLeft);
        const clear = [
          ...left.map((x) => add(side, x.value)),
          ...right.map((x) => subtract(add(apart, x.value), add(side, found.width))),
        ];
        expect(clear.every((x) => !less(x, l('0')))).toBe(true);
        expect(clear.slice(0, left.length).some((x) => equals(x, l('0')))).toBe(true);
        expect(clear.slice(left.length).some((x) => equals(x, l('0')))).toBe(true);
      }),
      { numRuns: runs(100) },
    );
  });
});
