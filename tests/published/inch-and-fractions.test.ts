import { describe, expect, test } from 'vitest';
import { diagonal, rootSide, squareOf } from '../../src/length/diagonal';
import { add, fromMillimetres, inches, subtract } from '../../src/length/length';
import { squareUp } from '../../src/length/racking';
import { roundTo } from '../../src/length/round';
import { grainOf, tapes } from '../../src/length/tape';
import { writeDecimal } from '../../src/length/write';

describe('the inch', () => {
  // Source: “Refinement of Values for the Yard and the Pound.”, Federal Register, July 1, 1959, as told second-hand by
  // sizes.com/units/yard_international.htm (date not read): "effective July 1, 1959, 1 international yard = 0.9144
  // meter exactly." So 1 inch = 25.4 mm exactly. Row 1 is ten yards; the others are worked from it.
  test.each([
    [9144n, inches(360n)],
    [254n, inches(10n)],
    [127n, inches(5n)],
    [1n, inches(5n, 127n)],
  ])('%s mm is exact', (mm, want) => expect(fromMillimetres(mm)).toEqual(want));
});

describe('sixty-fourths in decimals', () => {
  // Source: John Joseph Cosgrove, Principles and Practice of Plumbing, table LXIII, Decimal Equivalents Of Fractions
  // Of An Inch
  // (chestofbooks.com/home-improvement/construction/plumbing/Principle-Practice/Decimal-Equivalents-Of-An-Inch.html;
  // date not read): the 64ths, seen. The table prints 3/62 for 3/64, beside the right decimal; a nought is put before
  // each point here.
  const printed =
    '1 0.015625; 3 0.046875; 5 0.078125; 7 0.109375; 9 0.140625; 11 0.171875; 13 0.203125; 15 0.234375; 17 0.265625; ' +
    '19 0.296875; 21 0.328125; 23 0.359375; 25 0.390625; 27 0.421875; 29 0.453125; 31 0.484375; 33 0.515625; ' +
    '35 0.546875; 37 0.578125; 39 0.609375; 41 0.640625; 43 0.671875; 45 0.703125; 47 0.734375; 49 0.765625; ' +
    '51 0.796875; 53 0.828125; 55 0.859375; 57 0.890625; 59 0.921875; 61 0.953125; 63 0.984375';
  const rows = printed.split('; ').map((row) => row.split(' ') as [string, string]);

  test('the table is whole', () => expect(rows).toHaveLength(32));

  test.each(rows)('%s/64 is %s, and the decimal as a caliper shows it finds its 64th', (n, decimal) => {
    const exact = inches(BigInt(n), 64n);
    const shown = inches(BigInt(decimal.replace('.', '')), 1_000_000n);
    expect(exact.equals(shown)).toBe(true);
    const caliper = roundTo(exact, inches(1n, 1000n), 'halfExpand').value; // three places, as on the dial
    expect(roundTo(caliper, inches(1n, 64n), 'halfExpand').value.equals(exact)).toBe(true);
  });
});

describe('3-4-5', () => {
  // Source: Euclid, Elements I.47, from memory; sides 3 and 4 make a diagonal of 5. To square up by it is common
  // practice, no source.
  test.each(tapes)('on a %s tape 3 and 4 feet make 5, exactly', (tape) => {
    const [w, h] = [inches(36n), inches(48n)];
    const square = squareOf(w, h);
    expect(rootSide(square, inches(60n))).toBe(0);
    expect(diagonal(w, h, grainOf(tape)).equals(60n)).toBe(true); // 60 inches is 1524 mm, a mark of every tape
  });
});

describe('a sheet out of square', () => {
  // Source: Voluntary Product Standard PS 1-19, Structural Plywood, effective December 1, 2019, as told second-hand
  // by the makers' association
  // (test.apawood-europe.org/products-trademarks/plywood/concrete-formwork-2/tolerances-4/; date not read):
  // "Squareness: 1/64″ (0.4mm) per nominal foot or 1.3mm per lineal metre of the longest edge: ±1/8″ (±3mm)
  // difference in the diagonal measurement of an 8′ x 4′ (2440 x 1220mm) panel." The push is worked from it: A² - B²
  // = 4 W s, both diagonals near 107 21/64.
  test('the 1/8 that a 4 by 8 sheet may show between its diagonals is a lean of 0.140 over its length', () => {
    const middle = diagonal(inches(48n), inches(96n), inches(1n, 64n));
    const [a, b] = [add(middle, inches(1n, 16n)), subtract(middle, inches(1n, 16n))];
    const found = squareUp({ w: inches(48n), h: inches(96n), a, b }, inches(1n, 64n));
    if (!found.ok) throw new Error(found.error.code);
    expect(writeDecimal(found.value.push)).toBe('0.140');
    expect(found.value).toMatchObject({ long: 'A', agree: true });
    expect(found.value.until.equals(middle)).toBe(true);
  });
});
