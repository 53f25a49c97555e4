import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { equals, isNegative, subtract } from '../../../src/length/length';
import { type FootDrop, levelFeet } from '../../../src/trade/room/feet';
import { runs } from '../../runs';
import { between, l, refusal, spelled, value, w } from './sample';

/** Two in front, then two behind. */
const feet = (...drops: readonly string[]): readonly FootDrop[] =>
  drops.map((x, k) => ({ row: k < 2 ? 'front' : 'back', number: (k % 2) + 1, drop: l(x) }));

describe('levelFeet', () => {
  test('Example 12 of room: foot 2 is the high point, shims 3/16, 0, 5/16, 1/16', () => {
    const found = value(levelFeet(feet('34 9/16', '34 3/8', '34 11/16', '34 7/16')));
    expect(found.shims.map((foot) => w(foot.shim))).toEqual(['3/16', '0', '5/16', '1/16']);
    expect([found.high, w(found.most), found.oneRow, found.over]).toEqual([
      [{ row: 'front', number: 2 }],
      '5/16',
      false,
      [],
    ]);
  });

  test('on a level floor every foot is a high point', () => {
    expect(value(levelFeet(feet('34', '34', '34'))).high.length).toBe(3);
  });

  test('feet of one row alone are told: shimmed so, a case twists', () => {
    expect(value(levelFeet(feet('34', '34 1/8'))).oneRow).toBe(true);
    expect(value(levelFeet(feet('34', '34 1/8', '34'))).oneRow).toBe(false);
  });

  test('a shim of 3/4 is well, a 64th more is over it by that', () => {
    expect(value(levelFeet(feet('34', '34 3/4'))).over).toEqual([]);
    expect(spelled(value(levelFeet(feet('34', '34 49/64'))).over)).toEqual([
      { row: 'front', number: 2, shim: '49/64', limit: '3/4', by: '1/64' },
    ]);
  });

  test('in a job in millimetres the limits are 20 and 75', () => {
    const over = (mm: string) =>
      levelFeet(
        [
          { row: 'front', number: 1, drop: l('900 mm') },
          { row: 'back', number: 1, drop: l(mm) },
        ],
        'mm',
      );
    expect([value(over('920 mm')).over.length, value(over('920.5 mm')).over.length]).toEqual([0, 1]);
    expect([over('975 mm').ok, over('976 mm').ok]).toEqual([true, false]);
  });

  test('drops 3 apart are believed, a 64th more are misread', () => {
    expect(w(value(levelFeet(feet('34', '37'))).most)).toBe('3');
    expect(refusal(levelFeet(feet('35', '34', '37 1/64')))).toEqual({
      code: 'misread',
      least: { row: 'front', number: 2 },
      greatest: { row: 'back', number: 1 },
      by: '1/64',
      most: '3',
    });
  });

  test.each([
    ['no feet', [], { code: 'no-feet' }],
    [
      'a foot twice',
      [...feet('34', '35'), ...feet('34')],
      { code: 'twice', foot: { row: 'front', number: 1 } },
    ],
    ['a drop of nothing', feet('34', '0'), { code: 'not-positive', foot: { row: 'front', number: 2 } }],
  ])('%s is refused', (_, given, want) => {
    expect(refusal(levelFeet(given))).toEqual(want);
  });

  test('with its shim every foot stands at the same drop from the line, and none is shimmed below 0', () => {
    fc.assert(
      fc.property(fc.array(between(30, 33), { minLength: 1, maxLength: 8 }), (drops) => {
        const given = drops.map(
          (drop, k): FootDrop => ({ row: k % 2 === 0 ? 'front' : 'back', number: k, drop }),
        );
        const { shims, high } = value(levelFeet(given));
        const tops = shims.map(({ shim }, k) => subtract(given[k]?.drop ?? l('0'), shim));
        for (const top of tops) expect(equals(top, tops[0] ?? l('0'))).toBe(true);
        expect(shims.some(({ shim }) => isNegative(shim))).toBe(false);
        expect(high.length).toBeGreaterThan(0);
      }),
      { numRuns: runs(200) },
    );
  });
});
