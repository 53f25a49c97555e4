import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { add, atMost, equals, inches, subtract, times, zero } from '../../../src/length/length';
import { type GapPiles, revealStackUp, shimSchedule } from '../../../src/trade/fronts/shims';
import { pileFor } from '../../../src/trade/stacks/pile';
import { runs } from '../../runs';
import { l, w } from '../grooves/sample';

const shims = ['1/4', '1/8', '1/16', '1/32'].map((size) => ({ size: l(size), count: 2 }));
const at = { shims, tol: l('.020') };
const even = (gap: string) => ({ left: l(gap), right: l(gap) });

const told = (pile: GapPiles['right']): readonly string[] => {
  if (!pile) return [];
  if (!pile.ok) return [pile.error.code];
  return pile.value.chosen.map((s) => `${s.count} × ${w(s.size)}`);
};

describe('shimSchedule', () => {
  test('Example 4 of stacks: 19/64 takes 1/4 and 1/32, short by 1/64, and one pile does for both sides', () => {
    const [gap] = shimSchedule([even('19/64')], at);
    expect(told(gap?.left)).toEqual(['1 × 1/4', '1 × 1/32']);
    expect(gap?.left.ok && w(gap.left.value.short)).toBe('1/64');
    expect(gap && 'right' in gap).toBe(false);
  });

  test('left and right have piles of their own where they differ', () => {
    const [gap] = shimSchedule([{ left: l('3/32'), right: l('1/16') }], at);
    expect([told(gap?.left), told(gap?.right)]).toEqual([['1 × 1/16', '1 × 1/32'], ['1 × 1/16']]);
  });

  test('each gap draws on the whole drawer: two of 1/16 do for six gaps of 1/8', () => {
    const two = { shims: [{ size: l('1/16'), count: 2 }], tol: l('0') };
    const found = shimSchedule(
      Array.from({ length: 6 }, () => even('1/8')),
      two,
    );
    expect(found.map((g) => g.gap)).toEqual([1, 2, 3, 4, 5, 6]);
    for (const gap of found) expect(told(gap.left)).toEqual(['2 × 1/16']);
  });

  test('one size of gap is searched once, however it was written and at whichever side', () => {
    const found = shimSchedule([even('5/64'), { left: l('1/8'), right: l('10/128') }, even('5/64')], at);
    expect(found[1]?.right).toBe(found[0]?.left);
    expect(found[2]?.left).toBe(found[0]?.left);
  });

  test('a gap that binds has no pile at its own side; the other side and the other gaps have theirs', () => {
    const found = shimSchedule([{ left: l('1/16'), right: l('-1/64') }, even('1/16')], at);
    expect(told(found[0]?.left)).toEqual(['1 × 1/16']);
    expect(told(found[0]?.right)).toEqual(['gap-negative']);
    expect(told(found[1]?.left)).toEqual(['1 × 1/16']);
  });

  test('an empty drawer is said at every gap, and no gaps is no schedule', () => {
    const found = shimSchedule([even('1/16'), even('1/8')], { ...at, shims: [] });
    expect(found.map((g) => told(g.left))).toEqual([['no-pieces'], ['no-pieces']]);
    expect(shimSchedule([], at)).toEqual([]);
  });

  test('every pile is the one its gap would have alone, and never over it', () => {
    const gap = fc.bigInt({ min: 0n, max: 24n }).map((n) => inches(n, 64n));
    const gaps = fc.array(fc.record({ left: gap, right: gap }), { maxLength: 6 });
    fc.assert(
      fc.property(gaps, (all) => {
        shimSchedule(all, at).forEach((found, k) => {
          const { left, right } = all[k] ?? { left: zero, right: zero };
          expect(found.left).toEqual(pileFor(left, shims, at.tol));
          expect(found.right ?? found.left).toEqual(pileFor(right, shims, at.tol));
          expect(found.right === undefined).toBe(equals(left, right));
          expect(found.left.ok && atMost(found.left.value.height, left)).toBe(true);
        });
      }),
      { numRuns: runs(100) },
    );
  });
});

describe('revealStackUp', () => {
  const wanted = l('5/64');
  const off = { fronts: 5, frontTol: l('1/64'), gaps: 5, shimTol: zero, wanted };

  test('five fronts off by 1/64 close a gap of 5/64, or leave twice as much', () => {
    const up = revealStackUp(off);
    expect([w(up.worst), w(up.least), w(up.most)]).toEqual(['5/64', '0', '5/32']);
  });

  test('one front more, and it would bind by 1/64', () => {
    expect(w(revealStackUp({ ...off, fronts: 6, gaps: 6 }).least)).toBe('-1/64');
  });

  test('shims count as fronts do: four off by .003 and four by .004 are likely off by .010 in all', () => {
    // 4 × 3² + 4 × 4² = 100 = 10² thousandths
    const up = revealStackUp({ fronts: 4, frontTol: l('.003'), gaps: 4, shimTol: l('.004'), wanted });
    expect([w(up.worst), w(up.likely)]).toEqual(['7/250', '1/100']);
  });

  test('one front alone is likely off by as much as at worst, though its root would round above it', () => {
    const up = revealStackUp({ ...off, fronts: 1, gaps: 0, frontTol: l('1/32') });
    expect([w(up.worst), w(up.likely)]).toEqual(['1/32', '1/32']);
  });

  test('nothing fitted, nothing off', () => {
    const up = revealStackUp({ ...off, fronts: 0, gaps: 0 });
    expect([w(up.worst), w(up.likely), w(up.least), w(up.most)]).toEqual(['0', '0', '5/64', '5/64']);
  });

  test('worst is the sum of all, likely is never over it, and the gap lies as far either way', () => {
    const tol = fc.bigInt({ min: 0n, max: 64n }).map((n) => inches(n, 2048n));
    const count = fc.integer({ min: 0, max: 8 });
    fc.assert(
      fc.property(count, count, tol, tol, (fronts, gaps, frontTol, shimTol) => {
        const up = revealStackUp({ fronts, gaps, frontTol, shimTol, wanted });
        const all = add(times(frontTol, BigInt(fronts)), times(shimTol, BigInt(gaps)));
        expect(equals(up.worst, all)).toBe(true);
        expect(atMost(up.likely, up.worst)).toBe(true);
        expect(equals(subtract(up.most, wanted), subtract(wanted, up.least))).toBe(true);
        expect(equals(subtract(up.most, wanted), up.worst)).toBe(true);
      }),
      { numRuns: runs(200) },
    );
  });
});
