import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { rootTo } from '../../src/length/diagonal';
import { inches, type Length, ratio } from '../../src/length/length';
import { squareUp } from '../../src/length/racking';
import { grainOf } from '../../src/length/tape';
import { writeLength } from '../../src/length/write';
import { runs } from '../runs';
import { l, w } from './write-figures';

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
