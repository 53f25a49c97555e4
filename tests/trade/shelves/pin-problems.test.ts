import { describe, expect, test } from 'vitest';
import { type Case, type Inside, newCase } from '../../../src/trade/carcass/case';
import { sizesOf } from '../../../src/trade/carcass/sizes';
import { pinProblems, pinWarnings } from '../../../src/trade/shelves/pin-problems';
import { l } from '../../length/write-figures';

const sheet = { id: 'a', name: 'A', thickness: l('23/32'), measured: true };
const base: Case = {
  ...newCase('c'),
  hold: 'openings',
  opening: l('20'),
  clear: l('40'),
  depth: l('18'),
  partitions: 1,
  stocks: { side: 'a' },
};
const pins = (own: Partial<Inside> = {}): Inside => ({
  id: 's',
  kind: 'loose',
  bay: 1,
  heldBy: 'pins',
  first: l('4'),
  pitch: l('2'),
  ...own,
});
const sizes = (...inside: readonly Inside[]) => {
  const found = sizesOf({ ...base, inside }, [sheet]);
  if (!found.ok) throw new Error(found.error.map((e) => e.code).join());
  return found.value;
};
const told = (found: readonly object[]) =>
  found.map((x) =>
    Object.values(x)
      .map((v) => (typeof v === 'object' && v !== null && 'toFraction' in v ? v.toFraction(true) : `${v}`))
      .join(' '),
  );
const problems = (...inside: readonly Inside[]) => told(pinProblems(sizes(...inside)));
const warnings = (...inside: readonly Inside[]) => told(pinWarnings(sizes(...inside)));

describe('pinProblems', () => {
  test('rows that fit, and shelves with no holes laid out, have none', () => {
    expect(problems(pins(), { id: 'x', kind: 'loose', bay: 2 })).toEqual([]);
  });

  test('a pitch no wider than a hole', () => {
    expect(problems(pins({ pitch: l('1/4') }))).toEqual(['holes-touch s 1/4']);
  });

  test('a row off its edge, and rows that cross, by how much', () => {
    // half a hole is 1/8: at 1/16 it hangs 1/16 over; behind likewise, the rear row at 18 − 1/16
    expect(problems(pins({ front: l('1/16') }))).toEqual(['row-off s hole front 1/16']);
    expect(problems(pins({ behind: l('1/16') }))).toEqual(['row-off s hole rear 1/16']);
    // front at 9, rear at 18 − 9 1/8 = 8 7/8: a hole of 1/4 more than −1/8 apart
    expect(problems(pins({ front: l('9'), behind: l('9 1/8') }))).toEqual(['rows-cross s hole 3/8']);
  });

  test('a hole through its wall', () => {
    expect(problems(pins({ depth: l('23/32') }))).toEqual(['hole-through s hole 23/32 23/32']);
  });

  test('holes bored into each other from the two faces of a partition', () => {
    // 2 × 3/8 − 23/32 = 1/32; (23/32 − 23/96) / 2 = 23/96 deep leave a third
    const other = pins({ id: 't', bay: 2 });
    expect(problems(pins(), other)).toEqual(['holes-meet t hole s 1/32 23/96']);
    // rows half a pitch off each other, or a hole farther in, do not meet
    expect(problems(pins(), { ...other, first: l('5') })).toEqual([]);
    expect(problems(pins(), { ...other, front: l('2 1/4'), behind: l('2 1/4') })).toEqual([]);
    // 1/8 aside and 1/8 up: √(1/32) = .177, under 1/4: they do
    const near = { ...other, first: l('4 1/8'), front: l('2 1/8'), behind: l('6') };
    expect(problems(pins(), near)).toEqual(['holes-meet t hole s 1/32 23/96']);
  });

  test('nothing left of a shelf', () => {
    // 20 − 2 × (10 + 1/16) = −1/8; 18 − 18 1/2 = −1/2
    expect(problems(pins({ flange: l('10') }))).toEqual(['no-shelf s true 1/8']);
    expect(problems(pins({ frontPlay: l('18 1/2') }))).toEqual(['no-shelf s false 1/2']);
  });
});

describe('pinWarnings', () => {
  test('little wood behind a hole, and between holes of both faces', () => {
    // 23/32 − 9/16 = 5/32 of a third, 23/96
    expect(warnings(pins({ depth: l('9/16') }))).toEqual(['hole-web s hole 5/32 23/96 false']);
    // 23/32 − 2 × 1/4 = 7/32
    expect(warnings(pins({ depth: l('1/4') }), pins({ id: 't', bay: 2, depth: l('1/4') }))).toEqual([
      'hole-web t hole 7/32 23/96 true',
    ]);
  });

  test('holes left out by their number', () => {
    // 4, 6, 8, 10 …: 10 is no. 4, in the dado of a shelf at 9 3/4
    expect(warnings(pins(), { id: 'f', kind: 'fixed', bay: 1, at: l('9 3/4') })).toEqual([
      'holes-left-out s 4',
    ]);
    // a shelf of the other bay takes none
    expect(warnings(pins(), { id: 'f', kind: 'fixed', bay: 2, at: l('9 3/4') })).toEqual([]);
  });

  test('1 1/4 for 32 mm', () => {
    // 40 − 4 − 4 = 32, 25 pitches of 1 1/4 and a bit: 26 holes; 25 × 5/508 = 125/508
    expect(warnings(pins({ pitch: l('1 1/4') }))).toEqual(['not-32 s 5/508 125/508']);
  });
});
