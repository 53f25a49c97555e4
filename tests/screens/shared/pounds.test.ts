import { afterEach, describe, expect, test } from 'vitest';
import { type Ratio, ratio } from '../../../src/length/length';
import type { Ask } from '../../../src/screens/shared/ask';
import {
  inMeasure,
  inUnit,
  measureUnit,
  poundsIn,
  weight,
  wholeOf,
} from '../../../src/screens/shared/pounds';
import { tapeInHand } from '../../../src/ui/unit-in-hand';

afterEach(() => {
  tapeInHand.value = '1/32';
});

describe('a job in inches', () => {
  test('has pounds, pounds a square foot, millions of pounds a square inch', () => {
    expect(weight(ratio(169n, 10n))).toBe('16.9 lb');
    expect(inUnit('foot', ratio(22n, 10n))).toBe('2.2 lb a square foot');
    expect(inUnit('stiff', ratio(6n, 5n))).toBe('1.2 million pounds a square inch');
    expect(`${wholeOf('turning', ratio(930n))} ${measureUnit('turning')}`).toBe('930 inch-pounds');
  });
});

describe('a job in millimetres', () => {
  // Source: "Refinement of Values for the Yard and the Pound", Federal Register, 1 July 1959: 1 lb = 0.453 592 37 kg.
  test.each([
    [ratio(1n), '0.5 kg'],
    [ratio(50n), '22.7 kg'],
    // the lifting equation stands with 51 lb and 23 kg in its publication (NIOSH 94-110)
    [ratio(51n), '23.1 kg'],
    [ratio(200n), '90.7 kg'],
  ])('%s pounds are %s', (pounds, kilograms) => {
    tapeInHand.value = '1 mm';
    expect(weight(pounds)).toBe(kilograms);
  });

  test('what goes by area, stiffness and turning follows', () => {
    tapeInHand.value = '1/2 mm';
    // 40 × .45359237 / .09290304 = 195.3
    expect(`${wholeOf('foot', ratio(40n))} ${measureUnit('foot')}`).toBe('195 kg a square metre');
    // 1.2 × 6894.757 = 8273.7, to the nearest ten
    expect(inUnit('stiff', ratio(6n, 5n))).toBe('8270 N/mm²');
    // 930 × .45359237 × 9.80665 × .0254 = 105.08
    expect(`${wholeOf('turning', ratio(930n))} ${measureUnit('turning')}`).toBe('105 N·m');
    expect(poundsIn('Over 50 lb: two people.')).toBe('Over 22.7 kg: two people.');
  });
});

test('a blank takes kilograms, keeps exact pounds, and shows what was keyed again', () => {
  const kept: (Ratio | undefined)[] = [];
  const ask = (now: Ratio | undefined): Extract<Ask, { as: 'amount' }> => ({
    as: 'amount',
    title: 'How heavy',
    now,
    usual: ratio(50n),
    refuse: (x) => (ratio(100n).lt(x) ? 'too heavy' : undefined),
    save: (x) => {
      kept.push(x);
      return [];
    },
  });
  tapeInHand.value = '1 mm';
  inMeasure('weight', ask(undefined)).save(ratio(5n));
  const [pounds] = kept;
  // 5 / .45359237
  expect(pounds?.equals(ratio(500_000_000n, 45_359_237n))).toBe(true);
  const again = inMeasure('weight', ask(pounds));
  expect(again.unit).toBe('kg');
  expect(again.now?.equals(ratio(5n))).toBe(true);
  // 50 × .45359237 = 22.6796
  expect(again.usual?.equals(ratio(2268n, 100n))).toBe(true);
  // 46 kg are 101.4 lb
  expect([again.refuse?.(ratio(45n)), again.refuse?.(ratio(46n))]).toEqual([undefined, 'too heavy']);
  tapeInHand.value = '1/32';
  expect(inMeasure('weight', ask(ratio(2n))).now?.equals(ratio(2n))).toBe(true);
});
