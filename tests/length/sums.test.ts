import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { trueReading } from '../../src/length/burned';
import { diagonal, isqrt, rootSide, rootTo, squareOf } from '../../src/length/diagonal';
import { equalParts } from '../../src/length/equal-parts';
import { add, inches, type Length, negate, ratio, sum, times } from '../../src/length/length';
import { squareUp } from '../../src/length/racking';
import { grainOf, markAt } from '../../src/length/tape';
import { writeLength } from '../../src/length/write';
import { runs } from '../runs';
import { l, w } from './write-figures';

test('rootTo: a square below nothing has no root, and a grain is more than nothing', () => {
  expect(() => rootTo(ratio(-25n), inches(1n, 64n))).toThrow(RangeError);
  expect(() => rootTo(ratio(25n), inches(0n))).toThrow(RangeError);
  expect(rootTo(ratio(0n), inches(1n, 64n)).equals(0n)).toBe(true);
});

describe('equalParts', () => {
  test('Example 4 of length: 36 15/16 into five bays with 11/32 dividers', () => {
    const found = equalParts(l('36 15/16'), 5, l('11/32'));
    if (!found.ok) throw new Error(found.error.code);
    expect(w(found.value.each)).toBe('7 9/80');
    expect(found.value.nears.map(w)).toEqual(['7 9/80', '14 91/160', '22 1/40', '29 77/160']);
    expect(found.value.nears.map((x) => writeLength(markAt(x, '1/32').value))).toEqual([
      '7 1/8',
      '14 9/16',
      '22 1/32',
      '29 15/32',
    ]);
  });

  test('parts and dividers make the length again', () => {
    fc.assert(
      fc.property(
        fc.bigInt({ min: 1n, max: 10n ** 6n }),
        fc.integer({ min: 1, max: 60 }),
        fc.bigInt({ min: 0n, max: 999n }),
        (n, k, t) => {
          const [length, divider] = [inches(n, 64n), inches(t, 128n)];
          const found = equalParts(length, k, divider);
          if (!found.ok) {
            expect(times(divider, BigInt(k - 1)).gte(length)).toBe(true);
            return;
          }
          const all = add(times(found.value.each, BigInt(k)), times(divider, BigInt(k - 1)));
          expect(all.equals(length)).toBe(true);
          expect(found.value.nears).toHaveLength(k - 1);
        },
      ),
      { numRuns: runs(1000) },
    );
  });

  test.each([
    [0, '1/8', 'count-not-whole'],
    [2.5, '1/8', 'count-not-whole'],
    [-1, '1/8', 'count-not-whole'],
    [3, '-1/8', 'divider-negative'],
    [3, '5', 'dividers-fill-it'],
  ])('ten inches into %s with %s is refused: %s', (n, t, code) => {
    const found = equalParts(l('10'), n, l(t));
    expect(found.ok ? 'given' : found.error.code).toBe(code);
  });

  test.each(['0', '-1'])('a length of %s has no parts', (length) => {
    const negative = length.startsWith('-');
    const found = equalParts(negative ? negate(l(length.slice(1))) : l(length), 3, l('0'));
    expect(!found.ok && found.error).toEqual({ code: 'length-not-positive' });
  });

  test('dividers that fill the length say how many parts would fit', () => {
    const found = equalParts(l('10'), 4, l('5'));
    expect(!found.ok && found.error).toMatchObject({ code: 'dividers-fill-it', most: 2 });
    const exact = equalParts(l('10'), 2, l('3'));
    expect(exact.ok).toBe(true);
  });
});

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

describe('squareUp', () => {
  const frame = { w: l('38 3/8'), h: l('64 1/4'), a: l('74 31/32'), b: l('74 23/32') };

  test('a quarter inch between diagonals is nearly a quarter inch of push', () => {
    const found = squareUp(frame, grainOf('1/32'));
    if (!found.ok) throw new Error(found.error.code);
    expect(w(found.value.push)).toBe('2395/9824');
    expect(writeLength(found.value.until)).toBe('74 27/32');
    expect(found.value).toMatchObject({ long: 'A', agree: true });
  });

  test('a mean error up to 1/32 on a diagonal is believed, more is not', () => {
    // sides 3 and 4 feet, both diagonals reading T: (2T² - 2·60²)/(4T) is a hair under T - 60 above, a hair over below
    const square = (reading: Length) =>
      squareUp({ w: l('36'), h: l('48'), a: reading, b: reading }, grainOf('1/64'));
    const agrees = (text: string) => {
      const found = square(l(text));
      return found.ok && found.value.agree;
    };
    expect([agrees('60 1/32'), agrees('60 1/31'), agrees('59 32/33'), agrees('59 31/32')]).toEqual([
      true,
      false,
      true,
      false,
    ]);
  });

  test('which one is long follows the readings', () => {
    const found = squareUp({ ...frame, a: frame.b, b: frame.a }, grainOf('1/32'));
    expect(found.ok && found.value.long).toBe('B');
    const equal = squareUp({ ...frame, a: frame.b }, grainOf('1/32'));
    expect(equal.ok && equal.value.long).toBe('neither');
  });

  test('figures that cannot all be right are named', () => {
    const found = squareUp({ ...frame, h: l('65') }, grainOf('1/32'));
    expect(found.ok && found.value.agree).toBe(false);
    const never = squareUp({ ...frame, a: l('103') }, grainOf('1/32'));
    expect(!never.ok && never.error).toMatchObject({ code: 'cannot-be', which: 'A' });
    expect(squareUp({ ...frame, b: l('25') }, grainOf('1/32')).ok).toBe(false);
    expect(squareUp({ ...frame, w: l('0') }, grainOf('1/32')).ok).toBe(false);
  });

  test('the push makes up the whole difference of the squares, and both diagonals meet at the target', () => {
    const size = fc.bigInt({ min: 640n, max: 6400n });
    fc.assert(
      fc.property(size, size, fc.bigInt({ min: -40n, max: 40n }), (w, h, lean) => {
        const nearest = (x: bigint) => rootTo(ratio(h * h + (w + x) * (w + x), 64n * 64n), inches(1n, 64n));
        const read = { w: inches(w, 64n), h: inches(h, 64n), a: nearest(lean), b: nearest(-lean) };
        const found = squareUp(read, inches(1n, 64n));
        if (!found.ok) throw new Error(found.error.code);
        const { push, until, long } = found.value;
        const squares = read.a.mul(read.a).sub(read.b.mul(read.b));
        expect(push.mul(read.w).mul(4n).equals(squares.abs())).toBe(true);
        const both = read.a.mul(read.a).add(read.b.mul(read.b)).div(2n);
        expect(until.equals(rootTo(both as ReturnType<typeof ratio>, inches(1n, 64n)))).toBe(true);
        expect(long).toBe(squares.n === 0n ? 'neither' : squares.s > 0n ? 'A' : 'B');
        // the true lean, to what two rounded diagonals can tell of it
        const slack = inches(2n * (w + h), 64n * w);
        expect(
          push
            .sub(inches(lean < 0n ? -lean : lean, 64n))
            .abs()
            .compare(slack),
        ).toBeLessThanOrEqual(0);
      }),
      { numRuns: runs(1000) },
    );
  });
});

describe('trueReading', () => {
  test('an inch burned is taken back, the body is added', () => {
    const burned = trueReading(l('25 1/2'), { burned: l('1') });
    const body = trueReading(l('30'), { body: l('3 1/4') });
    expect(burned.ok && w(burned.value.value)).toBe('24 1/2');
    expect(body.ok && [w(body.value.value), body.value.both]).toEqual(['33 1/4', false]);
  });

  test('both at once is looked at, and less than the burned start is refused', () => {
    const both = trueReading(l('30'), { burned: l('1'), body: l('3') });
    expect(both.ok && both.value.both).toBe(true);
    const short = trueReading(l('1/2'), { burned: l('1') });
    expect(!short.ok && w(short.error.by)).toBe('1/2');
  });

  test('a burned start or a body of less than nothing is no figure', () => {
    expect(() => trueReading(l('3'), { burned: negate(l('1')) })).toThrow(RangeError);
    expect(() => trueReading(l('3'), { body: negate(l('1')) })).toThrow(RangeError);
  });
});

test('fractions of a run add up whatever their denominators', () => {
  const parts: readonly Length[] = ['1/3', '1/7', '11/21', '18 mm', '109/127'].map(l);
  expect(w(sum(parts))).toBe('2 72/127');
});
