import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Ratio, ratio } from '../../../src/length/length';
import { type Polynomial, polynomial, product } from '../../../src/trade/room/polynomial';
import { neverBelow, oddRoots, rootsWithin } from '../../../src/trade/room/sturm';
import { runs } from '../../runs';

const unit = { from: ratio(0n), to: ratio(1n) };

/** The polynomial with these roots n/d, times a sign. */
const withRoots = (roots: readonly Ratio[], sign = 1n): Polynomial =>
  roots.reduce<Polynomial>((p, r) => product(p, [-(r.s * r.n), r.d]), [sign]);

const tenths = (...list: readonly number[]): Ratio[] => list.map((n) => ratio(BigInt(n), 10n));

describe('rootsWithin', () => {
  test.each([
    [[5], 1],
    [[5, 20], 1],
    [[1, 5, 9], 3],
    [[-3, 12], 0],
    // its ends are not in it
    [[0, 5, 10], 1],
    [[0], 0],
    [[10], 0],
  ])('of tenths %o so many lie between 0 and 1: %i', (roots, want) => {
    expect(rootsWithin(withRoots(tenths(...roots)), unit)).toBe(want);
    expect(rootsWithin(withRoots(tenths(...roots), -1n), unit)).toBe(want);
  });

  test('roots that are no fractions are counted: 2u² = 1 has one, u² + 1 none', () => {
    expect(rootsWithin([-1n, 0n, 2n], unit)).toBe(1);
    expect(rootsWithin([1n, 0n, 1n], unit)).toBe(0);
    expect(rootsWithin([3n], unit)).toBe(0);
  });
});

describe('oddRoots', () => {
  test.each([
    [[3, 3, 7], [7]],
    [
      [3, 3, 3, 7],
      [3, 7],
    ],
    [[3, 3, 3, 3], []],
    [[3], [3]],
  ])('of tenths %o it keeps %o', (roots, want) => {
    const [found, exact] = [oddRoots(withRoots(tenths(...roots))), withRoots(tenths(...want))];
    expect([exact, exact.map((c) => -c)]).toContainEqual(found);
  });
});

describe('neverBelow', () => {
  test.each([
    ['nothing', [], 1n, true],
    ['one it crosses', [5], 1n, false],
    ['one it touches', [5, 5], 1n, true],
    ['one it touches from below', [5, 5], -1n, false],
    ['one it crosses with three at once', [5, 5, 5], 1n, false],
    ['two it touches', [2, 2, 7, 7], 1n, true],
    ['one it touches and one it crosses', [2, 2, 7], 1n, false],
    ['two close by', [5, 6], 1n, false],
    ['one at either end', [0, 10], -1n, true],
    ['one beyond', [12], -1n, true],
    // where samples fall: fifths, as it has four roots
    ['samples at its roots', [2, 4, 6, 8], 1n, false],
    ['touching at every sample but one', [2, 2, 4, 4], 1n, true],
  ])('%s', (_, roots, sign, want) => {
    expect(neverBelow(withRoots(tenths(...roots), sign), unit)).toBe(want);
  });

  test('0 is never below 0', () => expect(neverBelow([], unit)).toBe(true));

  test('roots known beforehand: below 0 just where one of odd count lies within, or the sign between is below', () => {
    const roots = fc.array(fc.integer({ min: -5, max: 15 }), { maxLength: 5 });
    fc.assert(
      fc.property(roots, fc.constantFrom(1n, -1n), (list, sign) => {
        const inside = list.filter((n) => n > 0 && n < 10);
        const odd = inside.some((n) => list.filter((m) => m === n).length % 2 === 1);
        // the sign beside 0 within: a factor (10u - n) is below 0 there when n > 0
        const below = list.filter((n) => n > 0).length % 2 === 1;
        const positive = (sign === 1n) !== below;
        expect(neverBelow(withRoots(tenths(...list), sign), unit)).toBe(!odd && positive);
      }),
      { numRuns: runs(500) },
    );
  });

  test('in two equal corridors it says what squares say: (L + 2w)² <= 8a²', () => {
    const length = fc.bigInt({ min: 1n, max: 6000n }).map((n) => ratio(n, 64n));
    fc.assert(
      fc.property(length, length, length, (a, long, wide) => {
        fc.pre(wide.lte(a) && wide.lte(long));
        const terms = [
          a.sub(wide),
          a.sub(long).mul(2n),
          wide.mul(-2n),
          a.add(long).mul(2n),
          a.add(wide).neg(),
        ].map((x) => x as Ratio);
        const needs = long.add(wide.mul(2n));
        expect(neverBelow(polynomial(terms), unit)).toBe(needs.mul(needs).lte(a.mul(a).mul(8n)));
      }),
      { numRuns: runs(300) },
    );
  });
});
