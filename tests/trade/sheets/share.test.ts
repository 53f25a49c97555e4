import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { perHold, shareUp } from '../../../src/trade/sheets/share';
import { leastCostQuick } from '../../../src/trade/sheets/two-d/sheet-count-bound';

const whole = (max: number) => fc.integer({ min: 1, max });

describe('shareUp', () => {
  test('is the least whole number not below the share, beyond where floats count exactly', () => {
    fc.assert(
      fc.property(whole(2 ** 40), whole(2 ** 30), whole(2 ** 30), (cost, a, b) => {
        const at = { part: Math.min(a, b), whole: Math.max(a, b) };
        const found = BigInt(shareUp(cost, at));
        const [wanted, one] = [BigInt(cost) * BigInt(at.part), BigInt(at.whole)];
        expect(found * one >= wanted && (found - 1n) * one < wanted).toBe(true);
      }),
    );
  });
});

describe('perHold', () => {
  // neighbours in the row 1, 1, 2, 3, 5 … : crosswise their products differ by one, and no float holds either
  test('tells apart what a float cannot', () => {
    const a = { holds: 701_408_733, cost: 1_134_903_170 };
    const b = { holds: 433_494_437, cost: 701_408_733 };
    expect(a.cost * b.holds - b.cost * a.holds).toBe(0);
    expect([Math.sign(perHold(a, b)), Math.sign(perHold(b, a)), perHold(a, a)]).toEqual([1, -1, 0]);
  });
});

describe('leastCostQuick', () => {
  // 44/5 of 3,000,000,000 is 26,400,000,000; worked in floats it comes out a hair more, or with a margin a dollar less
  test('is the whole cost itself where it is whole', () => {
    const kinds = [
      { holds: 5, count: Number.POSITIVE_INFINITY, cost: 3_000_000_000 },
      { holds: 44, count: 1, cost: 26_400_000_001 },
    ];
    expect(leastCostQuick(kinds, 44)).toBe(26_400_000_000);
  });
});
