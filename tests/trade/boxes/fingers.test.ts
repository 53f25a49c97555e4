import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  add,
  atMost,
  equals,
  half,
  inches,
  isZero,
  type Length,
  less,
  over,
  subtract,
  sum,
  times,
  zero,
} from '../../../src/length/length';
import {
  type Fingers,
  fingerFit,
  fingersOf,
  grooveAmong,
  heightFor,
  leastFor,
  mostFingers,
  type Span,
} from '../../../src/trade/boxes/fingers';
import { runs } from '../../runs';
import { l } from '../grooves/sample';

const long = ({ near, far }: Span): Length => subtract(far, near);

const made = fc
  .record({
    wide: fc.integer({ min: 100, max: 800 }).map((n) => inches(BigInt(n), 1000n)),
    thousandths: fc.integer({ min: 0, max: 12_000 }),
    how: fc.constantFrom('full', 'any', 'equal' as const),
  })
  .map(({ wide, thousandths, how }) => {
    const height = add(leastFor(wide), inches(BigInt(thousandths), 1000n));
    return { height, at: { height, wide, how } };
  });

/** Fingers and slots from the lower edge up, each beginning where the last one ended. */
const upward = ({ fingers, slots }: Fingers): readonly Span[] =>
  [...fingers, ...slots].sort((a, b) => a.near.compare(b.near));

describe('fingers of any height and cutter', () => {
  test('a side and its front fill each other, and together the whole height: no gap, no overlap', () => {
    fc.assert(
      fc.property(made, ({ at }) => {
        const laid = fingersOf(at);
        const all = upward(laid);
        expect(isZero(all[0]?.near ?? l('1'))).toBe(true);
        for (const [k, span] of all.entries()) {
          expect(equals(span.far, all[k + 1]?.near ?? laid.height)).toBe(true);
          expect(less(zero, long(span))).toBe(true);
          // what is a finger of the side is a slot of the front, turn about from the lower edge
          expect(laid.fingers.includes(span)).toBe(k % 2 === 0);
        }
        expect(equals(sum(all.map(long)), laid.height)).toBe(true);
        expect(equals(add(laid.height, laid.trim), at.height)).toBe(true);
      }),
      { numRuns: runs(200) },
    );
  });

  test('each is as wide as the cutter; equal ends are half a finger to one and a half', () => {
    fc.assert(
      fc.property(made, ({ at }) => {
        const laid = fingersOf(at);
        const all = upward(laid);
        const inner = at.how === 'equal' ? all.slice(1, -1) : all;
        expect(inner.every((span) => equals(long(span), at.wide))).toBe(true);
        expect(inner.length).toBe(laid.divisions);
        expect(equals(all[0]?.far ?? zero, laid.end)).toBe(true);
        if (at.how === 'equal') {
          const last = all[all.length - 1];
          expect(last && equals(long(last), laid.end)).toBe(true);
          expect([atMost(half(at.wide), laid.end), less(laid.end, over(times(at.wide, 3n), 2n))]).toEqual([
            true,
            true,
          ]);
          expect(isZero(laid.trim)).toBe(true);
        }
      }),
      { numRuns: runs(200) },
    );
  });

  test('as few comes off as may: one finger more, or two with a finger at both edges, would not go in', () => {
    fc.assert(
      fc.property(made, ({ height, at }) => {
        if (at.how === 'equal') return;
        const cut = heightFor(height, at);
        const next = add(cut, times(at.wide, at.how === 'full' ? 2n : 1n));
        expect([atMost(cut, height), less(height, next)]).toEqual([true, true]);
        // once cut to it, nothing comes off any more
        expect(equals(heightFor(cut, at), cut)).toBe(true);
      }),
      { numRuns: runs(200) },
    );
  });

  test('a groove lies in a finger of the side at each place that is named for it', () => {
    fc.assert(
      fc.property(made, fc.integer({ min: 1, max: 999 }), ({ at }, part) => {
        const laid = fingersOf(at);
        const wide = over(at.wide, 2n);
        const up = times(subtract(laid.height, wide), inches(BigInt(part), 1000n) as never);
        const { lower, higher } = grooveAmong(laid, { up, wide });
        for (const place of [lower, higher])
          if (place) expect(grooveAmong(laid, { up: place, wide }).in).toBe('side');
        expect([!lower || less(lower, up), !higher || less(up, higher)]).toEqual([true, true]);
      }),
      { numRuns: runs(200) },
    );
  });
});

test('three fingers are the least, two hundred the most', () => {
  expect(equals(leastFor(l('3/8')), l('1 1/8'))).toBe(true);
  // 200 of 1/64 are 3 1/8: 1/64 more is one more
  expect([mostFingers(l('3 1/8'), l('1/64')), mostFingers(l('3 9/64'), l('1/64'))]).toEqual([undefined, 200]);
});

test('a pin that stands right is left: two cutters less the play', () => {
  // 2 × .502 − .003 = 1.001
  const fit = fingerFit({ wide: l('.502'), step: l('1.001'), play: l('.003') });
  expect([isZero(fit.move), equals(fit.loose, l('.003'))]).toEqual([true, true]);
});
