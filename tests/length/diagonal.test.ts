import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { diagonal, isqrt, rootSide, rootTo, squareOf } from '../../src/length/diagonal';
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
          const half = (side: bigint) =>
            k
              .mul(2n)
              .add(side)
              .pow(2)
              .div(4n * g * g); // midway to the neighbour, squared
          if (k.n > 0n) expect(square.compare(half(-1n))).toBeGreaterThanOrEqual(0);
          expect(square.compare(half(1n))).toBeLessThan(0);
        },
      ),
      { numRuns: runs(1000) },
    );
  });
});
