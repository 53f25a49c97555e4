import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { diagonal, isqrt, rootLess, rootSide, rootTo, squareOf } from '../../src/length/diagonal';
import { inches, ratio } from '../../src/length/length';
import { grainOf } from '../../src/length/tape';
import { writeLength } from '../../src/length/write';
import { runs } from '../runs';
import { l } from './write-figures';

describe('diagonal', () => {
  test('Example 6 of length: the case face 38 3/8 × 64 1/4 reads 74 27/32, scant', () => {
    const square = squareOf(l('38 3/8'), l('64 1/4'));
    expect(square.toFraction(true)).toBe('5600 45/64');
    const mark = diagonal(l('38 3/8'), l('64 1/4'), grainOf('1/32'));
    expect(writeLength(mark)).toBe('74 27/32');
    expect(rootSide(square, mark)).toBeLessThan(0);
  });

  test('a side of nothing has no diagonal', () => {
    expect(() => diagonal(l('0'), l('4'), grainOf('1/32'))).toThrow(RangeError);
    expect(() => diagonal(l('3'), l('0'), grainOf('1/32'))).toThrow(RangeError);
  });

  test('isqrt is the floor of the root', () => {
    fc.assert(
      fc.property(fc.bigInt({ min: 0n, max: 10n ** 40n }), (n) => {
        const k = isqrt(n);
        expect(k * k <= n && n < (k + 1n) * (k + 1n)).toBe(true);
      }),
      { numRuns: runs(1000) },
    );
  });

  test('no mark of the tape is nearer than the one given', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 900 }),
        fc.integer({ min: 1, max: 900 }),
        fc.constantFrom(16n, 32n, 64n),
        (n, d, g) => {
          const square = ratio(BigInt(n), BigInt(d));
          const k = rootTo(square, inches(1n, g)).mul(g);
          const half = (side: bigint) => {
            const twice = k.mul(2n).add(side);
            return twice.mul(twice).div(4n * g * g); // midway to the neighbour, squared
          };
          if (k.n > 0n) expect(square.compare(half(-1n))).toBeGreaterThanOrEqual(0);
          expect(square.compare(half(1n))).toBeLessThan(0);
        },
      ),
      { numRuns: runs(1000) },
    );
  });
});

describe('rootLess', () => {
  const at = (mode: 'floor' | 'ceil') => ({ grain: grainOf('1/16'), mode });

  // √4212 is 64.8999: 649/1000 over 64 1/4, between 10 and 11 sixteenths
  test.each([
    ['64 1/4', '5/8', '11/16'],
    ['64 7/8', '0', '1/16'],
    ['65', '-1/8', '-1/16'],
    // 64 9/10 is 4212.01 squared, .00008 over the root
    ['64 9/10', '-1/16', '0'],
    ['0', '64 7/8', '64 15/16'],
    // 84.8999 over the line's other side
    ['-20', '84 7/8', '84 15/16'],
  ])('of 4212 over %s: at least %s, at most %s', (x, down, up) => {
    const square = ratio(4212n);
    const found = (mode: 'floor' | 'ceil') => rootLess(square, l(x), at(mode)).toFraction(true);
    expect([found('floor'), found('ceil')]).toEqual([down, up]);
  });

  test('an exact root is the same both ways', () => {
    expect(rootLess(ratio(25n), l('4'), at('floor')).toFraction()).toBe('1');
    expect(rootLess(ratio(25n), l('4'), at('ceil')).toFraction()).toBe('1');
    expect(rootLess(ratio(0n), l('1/3'), at('ceil')).toFraction(true)).toBe('-5/16');
  });

  test('a square below 0 or a grain of nothing is a mistake', () => {
    expect(() => rootLess(ratio(-1n), l('1'), at('floor'))).toThrow(RangeError);
    expect(() => rootLess(ratio(1n), l('1'), { grain: l('0'), mode: 'floor' })).toThrow(RangeError);
  });

  test('down is at most the root and a grain more is over it; up is the same or a grain more', () => {
    const part = fc.tuple(fc.bigInt({ min: 0n, max: 900n }), fc.bigInt({ min: 1n, max: 90n }));
    fc.assert(
      fc.property(part, fc.bigInt({ min: -900n, max: 900n }), ([n, d], k) => {
        const square = ratio(n, d);
        const x = inches(k, 7n);
        const [down, up] = [rootLess(square, x, at('floor')), rootLess(square, x, at('ceil'))];
        // below 0 there is always less than a root
        const under = (y: typeof x) => y.s * y.n <= 0n || rootSide(square, y) >= 0;
        const over = (y: typeof x) => y.s * y.n >= 0n && rootSide(square, y) <= 0;
        const grain = grainOf('1/16');
        expect(under(x.add(down) as typeof x)).toBe(true);
        expect(under(x.add(down).add(grain) as typeof x)).toBe(false);
        expect(over(x.add(up) as typeof x)).toBe(true);
        expect(over(x.add(up).sub(grain) as typeof x)).toBe(false);
      }),
      { numRuns: runs(1000) },
    );
  });
});
