import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  absolute,
  add,
  atMost,
  equals,
  inches,
  isZero,
  type Length,
  less,
  subtract,
  sum,
  times,
  zero,
} from '../../../src/length/length';
import { dumpedAtEnd, planedLast, type Skew, skewOf, skewWarnings } from '../../../src/trade/fronts/skew';
import { runs } from '../../runs';
import { l, w } from '../grooves/sample';

const wanted = l('5/64');
const heights = ['4 3/8', '5 1/16', '5 3/4', '6 15/32', '7 5/32'].map(l);
const skew = { left: l('29 5/16'), right: l('29 3/16'), heights };

describe('skewOf', () => {
  test('Example 5 of fronts: gaps 1/12 and 1/16 over six, taper 1/48', () => {
    expect(w(sum(heights))).toBe('28 13/16');
    const found = skewOf(skew);
    expect([w(found?.gapLeft), w(found?.gapRight), w(found?.taper)]).toEqual(['1/12', '1/16', '1/48']);
    expect(found?.gaps).toBe(6);
  });

  test('step 5 of the carried cabinet: 29 11/32 and 29 9/32 differ by 1/96 a gap, which is not seen', () => {
    const found = skewOf({ ...skew, left: l('29 11/32'), right: l('29 9/32') });
    expect([w(found?.gapLeft), w(found?.gapRight), w(found?.taper)]).toEqual(['17/192', '5/64', '1/96']);
    expect(found && skewWarnings(found)).toEqual([]);
  });

  test('with the ends held only the gaps between share', () => {
    const ends = { top: l('-1/2'), bottom: l('-1/2') };
    const found = skewOf({ left: l('28'), right: l('28 1/8'), heights: heights.slice(0, 2), ends });
    expect([found?.gaps, w(found?.gapLeft), w(found?.taper)]).toEqual([1, '19 9/16', '1/8']);
  });

  test('one front with both ends held has no gap to share; inset it has two', () => {
    const one = { left: l('6 1/8'), right: l('6 1/4'), heights: [l('6')] };
    expect(skewOf({ ...one, ends: { top: wanted, bottom: wanted } })).toBeUndefined();
    const found = skewOf(one);
    expect([found?.gaps, w(found?.gapLeft), w(found?.taper)]).toEqual([2, '1/16', '1/16']);
  });

  test('fronts higher than the opening leave gaps less than nothing at both sides', () => {
    const found = skewOf({ ...skew, left: l('28 3/4'), right: l('28 5/8') });
    expect([w(found?.gapLeft), w(found?.gapRight)]).toEqual(['-1/96', '-1/32']);
  });
});

describe('dumpedAtEnd', () => {
  const dumped = (more: Partial<Skew> = {}) => {
    const { left, right } = dumpedAtEnd({ ...skew, ...more }, wanted);
    return [w(left), w(right)];
  };

  test('Example 5 of fronts: 7/64 is left at the bottom on the left, and on the right it binds by 1/64', () => {
    expect(dumped()).toEqual(['7/64', '-1/64']);
  });

  test('a held end at the top stands as held: covering 1/2 there leaves so much more for the last gap', () => {
    expect(dumped({ ends: { top: l('-1/2'), bottom: l('-1/2') } })).toEqual(['11/16', '9/16']);
  });

  test('one front has its own end gap alone', () => {
    expect(dumped({ left: l('6'), right: l('6 1/8'), heights: [l('5 3/4')] })).toEqual(['11/64', '19/64']);
  });
});

describe('planedLast', () => {
  const planed = (cut: boolean, more: Partial<Skew> = {}) => {
    const { left, right, plane } = planedLast({ ...skew, ...more }, { wanted, cut });
    return [w(left), w(right), w(plane)];
  };

  // Example 5: the four above take 21 21/32 and five gaps of 5/64; 29 5/16 less 22 3/64 less 5/64 is 7 3/16
  test('Example 5 of fronts: not cut yet it is ripped to 7 3/16 and planed to 7 1/16 at the right', () => {
    expect(planed(false)).toEqual(['7 3/16', '7 1/16', '1/8']);
  });

  test('Example 5 of fronts: cut to 7 5/32, 3/32 comes off at the right, nothing at the left', () => {
    expect(planed(true)).toEqual(['7 5/32', '7 1/16', '3/32']);
  });

  // four fronts of 7 1/4 with five gaps of 3/32 fill 29 15/32 at the right; the left has a sixteenth more
  test('shared out of the lesser side, the last is as much higher at the other as the opening is', () => {
    const four = ['7 1/4', '7 1/4', '7 1/4', '7 1/4'].map(l);
    const at = { left: l('29 17/32'), right: l('29 15/32'), heights: four };
    const { left, right } = planedLast(at, { wanted: l('3/32'), cut: false });
    expect([w(left), w(right)]).toEqual(['7 5/16', '7 1/4']);
  });

  test('short of room at both sides it is planed at both, and stays a taper', () => {
    expect(planed(true, { left: l('29 7/32') })).toEqual(['7 3/32', '7 1/16', '3/32']);
  });

  test('cut, with room to spare at both sides: nothing comes off and nothing is added', () => {
    expect(planed(true, { left: l('29 1/2'), right: l('29 3/8') })).toEqual(['7 5/32', '7 5/32', '0']);
  });

  test('a held end is followed as it is held: covering 1/2, the front goes on past the opening', () => {
    const ends = { top: wanted, bottom: l('-1/2') };
    const held = { ends, left: l('28 3/4'), right: l('28 5/8') };
    expect(planed(true, held)).toEqual(['7 5/32', '7 5/64', '5/64']);
    expect(planed(false, held)).toEqual(['7 13/64', '7 5/64', '1/8']);
  });
});

describe('skewWarnings', () => {
  const said = (gapLeft: string, gapRight: string) => {
    const taper = absolute(subtract(l(gapLeft), l(gapRight)));
    return skewWarnings({ gapLeft: l(gapLeft), gapRight: l(gapRight), taper, gaps: 3 });
  };

  test('a taper of just 1/32 and a gap of just 1/32 are well', () => {
    expect(said('1/32', '1/16')).toEqual([]);
  });

  test('Example 5 of fronts is well: 1/48 a gap is not seen, and no gap closes', () => {
    const found = skewOf(skew);
    expect(found && skewWarnings(found)).toEqual([]);
  });

  test('a hair over shows, a hair under closes, at the side it is at', () => {
    expect(said('65/1024', '97/1024')).toEqual([]);
    expect(said('64/1024', '97/1024').map((x) => x.code)).toEqual(['taper-seen']);
    const [closes, ...rest] = said('40/1024', '31/1024');
    expect(closes?.code === 'gap-closes' && [closes.side, w(closes.gap), w(closes.least)]).toEqual([
      'right',
      '31/1024',
      '1/32',
    ]);
    expect(rest).toEqual([]);
  });

  test('gaps that close at both sides are both named, after the taper', () => {
    const codes = said('1/64', '-1/32').map((x) => (x.code === 'gap-closes' ? x.side : x.code));
    expect(codes).toEqual(['taper-seen', 'left', 'right']);
  });
});

describe('fronts in an opening out of square', () => {
  const sixtyFourths = (min: bigint, max: bigint) => fc.bigInt({ min, max }).map((n) => inches(n, 64n));
  const end = sixtyFourths(-48n, 48n);
  const skews = fc
    .record({
      left: sixtyFourths(600n, 2000n),
      by: sixtyFourths(-32n, 32n),
      heights: fc.array(sixtyFourths(100n, 400n), { minLength: 1, maxLength: 6 }),
      ends: fc.option(fc.record({ top: end, bottom: end }), { nil: undefined }),
    })
    .map(({ left, by, ends, ...rest }): Skew => {
      const right = add(left, by);
      return ends ? { left, right, ends, ...rest } : { left, right, ...rest };
    });
  const turned = (s: Skew): Skew => ({ ...s, left: s.right, right: s.left });
  const holds = (claim: (s: Skew) => void) => fc.assert(fc.property(skews, claim), { numRuns: runs(200) });

  test('gaps, fronts and held ends add back to the opening at either side', () => {
    holds((s) => {
      const found = skewOf(s);
      if (!found) return;
      const all = (gap: Length) =>
        sum([times(gap, BigInt(found.gaps)), ...s.heights, s.ends?.top ?? zero, s.ends?.bottom ?? zero]);
      expect(equals(all(found.gapLeft), s.left)).toBe(true);
      expect(equals(all(found.gapRight), s.right)).toBe(true);
      const out = absolute(subtract(s.left, s.right));
      expect(equals(times(found.taper, BigInt(found.gaps)), out)).toBe(true);
    });
  });

  test('all of what it is out of square comes in the last gap when the others are as wanted', () => {
    holds((s) => {
      const { left, right } = dumpedAtEnd(s, wanted);
      expect(equals(subtract(left, right), subtract(s.left, s.right))).toBe(true);
    });
  });

  test('with the even gap as the one wanted, the last gap is that gap, or the end as held', () => {
    holds((s) => {
      const found = skewOf(s);
      if (!found) return;
      const last = dumpedAtEnd(s, found.gapLeft).left;
      expect(equals(last, s.ends?.bottom ?? found.gapLeft)).toBe(true);
    });
  });

  test('cut to follow the opening, the end gap is as wanted at both sides, and the front out by what it is', () => {
    holds((s) => {
      const high = s.heights[s.heights.length - 1] ?? zero;
      const [before, after] = [dumpedAtEnd(s, wanted), planedLast(s, { wanted, cut: false })];
      for (const side of ['left', 'right'] as const)
        expect(equals(add(before[side], subtract(high, after[side])), s.ends?.bottom ?? wanted)).toBe(true);
      expect(equals(subtract(after.left, after.right), subtract(s.left, s.right))).toBe(true);
      expect(equals(after.plane, absolute(subtract(s.left, s.right)))).toBe(true);
    });
  });

  test('one already cut is never taller, and its end gap is as wanted wherever anything came off', () => {
    holds((s) => {
      const high = s.heights[s.heights.length - 1] ?? zero;
      const [before, after] = [dumpedAtEnd(s, wanted), planedLast(s, { wanted, cut: true })];
      const asked = s.ends?.bottom ?? wanted;
      for (const side of ['left', 'right'] as const) {
        const off = subtract(high, after[side]);
        expect(less(off, zero)).toBe(false);
        expect(atMost(off, after.plane)).toBe(true);
        const gap = add(before[side], off);
        expect(isZero(off) ? atMost(asked, gap) : equals(gap, asked)).toBe(true);
      }
    });
  });

  test('left and right changed about, so is everything told of them', () => {
    holds((s) => {
      const [one, other] = [skewOf(s), skewOf(turned(s))];
      expect([w(one?.gapLeft), w(one?.gapRight), w(one?.taper)]).toEqual([
        w(other?.gapRight),
        w(other?.gapLeft),
        w(other?.taper),
      ]);
      const planed = (cut: boolean) => (x: Skew) => planedLast(x, { wanted, cut });
      for (const told of [(x: Skew) => dumpedAtEnd(x, wanted), planed(true), planed(false)]) {
        const [a, b] = [told(s), told(turned(s))];
        expect([w(a.left), w(a.right)]).toEqual([w(b.right), w(b.left)]);
      }
    });
  });
});
