import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  absolute,
  equals,
  howMany,
  inches,
  isNegative,
  type Length,
  less,
  ratio,
  subtract,
  sum,
} from '../../../src/length/length';
import { alike, fairRound, shareTrim } from '../../../src/trade/fronts/fair';
import { heightsOf, type Share } from '../../../src/trade/fronts/heights';
import { runs } from '../../runs';
import { l, w } from '../grooves/sample';

type At = Parameters<typeof fairRound>[1];

const grain = inches(1n, 32n);
const fine = inches(1n, 64n);
const total = l('28 27/32');
const step: Share = { kind: 'step', step: l('11/16') };
const exact = (share: Share, whole = total) => {
  const made = heightsOf({ total: whole, count: 5, share });
  if (!made.ok) throw new Error(made.error.code);
  return made.value;
};
/** Whole inches are the grain: rounding is seen at a glance. */
const cut = (heights: readonly string[], more: Partial<At> = {}) => {
  const exactly = heights.map(l);
  const made = fairRound(exactly, { total: sum(exactly), grain: inches(1n), ...more });
  return [made.heights.map((x) => w(x)).join(' '), w(made.left)];
};

describe('fairRound', () => {
  test('Example 1 of fronts, step 3 of the carried cabinet: a step of 11/16 at a thirty-second, nothing left', () => {
    const made = fairRound(exact(step), { total, grain });
    expect(made.heights.map((x) => w(x))).toEqual(['4 3/8', '5 1/16', '5 25/32', '6 15/32', '7 5/32']);
    expect(w(made.left)).toBe('0');
  });

  test('Example 2 of fronts: a ratio of 5/4 at a sixty-fourth', () => {
    const made = fairRound(exact({ kind: 'ratio', ratio: ratio(5n, 4n) }), { total, grain: fine });
    expect(made.heights.map((x) => w(x))).toEqual(['3 33/64', '4 25/64', '5 1/2', '6 55/64', '8 37/64']);
    expect(w(sum(made.heights))).toBe('28 27/32');
    expect(w(made.left)).toBe('0');
  });

  test('step 5 of the carried cabinet: from 29 9/32 the total is 28 13/16, cut 4 3/8, 5 1/16, 5 3/4, 6 15/32, 7 5/32, nothing left', () => {
    const whole = subtract(l('29 9/32'), l('15/32'));
    expect(w(whole)).toBe('28 13/16');
    const made = fairRound(exact(step, whole), { total: whole, grain });
    expect(made.heights.map((x) => w(x))).toEqual(['4 3/8', '5 1/16', '5 3/4', '6 15/32', '7 5/32']);
    expect(w(made.left)).toBe('0');
  });

  test('the missing grain goes to the largest remainder, a tie to the lower front', () => {
    expect(cut(['4 3/4', '5 1/8', '6 1/8'])).toEqual(['5 5 6', '0']);
    expect(cut(['4 1/2', '5 1/2'])).toEqual(['4 6', '0']);
    expect(cut(['5 1/2', '4 1/2'])).toEqual(['5 5', '0']);
  });

  test('a total off the grain leaves less than a grain, and no front takes it', () => {
    expect(cut(['4 1/2', '5 1/4'])).toEqual(['4 5', '3/4']);
    expect(cut(['4 3/4', '5 1/2'])).toEqual(['5 5', '1/4']);
  });

  test('given heights stand off the grain, the others share what they leave', () => {
    expect(cut(['4 1/3', '5 1/3', '6 1/3'], { given: [false, true, false] })).toEqual(['4 5 1/3 6', '2/3']);
    expect(cut(['4 1/2', '5 1/3', '6 1/2'], { given: [false, true, false] })).toEqual(['4 5 1/3 7', '0']);
  });

  test('all given, all stand, and what is over is left whatever it is', () => {
    expect(cut(['4 1/3', '5 1/3'], { total: l('12'), given: [true, true] })).toEqual([
      '4 1/3 5 1/3',
      '2 1/3',
    ]);
  });

  test('one that would fall under its least has the missing grain before a larger remainder', () => {
    expect(cut(['4 1/4', '5 3/4'])).toEqual(['4 6', '0']);
    expect(cut(['4 1/4', '5 3/4'], { least: [l('4 1/4')] })).toEqual(['5 5', '0']);
    expect(cut(['4 1/4', '5 3/4'], { least: [l('4')] })).toEqual(['4 6', '0']);
  });

  test('when the missing grains do not reach, a front with one to spare over its least gives it', () => {
    const least = [l('4 1/2'), l('4 1/2')];
    expect(cut(['4 1/2', '4 1/2', '9'])).toEqual(['4 5 9', '0']);
    expect(cut(['4 1/2', '4 1/2', '9'], { least })).toEqual(['5 5 8', '0']);
    expect(cut(['4 1/2', '4 1/2', '9'], { least: [...least, l('8')] })).toEqual(['5 5 8', '0']);
  });

  test('with none to spare, the lower of two falls no farther under its least than rounding takes it', () => {
    const least = [l('4 1/2'), l('4 1/2')];
    expect(cut(['4 1/2', '4 1/2', '9'], { least: [...least, l('8 1/4')] })).toEqual(['4 5 9', '0']);
    expect(cut(['4 1/2', '4 1/2', '9'], { least, given: [false, false, true] })).toEqual(['4 5 9', '0']);
  });

  test('the one farthest under its least is lifted first, of two alike the lower', () => {
    const least = [l('4 1/2'), l('4 1/2'), l('4 1/2'), l('8')];
    expect(cut(['4 1/2', '4 1/2', '4 1/2', '9'], { least })).toEqual(['4 5 5 8', '1/2']);
    const sooner = [l('4 1/2'), l('4 1/4'), l('4 1/2'), l('8')];
    expect(cut(['4 1/2', '4 1/2', '4 1/2', '9'], { least: sooner })).toEqual(['5 4 5 8', '1/2']);
  });

  test('no front gives the last grain it has', () => {
    const least = [undefined, l('4 1/2'), l('4 1/2')];
    expect(cut(['1', '4 1/2', '4 1/2'], { least })).toEqual(['1 4 5', '0']);
    expect(cut(['2', '4 1/2', '4 1/2'], { least })).toEqual(['1 5 5', '0']);
  });

  test('the grain is given by the front that rounding favoured most', () => {
    const least = [l('4 1/4'), l('4 1/4')];
    // Rounded down 4 4 6 9, one grain missing, two to lift: both of the others lost 1/4, so the upper gives.
    expect(cut(['4 1/4', '4 1/4', '6 1/4', '9 1/4'], { least })).toEqual(['5 5 5 9', '0']);
    expect(cut(['4 1/4', '4 1/4', '6 3/8', '9 1/8'], { least })).toEqual(['5 5 6 8', '0']);
  });

  test('a grain of nothing is a mistake in the program', () => {
    expect(() => fairRound([l('4')], { total: l('4'), grain: l('0') })).toThrow(RangeError);
  });
});

describe('alike', () => {
  test('Example 2 of fronts: at a thirty-second 5 3/4 each, 3/32 left', () => {
    const { each, left } = alike(total, 5, grain);
    expect([w(each), w(left)]).toEqual(['5 3/4', '3/32']);
  });

  test('what goes up exactly leaves nothing; one front is rounded down too', () => {
    const one = alike(l('9 1/64'), 1, grain);
    expect([w(alike(l('9'), 3, grain).left), w(one.each), w(one.left)]).toEqual(['0', '9', '1/64']);
  });
});

describe('shareTrim', () => {
  test('step 8 of the carried cabinet: 5/64 off two fronts is 1/32 and 3/64, the larger off the lower', () => {
    expect(shareTrim(l('5/64'), 2, fine).map((x) => w(x))).toEqual(['1/32', '3/64']);
  });

  test('what goes up in equal parts is shared in equal parts', () => {
    expect(shareTrim(l('3/32'), 2, fine).map((x) => w(x))).toEqual(['3/64', '3/64']);
  });

  test('a total between two grains is rounded up; nothing to take is nothing each', () => {
    expect(shareTrim(l('1/128'), 3, fine).map((x) => w(x))).toEqual(['0', '0', '1/64']);
    expect(shareTrim(l('0'), 2, fine).map((x) => w(x))).toEqual(['0', '0']);
  });

  test('a trim that adds, or no front to give, is a mistake in the program', () => {
    expect(() => shareTrim(l('-1/64'), 2, fine)).toThrow(RangeError);
    expect(() => shareTrim(l('1/64'), 0, fine)).toThrow(RangeError);
  });

  test('never takes less than is asked, nor a grain more, and no two shares are a grain apart or more than one', () => {
    fc.assert(
      fc.property(fc.bigInt({ min: 0n, max: 900n }), fc.integer({ min: 1, max: 9 }), (n, count) => {
        const trim = inches(n, 97n);
        const shares = shareTrim(trim, count, fine);
        const more = subtract(sum(shares), trim);
        expect(isNegative(more)).toBe(false);
        expect(less(more, fine)).toBe(true);
        shares.forEach((x, k) => {
          const below = shares[k + 1] ?? x;
          expect(['0', '1/64']).toContain(w(subtract(below, x)));
        });
        expect(less(fine, subtract(shares.at(-1) ?? trim, shares[0] ?? trim))).toBe(false);
      }),
      { numRuns: runs(200) },
    );
  });
});

const grains = fc.constantFrom(inches(1n, 16n), grain, fine, inches(5n, 127n));
const odd = fc
  .tuple(fc.bigInt({ min: 100n, max: 900n }), fc.constantFrom(64n, 97n, 160n))
  .map(([n, d]) => inches(n, d));
const column = fc.array(fc.record({ high: odd, given: fc.boolean() }), { minLength: 1, maxLength: 8 });

describe('rounded together', () => {
  test('the sum is exact, what is left is under a grain, nobody is off by a grain, given ones stand', () => {
    fc.assert(
      fc.property(column, grains, (fronts, g) => {
        const heights = fronts.map((f) => f.high);
        const whole = sum(heights);
        const made = fairRound(heights, { total: whole, grain: g, given: fronts.map((f) => f.given) });
        expect(equals(sum([...made.heights, made.left]), whole)).toBe(true);
        expect(isNegative(made.left) || !less(made.left, g)).toBe(false);
        made.heights.forEach((h, k) => {
          const was = heights[k] ?? h;
          expect(less(absolute(subtract(h, was)), g)).toBe(true);
          expect(fronts[k]?.given ? equals(h, was) : howMany(h, g).d === 1n).toBe(true);
        });
      }),
      { numRuns: runs(200) },
    );
  });

  test('the order of heights is kept: a lower one never falls behind, of two alike the lower may have one grain more', () => {
    fc.assert(
      fc.property(column, grains, (fronts, g) => {
        const heights = fronts.map((f) => f.high);
        const made = fairRound(heights, { total: sum(heights), grain: g }).heights;
        heights.forEach((a, i) => {
          heights.forEach((b, j) => {
            const apart = subtract(made[j] ?? b, made[i] ?? a);
            if (less(a, b) || (equals(a, b) && i < j)) expect(isNegative(apart)).toBe(false);
            if (equals(a, b)) expect(less(g, apart)).toBe(false);
          });
        });
      }),
      { numRuns: runs(200) },
    );
  });

  const mostUnder = (heights: readonly Length[], least: readonly (Length | undefined)[]) =>
    heights.flatMap((h, k) => (least[k] && less(h, least[k]) ? [k] : []));

  test('no least is undercut while another front has a grain to spare, and the sum is exact still', () => {
    let lifted = 0;
    const asked = fc.array(fc.record({ high: odd, room: fc.option(fc.bigInt({ min: 0n, max: 40n })) }), {
      minLength: 2,
      maxLength: 6,
    });
    fc.assert(
      fc.property(asked, grains, (fronts, g) => {
        const heights = fronts.map((f) => f.high);
        const least = fronts.map((f) =>
          f.room === null ? undefined : subtract(f.high, inches(f.room, 256n)),
        );
        const whole = sum(heights);
        const made = fairRound(heights, { total: whole, grain: g, least });
        expect(equals(sum([...made.heights, made.left]), whole)).toBe(true);
        expect(isNegative(made.left) || !less(made.left, g)).toBe(false);
        if (mostUnder(fairRound(heights, { total: whole, grain: g }).heights, least).length > 0) lifted += 1;
        if (mostUnder(made.heights, least).length === 0) return;
        made.heights.forEach((h, k) => {
          const wanted = least[k];
          expect(wanted && less(subtract(h, g), wanted)).toBe(true);
        });
      }),
      { numRuns: runs(200) },
    );
    expect(lifted).toBeGreaterThan(runs(200) / 10);
  });
});
