import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { add, equals, inches, type Length, less } from '../../../src/length/length';
import { roundTurn } from '../../../src/trade/room/turn';
import { runs } from '../../runs';
import { between, l, refusal, spelled, value, w } from './sample';

const sixteenth = l('1/16');
const turn = (a: string, b: string, long = '64 1/4', wide = '17 1/2') =>
  value(roundTurn({ a: l(a), b: l(b) }, { long: l(long), wide: l(wide) }, sixteenth));

describe('roundTurn', () => {
  // √8 × 36 - 35 = 66.823; for 31, 40 and 28, 36 the least of (a sin t + b cos t - 17 1/2) / (sin t cos t) over all
  // angles is 64.8998 and 55.0150
  test.each([
    ['36', '36', { goes: 'turning', longest: '66 13/16', spare: '2 9/16', beside: '18 1/2' }],
    [
      '31',
      '40',
      {
        goes: 'turning',
        longest: '64 7/8',
        spare: '5/8',
        beside: '13 1/2',
        close: { want: '1', by: '3/8' },
      },
    ],
    ['28', '36', { goes: 'jams', longest: '55', spare: '-9 1/4', beside: '10 1/2' }],
    ['36', '28', { goes: 'jams', longest: '55', spare: '-9 1/4', beside: '10 1/2' }],
  ])('Example 10 of room: 64 1/4 × 17 1/2 from %s into %s', (a, b, want) => {
    expect(spelled(turn(a, b))).toEqual(want);
  });

  test('the sizes of the plan may be given either way', () => {
    expect(spelled(turn('31', '40', '17 1/2', '64 1/4'))).toEqual(spelled(turn('31', '40')));
  });

  test('Example 14 of room: at 40, 58 a case 80 × 28 2/5 touches the corner and goes; a thousandth wider jams', () => {
    expect(spelled(turn('40', '58', '80', '28.4'))).toMatchObject({
      goes: 'turning',
      longest: '80',
      spare: '0',
    });
    expect(spelled(turn('40', '58', '80', '28.401'))).toMatchObject({ goes: 'jams', longest: '79 15/16' });
    expect(turn('40', '58', '80.001', '28.4').goes).toBe('jams');
  });

  test('a square as wide as both corridors is slid round, and goes no way once it is longer', () => {
    // turned it would need (36 + 72)² = 11664 <= 8 × 1296 = 10368
    expect(spelled(turn('36', '36', '36', '36'))).toMatchObject({
      goes: 'unturned',
      longest: '36',
      beside: '0',
    });
    expect(turn('36', '36', '36 1/64', '36').goes).toBe('jams');
    expect(turn('36', '36', '35', '35').goes).toBe('unturned');
    expect(turn('20', '40', '40', '20').goes).toBe('unturned');
    // longer than both corridors, and as wide as the narrow one: no angle is left to it
    expect(turn('20', '40', '40 1/64', '20').goes).toBe('jams');
  });

  test('a case that goes has never less than 0 to spare, though the longest is told to a mark', () => {
    // 36 1/64 is slid round just so; the mark below it is 36
    expect(spelled(turn('36 1/64', '36 1/64', '36 1/64', '36 1/64'))).toMatchObject({
      goes: 'unturned',
      longest: '36',
      spare: '0',
    });
  });

  test('a case wider than a corridor does not even go in, and by how much is told', () => {
    expect(spelled(turn('17 3/8', '60'))).toEqual({ goes: 'jams', beside: '-1/8' });
    expect(turn('17 1/2', '60').beside.n).toBe(0n);
  });

  test.each([
    // longest 66 13/16 at 36, 36
    ['65 13/16', '17 1/2', undefined],
    ['65 53/64', '17 1/2', { want: '1', by: '1/64' }],
    // beside 1 and 63/64; both are slid round, and their length has more to spare
    ['35', '35', undefined],
    ['35 1/64', '35 1/64', { want: '1', by: '1/64' }],
  ])('%s × %s with less than an inch to spare is close: %o', (long, wide, want) => {
    expect(spelled(turn('36', '36', long, wide).close)).toEqual(want);
  });

  test('in a job in millimetres close is under 25', () => {
    const close = (wide: string) =>
      value(roundTurn({ a: l('900 mm'), b: l('900 mm') }, { long: l(wide), wide: l(wide) }, l('1 mm'), 'mm'))
        .close !== undefined;
    expect([close('875 mm'), close('876 mm')]).toEqual([false, true]);
  });

  test.each([
    ['0', '36', '64', '17', 'a'],
    ['36', '-1', '64', '17', 'b'],
    ['36', '36', '0', '17', 'long'],
    ['36', '36', '64', '0', 'wide'],
  ])('%s, %s, %s, %s is refused', (a, b, long, wide, what) => {
    const plan = { long: l(long), wide: l(wide) };
    expect(refusal(roundTurn({ a: l(a), b: l(b) }, plan, sixteenth))).toEqual({ code: 'not-positive', what });
  });
});

type Point = readonly [x: number, y: number];

/** How deep a point lies within a polygon whose corners go round to the left; below 0 outside. */
function within([x, y]: Point, corners: readonly Point[]): number {
  const edges = corners.map(([ax, ay], k) => {
    const [bx, by] = corners[(k + 1) % corners.length] ?? [ax, ay];
    return ((bx - ax) * (y - ay) - (by - ay) * (x - ax)) / Math.hypot(bx - ax, by - ay);
  });
  return Math.min(...edges);
}

/**
 * The case in floats, turned through the corner in small steps with two corners on the outer walls: the deepest that
 * the inner corner of the walls comes into it, or a corner of it into the wall.
 */
function deepest(a: number, b: number, long: number, wide: number): number {
  let worst = Number.NEGATIVE_INFINITY;
  for (let k = 0; k <= 2000; k++) {
    const t = ((Math.PI / 2) * k) / 2000;
    const [s, c] = [Math.sin(t), Math.cos(t)];
    const [p, q]: [Point, Point] = [
      [long * c, 0],
      [0, long * s],
    ];
    const off = ([x, y]: Point): Point => [x + wide * s, y + wide * c];
    const corners = [p, off(p), off(q), q];
    worst = Math.max(worst, within([a, b], corners), ...corners.map(([x, y]) => Math.min(x - a, y - b)));
  }
  return worst;
}

const f = (x: Length | undefined): number => x?.valueOf() ?? Number.NaN;

describe('roundTurn beside floats', () => {
  const sizes = fc.tuple(between(20, 60), between(20, 60), between(10, 110), between(4, 50));

  test('a case that goes clears the corner at every step; one that jams by an eighth or more does not', () => {
    fc.assert(
      fc.property(sizes, ([a, b, long, wide]) => {
        fc.pre(!less(long, wide));
        const found = value(roundTurn({ a, b }, { long, wide }, sixteenth));
        // a millionth is what floats of this size may be off
        if (found.goes === 'turning') expect(deepest(f(a), f(b), f(long), f(wide))).toBeLessThan(1e-6);
        if (found.goes === 'unturned')
          expect([f(long) <= Math.max(f(a), f(b)), f(wide) <= Math.min(f(a), f(b))]).toEqual([true, true]);
        if (found.goes === 'jams' && found.longest && !less(long, add(found.longest, l('3/16'))))
          expect(deepest(f(a), f(b), f(long), f(wide))).toBeGreaterThan(0.01);
      }),
      { numRuns: runs(100) },
    );
  });

  test('the longest goes, and a mark longer jams', () => {
    fc.assert(
      fc.property(sizes, ([a, b, , wide]) => {
        fc.pre(!less(a, wide) && !less(b, wide));
        const at = (long: Length) => value(roundTurn({ a, b }, { long, wide }, sixteenth));
        const { longest } = at(inches(200n));
        if (!longest) throw new Error('none');
        // the plan turns round where the longest is the lesser of its two sizes
        fc.pre(!less(longest, wide));
        expect(at(longest).goes).not.toBe('jams');
        expect(at(add(longest, sixteenth)).goes).toBe('jams');
        expect(equals(at(longest).longest ?? a, longest)).toBe(true);
        expect(w(at(longest).spare)).toBe('0');
      }),
      { numRuns: runs(60) },
    );
  });

  test('turned the wrong way round no case goes that the right way does not take', () => {
    fc.assert(
      fc.property(sizes, ([a, b, long, wide]) => {
        fc.pre(!less(long, wide) && less(a, long) && less(b, long));
        const [x, y, p, q] = [f(a), f(b), f(long), f(wide)];
        // at every angle: within the one corridor, within the other, or past the corner with its short end
        const goes = Array.from({ length: 400 }, (_, k) => (Math.PI / 2) * (k / 399)).every((t) => {
          const [s, c] = [Math.sin(t), Math.cos(t)];
          return p * c + q * s <= x || p * s + q * c <= y || x * c + y * s - q * s * c >= p;
        });
        if (goes) expect(value(roundTurn({ a, b }, { long, wide }, sixteenth)).goes).toBe('turning');
      }),
      { numRuns: runs(200) },
    );
  });
});
