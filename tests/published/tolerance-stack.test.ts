import { describe, expect, test } from 'vitest';
import { rootTo } from '../../src/length/diagonal';
import { inches, ratio } from '../../src/length/length';
import { stackUp } from '../../src/trade/tolerance/stack-up';

describe('stackUp', () => {
  // Source: https://ficientdesign.com/tolerance-stack-up-analysis. Parts 2.000 ±.005, 1.500 ±.003
  // and .500 ±.002 in a housing 4.020 ±.005: gap .020, worst case ±.015 (.005 to .035), RSS ±.00794 (.012 to .028).
  test('three parts in a housing: worst .015, likely .0079', () => {
    const { worst, likely } = stackUp([5n, 3n, 2n, 5n].map((n) => inches(n, 1000n)));
    expect(worst.toString()).toBe('0.015');
    expect(likely.toString()).toBe('0.0079');
    const squares = ratio(63n, 1000000n);
    expect(rootTo(squares, inches(1n, 100000n)).toString()).toBe('0.00794');
  });

  // Same source: ten parts of ±0.1, worst ±1.0, RSS ±0.316. Printed to three places, we keep four.
  test('ten parts of a tenth: worst 1.0, likely 0.316', () => {
    const { worst, likely } = stackUp(Array.from({ length: 10 }, () => inches(1n, 10n)));
    expect(worst.equals(1n)).toBe(true);
    expect(likely.round(3).toString()).toBe('0.316');
    expect(likely.toString()).toBe('0.3162');
  });
});
