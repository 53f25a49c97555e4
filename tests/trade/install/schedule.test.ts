import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { add, atMost, equals, inches, less, subtract, times } from '../../../src/length/length';
import { screwSchedule } from '../../../src/trade/install/schedule';
import { runs } from '../../runs';
import { l, w } from '../grooves/sample';

const plan = { run: l('58 11/16'), end: l('1 3/4'), most: l('7'), rows: 1 };
const found = (more: Partial<typeof plan> = {}) => {
  const result = screwSchedule({ ...plan, ...more });
  if (!result.ok) throw new Error(result.error.code);
  return result.value;
};
const refused = (more: Partial<typeof plan>) => {
  const result = screwSchedule({ ...plan, ...more });
  return result.ok ? 'ok' : result.error;
};

describe('screwSchedule', () => {
  // 58 11/16 - 3 1/2 = 55 3/16; over 7 it is 7.88, so 8 spaces; 883/16 ÷ 8 = 883/128 = 6 115/128
  test('Example 6 of install: 9 screws at 6 115/128', () => {
    const { marks, pitch, count } = found();
    expect([count, marks.length, w(pitch)]).toEqual([9, 9, '6 115/128']);
    expect([w(marks[0]), w(marks[1]), w(marks[8])]).toEqual(['1 3/4', '8 83/128', '56 15/16']);
  });

  test('rows multiply the count, not the marks', () => {
    expect([found({ rows: 3 }).count, found({ rows: 3 }).marks.length]).toEqual([27, 9]);
  });

  test('where the spaces go in just, no screw more; a 64th longer, one more', () => {
    // 3 1/2 + 7 × 7 = 52 1/2
    expect([found({ run: l('52 1/2') }).count, found({ run: l('52 33/64') }).count]).toEqual([8, 9]);
  });

  test('one in the middle when the ends meet or cross; a 64th more and there are two', () => {
    expect([w(found({ run: l('3') }).marks[0]), found({ run: l('3') }).count]).toEqual(['1 1/2', 1]);
    expect(found({ run: l('3 1/2') }).marks.map(w)).toEqual(['1 3/4']);
    expect(found({ run: l('3 33/64') }).marks.map(w)).toEqual(['1 3/4', '1 49/64']);
  });

  test.each(['run', 'end', 'most'] as const)('%s of nothing or less is refused', (what) => {
    expect([refused({ [what]: l('0') }), refused({ [what]: l('-1') })]).toEqual([
      { code: 'not-positive', what },
      { code: 'not-positive', what },
    ]);
  });

  test('rows that are no count are refused', () => {
    for (const rows of [0, -1, 1.5, Number.NaN])
      expect(refused({ rows })).toEqual({ code: 'rows-not-whole' });
  });

  test('more than 200 in a row is a slip of the keys: the least spacing that would do is said', () => {
    // between the ends 55 3/16; 199 spaces: 883/16 ÷ 199 = 883/3184
    const slip = refused({ most: l('1/64') });
    expect(slip).toMatchObject({ code: 'too-many', most: 200 });
    const spacing = typeof slip === 'object' && slip.code === 'too-many' ? slip.spacing : undefined;
    expect(w(spacing)).toBe('883/3184');
    expect(found({ most: inches(883n, 3184n) }).count).toBe(200);
  });

  test('first and last stand at the ends, none further apart than said, and one fewer would be', () => {
    const x = fc.bigInt({ min: 1n, max: 6000n }).map((n) => inches(n, 64n));
    fc.assert(
      fc.property(x, x, fc.bigInt({ min: 64n, max: 999n }), (run, end, n) => {
        const most = inches(n, 64n);
        const { marks, pitch } = found({ run, end, most });
        const [first] = marks;
        const last = marks[marks.length - 1];
        if (!first || !last) throw new Error('no mark');
        expect(equals(subtract(run, last), first)).toBe(true);
        if (!pitch) {
          expect(atMost(run, times(end, 2n))).toBe(true);
          return;
        }
        expect(equals(first, end)).toBe(true);
        expect(atMost(pitch, most)).toBe(true);
        expect(equals(add(first, times(pitch, BigInt(marks.length - 1))), last)).toBe(true);
        expect(less(times(most, BigInt(marks.length - 2)), subtract(last, first))).toBe(true);
      }),
      { numRuns: runs(200) },
    );
  });
});
