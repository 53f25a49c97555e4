import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { stickLowerBound } from '../../../../src/trade/sheets/one-d/bounds';
import { fillSticks } from '../../../../src/trade/sheets/one-d/fill-sticks';
import type { OneD } from '../../../../src/trade/sheets/one-d/kinds';
import { relaxation } from '../../../../src/trade/sheets/one-d/relax';
import { runs } from '../../../runs';
import { fewest, run } from './verify';

// Example 3 of sheets in eighths of an inch, kerf 1/8 added to each part and to the stick.
const parts8c = [
  { size: 482, count: 2 },
  { size: 453, count: 1 },
  { size: 284, count: 2 },
  { size: 137, count: 2 },
];
const stick8c: OneD = { capacity: 769, items: parts8c };
const trimmed8c: OneD = { capacity: 761, items: parts8c };

/** Few pieces, on short and on very long sticks (a grid that takes inches and millimetres). */
const small = fc
  .record({
    capacity: fc.oneof(fc.integer({ min: 5, max: 60 }), fc.integer({ min: 700_000, max: 900_000 })),
    parts: fc.array(
      fc.tuple(fc.double({ min: 0.001, max: 1, noNaN: true }), fc.integer({ min: 0, max: 3 })),
      {
        maxLength: 5,
      },
    ),
  })
  .map(
    ({ capacity, parts }): OneD => ({
      capacity,
      items: parts.map(([share, count]) => ({ size: Math.max(1, Math.floor(share * capacity)), count })),
    }),
  )
  .filter(({ items }) => items.reduce((s, i) => s + i.count, 0) <= 11);

const larger = fc
  .record({
    capacity: fc.integer({ min: 50, max: 400 }),
    parts: fc.array(fc.tuple(fc.integer({ min: 5, max: 50 }), fc.integer({ min: 1, max: 9 })), {
      minLength: 4,
      maxLength: 14,
    }),
  })
  .map(({ capacity, parts }): OneD => ({ capacity, items: parts.map(([size, count]) => ({ size, count })) }));

describe('fillSticks', () => {
  test('Example 3 of sheets takes 3 sticks of 96, which is the bound', () => {
    const { sticks, bound, proved } = run(stick8c, { seed: 1, effort: 50 });
    expect([sticks.length, bound, proved, stickLowerBound(stick8c)]).toEqual([3, 3, true, 3]);
  });

  test('Example 3 of sheets with 1/2 off each end takes 4, though the length alone would say 3', () => {
    const { sticks, bound, proved } = run(trimmed8c, { seed: 1, effort: 50 });
    const sum = parts8c.reduce((s, { size, count }) => s + size * count, 0);
    expect(Math.ceil(sum / trimmed8c.capacity)).toBe(3);
    expect([sticks.length, bound, proved]).toEqual([4, 4, true]);
    expect(fewest(trimmed8c)).toBe(4);
  });

  test('a stick is full to the grid step: one step less makes another stick', () => {
    const items = [{ size: 256, count: 3 }];
    expect(run({ capacity: 768, items }, { seed: 1, effort: 10 }).sticks).toHaveLength(1);
    expect(run({ capacity: 767, items }, { seed: 1, effort: 10 }).sticks).toHaveLength(2);
  });

  test('nothing wanted takes no stick', () => {
    const empty = { sticks: [], bound: 0, proved: true };
    expect(run({ capacity: 5, items: [] }, { seed: 1, effort: 1 })).toEqual(empty);
    expect(run({ capacity: 5, items: [{ size: 2, count: 0 }] }, { seed: 1, effort: 1 })).toEqual(empty);
  });

  test.each([
    [{ capacity: 5, items: [{ size: 6, count: 1 }] }],
    [{ capacity: 5, items: [{ size: 1.5, count: 1 }] }],
    [{ capacity: 5, items: [{ size: 0, count: 1 }] }],
    [{ capacity: 5, items: [{ size: 1, count: -1 }] }],
    [{ capacity: 0, items: [] }],
    [{ capacity: Number.NaN, items: [] }],
  ])('%j is a mistake of the caller', (problem) => {
    expect(() => fillSticks(problem, { seed: 1, effort: 1 }).next()).toThrow(RangeError);
    expect(() => stickLowerBound(problem)).toThrow(RangeError);
    expect(() => relaxation(problem)).toThrow(RangeError);
  });

  test('no effort still gives a plan', () => {
    expect(run(trimmed8c, { seed: 1, effort: 0 }).sticks.length).toBeGreaterThanOrEqual(4);
  });

  test('a few pieces take as few sticks as trying every way finds, and it is proved', () => {
    fc.assert(
      fc.property(small, fc.integer(), (problem, seed) => {
        const { sticks, proved } = run(problem, { seed, effort: 100 });
        expect([sticks.length, proved]).toEqual([fewest(problem), true]);
      }),
      { numRuns: runs(100) },
    );
  });

  test('a plan stands up to a check from outside, and no bound is above it', () => {
    fc.assert(
      fc.property(larger, fc.integer(), (problem, seed) => {
        const { sticks, bound } = run(problem, { seed, effort: 30 });
        expect(stickLowerBound(problem)).toBeLessThanOrEqual(bound);
        expect(bound).toBeLessThanOrEqual(sticks.length);
        expect(relaxation(problem)).toBeLessThanOrEqual(sticks.length + 1e-6);
      }),
      { numRuns: runs(100) },
    );
  });

  test('a job on a grid ten thousand times finer is the same job: no bound of the one is above a plan of the other', () => {
    fc.assert(
      fc.property(larger, fc.integer(), ({ capacity, items }, seed) => {
        const finer = {
          capacity: capacity * 10_007 + 5_000,
          items: items.map((i) => ({ ...i, size: i.size * 10_007 })),
        };
        const coarse = run({ capacity, items }, { seed, effort: 30 });
        const fine = run(finer, { seed, effort: 30 });
        expect(fine.bound).toBeLessThanOrEqual(coarse.sticks.length);
        expect(coarse.bound).toBeLessThanOrEqual(fine.sticks.length);
        expect(Math.abs(relaxation(finer) - relaxation({ capacity, items }))).toBeLessThan(1e-5);
      }),
      { numRuns: runs(60) },
    );
  });

  test('the same seed and effort give the same plan', () => {
    fc.assert(
      fc.property(larger, fc.integer(), (problem, seed) => {
        const filling = { seed, effort: 20 };
        expect(run(problem, filling)).toEqual(run(problem, filling));
      }),
      { numRuns: runs(20) },
    );
  });
});

describe('stickLowerBound', () => {
  test('is never above the fewest sticks there can be', () => {
    fc.assert(
      fc.property(small, (problem) => {
        expect(stickLowerBound(problem)).toBeLessThanOrEqual(fewest(problem));
      }),
      { numRuns: runs(200) },
    );
  });

  test('pieces longer than half a stick need a stick each', () => {
    expect(stickLowerBound({ capacity: 10, items: [{ size: 6, count: 3 }] })).toBe(3);
  });
});

describe('relaxation', () => {
  test('three pieces, two to a stick, take one stick and a half', () => {
    expect(relaxation({ capacity: 10, items: [{ size: 4, count: 3 }] })).toBeCloseTo(1.5, 9);
  });
});
