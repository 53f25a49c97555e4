import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { exactMixed, type Mix, type MixedFound } from '../../../../src/trade/sheets/one-d/mixed';
import { runs } from '../../../runs';

function faults(mix: Mix, { sticks = [], cost }: MixedFound): readonly string[] {
  const said: string[] = [];
  const cut = mix.items.map(() => 0);
  const used = mix.sticks.map(() => 0);
  for (const { kind, items } of sticks) {
    used[kind] = (used[kind] ?? 0) + 1;
    const sum = items.reduce((s, k) => s + (mix.items[k]?.size ?? Number.NaN), 0);
    if (!(sum <= (mix.sticks[kind]?.capacity ?? 0))) said.push(`a stick of ${sum}`);
    for (const k of items) cut[k] = (cut[k] ?? 0) + 1;
  }
  mix.items.forEach(({ count }, k) => {
    if (cut[k] !== count) said.push(`item ${k} cut ${cut[k]} times`);
  });
  mix.sticks.forEach(({ count = 99 }, k) => {
    if ((used[k] ?? 0) > count) said.push(`stick ${k} used too often`);
  });
  if (sticks.reduce((s, { kind }) => s + (mix.sticks[kind]?.cost ?? 0), 0) !== cost) said.push('cost');
  return said;
}

/** The least cost by trying every stick for every set of pieces; sticks listed one by one. */
function least({ sticks, items }: Mix): number {
  const sizes = items.flatMap(({ size, count }) => new Array<number>(count).fill(size));
  const listed = sticks.flatMap(({ count = sizes.length, ...own }) => new Array<typeof own>(count).fill(own));
  let states = new Map<number, number>([[0, 0]]);
  const all = (1 << sizes.length) - 1;
  for (const { capacity, cost } of listed) {
    const next = new Map(states);
    for (const [done, sofar] of states) {
      const free = all & ~done;
      for (let set = free; set > 0; set = (set - 1) & free) {
        let sum = 0;
        for (let p = 0; p < sizes.length; p += 1) if ((set >> p) & 1) sum += sizes[p] ?? 0;
        if (sum > capacity) continue;
        const now = sofar + cost;
        if (now < (next.get(done | set) ?? Number.POSITIVE_INFINITY)) next.set(done | set, now);
      }
    }
    states = next;
  }
  return states.get(all) ?? Number.POSITIVE_INFINITY;
}

const mixes = fc
  .record({
    sticks: fc.array(
      fc.tuple(fc.integer({ min: 8, max: 30 }), fc.integer({ min: 0, max: 3 }), fc.constantFrom(1, 7, 1000)),
      { minLength: 1, maxLength: 3 },
    ),
    items: fc.array(fc.tuple(fc.integer({ min: 2, max: 14 }), fc.integer({ min: 1, max: 3 })), {
      minLength: 1,
      maxLength: 4,
    }),
  })
  .map(
    ({ sticks, items }): Mix => ({
      sticks: sticks.map(([capacity, count, cost]) =>
        count === 0 ? { capacity, cost } : { capacity, cost, count },
      ),
      items: items.map(([size, count]) => ({ size, count })),
    }),
  )
  .filter(({ items }) => items.reduce((s, i) => s + i.count, 0) <= 7);

describe('a few pieces from sticks of several lengths', () => {
  test('Example 7 of sheets: an offcut that costs next to nothing is used up before a stick', () => {
    const mix = {
      sticks: [
        { capacity: 100, cost: 1000 },
        { capacity: 30, cost: 1, count: 1 },
      ],
      items: [
        { size: 30, count: 1 },
        { size: 50, count: 2 },
      ],
    };
    expect(exactMixed(mix)).toMatchObject({ cost: 1001, whole: true });
  });

  test('cost the least that trying every way finds, or have no place', () => {
    fc.assert(
      fc.property(mixes, (mix) => {
        const found = exactMixed(mix);
        expect(found.whole).toBe(true);
        expect(found.cost).toBe(least(mix));
        if (found.sticks) expect(faults(mix, found)).toEqual([]);
      }),
      { numRuns: runs(150) },
    );
  });

  // 44/5 of 3,000,000,000 is 26,400,000,000; worked in floats it comes out a hair more
  test('a plan that costs one less is found where floats could not tell the two apart', () => {
    const mix = {
      sticks: [
        { capacity: 5, cost: 3_000_000_001 },
        { capacity: 5, cost: 3_000_000_000 },
        { capacity: 44, cost: 26_400_000_000 },
      ],
      items: [
        { size: 5, count: 1 },
        { size: 44, count: 1 },
      ],
    };
    expect(exactMixed(mix)).toMatchObject({ cost: 29_400_000_000, whole: true });
  });

  test('costs beyond what adds up exactly are never called looked through', () => {
    const mix = { sticks: [{ capacity: 5, cost: 2 ** 52 }], items: [{ size: 5, count: 3 }] };
    expect(exactMixed(mix)).toMatchObject({ whole: false });
    expect(exactMixed({ sticks: [{ capacity: 5, cost: 0.5 }], items: mix.items })).toMatchObject({
      whole: false,
    });
  });

  test('a plan dearer than the one in hand is not looked for', () => {
    const mix = { sticks: [{ capacity: 10, cost: 5 }], items: [{ size: 6, count: 2 }] };
    expect(exactMixed(mix, 10)).toMatchObject({ sticks: undefined, cost: 10, whole: true });
    expect(exactMixed(mix, 11)).toMatchObject({ cost: 10, whole: true });
  });
});
