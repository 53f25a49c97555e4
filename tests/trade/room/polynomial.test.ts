import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { ratio } from '../../../src/length/length';
import {
  common,
  derivative,
  divided,
  type Polynomial,
  polynomial,
  product,
  signAt,
} from '../../../src/trade/room/polynomial';
import { runs } from '../../runs';

const coefficients = fc.array(fc.bigInt({ min: -20n, max: 20n }), { minLength: 1, maxLength: 5 });
const some = coefficients.map((c) => polynomial(c.map((n) => ratio(n)))).filter((p) => p.length > 0);

/** The same but for a factor above 0. */
const alike = (p: Polynomial, q: Polynomial): boolean => {
  const [a, b] = [p[p.length - 1] ?? 0n, q[q.length - 1] ?? 0n];
  return p.length === q.length && a * b > 0n && p.every((c, k) => c * b === (q[k] ?? 0n) * a);
};

describe('polynomial', () => {
  test('exact coefficients become whole, in lowest terms, noughts at the top left out', () => {
    // times 6: 3, 2, 0
    expect(polynomial([ratio(1n, 2n), ratio(1n, 3n), ratio(0n)])).toEqual([3n, 2n]);
    expect(polynomial([ratio(-4n), ratio(6n)])).toEqual([-2n, 3n]);
    expect(polynomial([ratio(0n), ratio(0n)])).toEqual([]);
  });
});

describe('signAt', () => {
  // 2u² - u - 1 = (2u + 1)(u - 1)
  test.each([
    [-1n, 2n, 0],
    [1n, 1n, 0],
    [0n, 1n, -1],
    [2n, 1n, 1],
    [-2n, 1n, 1],
    [99n, 100n, -1],
  ])('of 2u² - u - 1 at %s/%s is %i', (n, d, want) => {
    expect(signAt([-1n, -1n, 2n], ratio(n, d))).toBe(want);
  });

  test('of nothing it is 0', () => expect(signAt([], ratio(3n))).toBe(0));
});

describe('derivative, product, divided and common', () => {
  test('worked by hand', () => {
    // (u³ - 3u)' = 3u² - 3, in lowest terms u² - 1
    expect(derivative([0n, -3n, 0n, 1n])).toEqual([-1n, 0n, 1n]);
    // (u + 1)(u - 2) = u² - u - 2
    expect(product([1n, 1n], [-2n, 1n])).toEqual([-2n, -1n, 1n]);
    // u² + 1 = (u - 1)(u + 1) + 2; in lowest terms the rest is 1
    expect(divided([1n, 0n, 1n], [1n, 1n])).toEqual({ quotient: [-1n, 1n], rest: [1n] });
    // by one turned round no sign turns: u² + 1 = (-u - 1)(1 - u) + 2
    expect(divided([1n, 0n, 1n], [-1n, -1n])).toEqual({ quotient: [1n, -1n], rest: [1n] });
    expect(divided([1n], [1n, 1n])).toEqual({ quotient: [], rest: [1n] });
    // (u - 1)(u - 2) and (u - 1)(u + 5)
    expect(common([2n, -3n, 1n], [-5n, 4n, 1n])).toEqual([-1n, 1n]);
    expect(common([], [])).toEqual([]);
  });

  test('nothing is divided by 0', () => expect(() => divided([1n], [])).toThrow(RangeError));

  test('a product divides by its factor without a rest, and has it in common', () => {
    fc.assert(
      fc.property(some, some, (p, q) => {
        const both = product(p, q);
        const { quotient, rest } = divided(both, q);
        expect(rest).toEqual([]);
        expect(alike(quotient, p)).toBe(true);
        expect(divided(common(both, q), q).rest).toEqual([]);
      }),
      { numRuns: runs(200) },
    );
  });

  test('what two have in common divides both', () => {
    fc.assert(
      fc.property(some, some, some, (p, q, r) => {
        const [a, b] = [product(p, r), product(q, r)];
        const found = common(a, b);
        expect([divided(a, found).rest, divided(b, found).rest, divided(found, r).rest]).toEqual([
          [],
          [],
          [],
        ]);
      }),
      { numRuns: runs(200) },
    );
  });
});
