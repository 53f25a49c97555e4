import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { add, half, inches, type Length, less, subtract, times } from '../../../src/length/length';
import { holeRow, leftOut, meets } from '../../../src/trade/shelves/hole-row';
import { l } from '../../length/write-figures';
import { runs } from '../../runs';

const row = { span: l('61 1/16'), first: l('4 3/4'), pitch: l('1 1/2'), top: l('5') };

describe('holeRow', () => {
  test('the first hole is counted: room for no pitch is room for one hole', () => {
    // 9 3/4 − 4 3/4 − 5 = 0
    expect(holeRow({ ...row, span: l('9 3/4') })).toEqual({ count: 1, left: l('0') });
    // one sixty-fourth less, and there is none
    expect(holeRow({ ...row, span: l('9 47/64') })).toEqual({ count: 0, left: l('-1/64') });
  });

  test('a pitch of nothing has no holes', () => {
    expect(holeRow({ ...row, pitch: l('0') }).count).toBe(0);
  });

  const sixteenths = (most: number) =>
    fc.integer({ min: 0, max: most * 16 }).map((n) => inches(BigInt(n), 16n));
  test('the last hole stands within the room at the top, and one more would not', () => {
    fc.assert(
      fc.property(
        fc.record({ span: sixteenths(80), first: sixteenths(10), top: sixteenths(10) }),
        fc.integer({ min: 1, max: 64 }).map((n) => inches(BigInt(n), 16n)),
        (at, pitch) => {
          const { count, left } = holeRow({ ...at, pitch });
          const end = subtract(at.span, at.top);
          const hole = (no: number): Length => add(at.first, times(pitch, BigInt(no - 1)));
          if (count === 0) expect(less(end, at.first)).toBe(true);
          else expect(subtract(end, hole(count))).toEqual(left);
          expect(less(end, hole(count + 1))).toBe(true);
        },
      ),
      { numRuns: runs(300) },
    );
  });
});

describe('meets', () => {
  const dado = { near: l('10'), far: l('10 23/32') };
  const dia = l('1/4');
  // 1/4 to keep, half a hole of 1/8: the middle stands 3/8 clear or is left out
  test.each([
    ['9 5/8', false],
    ['9 41/64', true],
    ['10 3/8', true],
    ['11 5/64', true],
    ['11 3/32', false],
  ])('a hole at %s: %s', (at, want) => expect(meets({ at: l(at), dia }, dado, l('1/4'))).toBe(want));

  test('every hole that is kept leaves its wood at either side of every groove', () => {
    const grooves = [dado, { near: l('30'), far: l('30 3/4') }];
    const out = leftOut({ ...row, dia }, grooves, l('1/4'));
    const { count } = holeRow(row);
    for (let no = 1; no <= count; no += 1) {
      const at = add(row.first, times(row.pitch, BigInt(no - 1)));
      const clear = grooves.every(({ near, far }) => {
        const [low, high] = [subtract(at, half(dia)), add(at, half(dia))];
        return !less(near, add(high, l('1/4'))) || !less(low, add(far, l('1/4')));
      });
      expect([no, out.includes(no)]).toEqual([no, !clear]);
    }
    // 4 3/4 + 1 1/2 k: 9 1/4, 10 3/4 (no. 5) in the first; 29 1/2 (no. 17.5 is none), 30 1/4 (no. 18) in the second
    expect(out).toEqual([5, 18]);
  });
});
