import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Kinds, kindsOf } from '../../../../src/trade/sheets/one-d/kinds';
import { meterOf } from '../../../../src/trade/sheets/one-d/meter';
import { byPairs, isForPairs } from '../../../../src/trade/sheets/one-d/price-pairs';
import { runs } from '../../../runs';

/** The most any stick is worth, by trying every stick there is. */
function dearest({ sizes, wanted, capacity }: Kinds, prices: Float64Array): number {
  const from = (k: number, room: number): number => {
    if (k === sizes.length) return 0;
    let best = 0;
    for (let n = 0; n <= (wanted[k] ?? 0) && n * (sizes[k] ?? 0) <= room; n += 1)
      best = Math.max(best, n * (prices[k] ?? 0) + from(k + 1, room - n * (sizes[k] ?? 0)));
    return best;
  };
  return from(0, capacity);
}

/** Sticks of four pieces at most: none is as short as a fifth of the stick. */
const four = fc
  .array(
    fc.record({
      size: fc.integer({ min: 2001, max: 10_000 }),
      count: fc.integer({ min: 1, max: 5 }),
      price: fc.nat(1000),
    }),
    { minLength: 2, maxLength: 7 },
  )
  .map((items) => {
    const kinds = kindsOf({ capacity: 10_000, items });
    return { kinds, prices: Float64Array.from(kinds.sizes, (_, k) => items[k]?.price ?? 0) };
  });

describe('byPairs', () => {
  test('finds the dearest stick there is, and no stick that cannot be cut', () => {
    fc.assert(
      fc.property(four, fc.nat(1500), ({ kinds, prices }, scale) => {
        const { stick, others, most } = byPairs(kinds, meterOf(10))(prices, { wanted: kinds.wanted, scale });
        expect(most).toBe(Math.max(scale, dearest(kinds, prices)));
        const worth = (one: readonly number[]) => one.reduce((sum, k) => sum + (prices[k] ?? 0), 0);
        if (most > scale) expect(worth(stick)).toBe(most);
        for (const one of [stick, ...others]) {
          expect(one.reduce((sum, k) => sum + (kinds.sizes[k] ?? 0), 0)).toBeLessThanOrEqual(kinds.capacity);
          for (const k of one)
            expect(one.filter((x) => x === k).length).toBeLessThanOrEqual(kinds.wanted[k] ?? 0);
        }
      }),
      { numRuns: runs(300) },
    );
  });
});

describe('isForPairs', () => {
  const items = [
    { size: 2001, count: 3 },
    { size: 1999, count: 2 },
  ];

  test('five pieces that fill a stick to the step are one too many; a step less of stick, and four are the most', () => {
    // 3 × 2001 + 2 × 1999 = 10,001
    expect(isForPairs(kindsOf({ capacity: 10_001, items }))).toBe(false);
    expect(isForPairs(kindsOf({ capacity: 10_000, items }))).toBe(true);
  });

  test('is refused where a pair and its length do not make one exact number', () => {
    // 5 pieces and 3 that are nothing, 8 × 8 places, a pair of up to 2 × 10,000 × 2^k: below 2^53 for k = 32, for
    // 1,280,000 is below 2^21; above it for k = 36, for 1,280,000 is above 2^20
    const times = (k: number) =>
      kindsOf({ capacity: 10_000 * 2 ** k, items: items.map((i) => ({ ...i, size: i.size * 2 ** k })) });
    expect([isForPairs(times(32)), isForPairs(times(36))]).toEqual([true, false]);
  });
});
