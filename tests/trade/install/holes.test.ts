import { expect, test } from 'vitest';
import { less } from '../../../src/length/length';
import { screwHoles } from '../../../src/trade/install/holes';
import { w } from '../grooves/sample';

// Pilots: common practice, no source. Shanks .060 + .013 × 6, 8, 10 = .138, .164, .190; in 64ths 8.83, 10.50, 12.16.
test.each([
  [6, '3/32', '3/32', '69/500', '9/64'],
  [8, '7/64', '1/8', '41/250', '11/64'],
  [10, '9/64', '9/64', '19/100', '13/64'],
] as const)(
  'Example 7 of install, number %s: pilot %s, in hardwood %s',
  (gauge, soft, hard, shank, clear) => {
    const holes = screwHoles(gauge, 'soft');
    expect([w(holes.pilot), w(screwHoles(gauge, 'hard').pilot)]).toEqual([soft, hard]);
    expect([w(holes.shank), w(holes.clearance)]).toEqual([shank, clear]);
    expect(less(holes.pilot, holes.shank)).toBe(true);
  },
);
