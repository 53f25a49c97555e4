import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { add, inches, isZero, subtract, times, zero } from '../../../src/length/length';
import {
  driftOf,
  rockOf,
  rockOver,
  safeLength,
  tooShort,
  turnedOff,
} from '../../../src/trade/shelves/template';
import { l } from '../../length/write-figures';
import { runs } from '../../runs';

const odd = (least: number, most: number) =>
  fc
    .tuple(fc.integer({ min: least * 64, max: most * 64 }), fc.constantFrom(64n, 127n))
    .map(([n, d]) => inches(BigInt(n), d));
const anyTemplate = fc.record({
  first: odd(1, 5),
  pitch: odd(1, 3),
  holes: fc.integer({ min: 1, max: 40 }),
  past: odd(1, 5),
});

describe('a template turned end for end', () => {
  test('lies with every hole off by one and the same, as it lies in coordinates', () => {
    fc.assert(
      fc.property(anyTemplate, ({ first, pitch, holes, past }) => {
        const ups = Array.from({ length: holes }, (_, k) => add(first, times(pitch, BigInt(k))));
        const long = add(ups[ups.length - 1] ?? zero, past);
        // its other end is down now: what was the last hole is the first
        const turned = ups.map((up) => subtract(long, up)).reverse();
        const off = turnedOff({ long, first, pitch, holes });
        expect(turned.every((up, k) => isZero(subtract(subtract(up, ups[k] ?? zero), off)))).toBe(true);
      }),
      { numRuns: runs(200) },
    );
  });

  test('agrees just where it is as long as is safe', () => {
    fc.assert(
      fc.property(anyTemplate, ({ first, pitch, holes, past }) => {
        const safe = safeLength({ first, pitch, holes });
        expect(isZero(turnedOff({ long: safe, first, pitch, holes }))).toBe(true);
        expect(isZero(turnedOff({ long: add(safe, past), first, pitch, holes }))).toBe(false);
      }),
      { numRuns: runs(100) },
    );
  });

  test('is too short where its last hole does not go in whole', () => {
    // 1 + 2 × 2 + 1/8 = 5 1/8
    const of = { first: l('1'), pitch: l('2'), holes: 3 };
    expect(tooShort({ ...of, long: l('5') }, l('1/4'))).toEqual(l('1/8'));
    expect(tooShort({ ...of, long: l('5 1/8') }, l('1/4'))).toEqual(zero);
  });
});

describe('driftOf', () => {
  const at = { error: l('.001'), play: l('.003'), grain: l('1/32') };
  test.each([
    // as many holes as the row has, or more: nothing is pinned again
    [35, 35, 0],
    [35, 40, 0],
    // the last hole is the first of the next: of 12, 11 new ones each time; 24 left are 3 times
    [35, 12, 3],
    [34, 12, 2],
    [3, 2, 1],
    // one hole: pinned again for each but the first
    [35, 1, 34],
  ])('%s holes off a template of %s: %s hops', (holes, template, hops) => {
    const found = driftOf({ holes, template, ...at });
    expect(found.hops).toBe(hops);
    expect(found.stepped).toEqual(add(times(at.error, BigInt(holes - 1)), times(at.play, BigInt(hops))));
  });

  test('a template of one hole is pinned hole by hole', () => {
    const one = driftOf({ holes: 35, template: 1, ...at });
    expect(one.stepped).toEqual(one.byHole);
  });
});

describe('rockOf', () => {
  test('four pins in one plane do not rock, however it leans', () => {
    // 12, 12 1/8 to the right, 12 1/4 to the back, 12 3/8 both
    const plane = {
      frontLeft: l('12'),
      frontRight: l('12 1/8'),
      backLeft: l('12 1/4'),
      backRight: l('12 3/8'),
    };
    expect(rockOf(plane)).toEqual(zero);
  });

  test('it is told from over 1/32', () => {
    expect(rockOver(l('1/32'))).toEqual(zero);
    expect(rockOver(l('3/64'))).toEqual(l('1/64'));
    expect([rockOver(l('0.8 mm'), 'mm'), rockOver(l('1 mm'), 'mm')]).toEqual([zero, l('0.2 mm')]);
  });
});
