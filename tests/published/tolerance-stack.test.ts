import { describe, expect, test } from 'vitest';
import { rootTo } from '../../src/length/diagonal';
import { forDrawing, inches, ratio } from '../../src/length/length';
import { stackUp } from '../../src/trade/tolerance/stack-up';

describe('stackUp', () => {
  // Source: Tolerance Stack-Up Analysis — Worst Case vs RSS (Statistical) Methods,
  // ficientdesign.com/tolerance-stack-up-analysis (date not read). Seen: "Part A: 2.000 ± 0.005", "Part B: 1.500 ±
  // 0.003", "Part C: 0.500 ± 0.002", "Housing: 4.020 ± 0.005"; gap "0.020 ± 0.015", "√(0.00616² + 0.005²) =
  // ±0.00794".
  test('three parts in a housing: worst .015, likely .0079', () => {
    const { worst, likely } = stackUp([5n, 3n, 2n, 5n].map((n) => inches(n, 1000n)));
    expect(worst.toString()).toBe('0.015');
    expect(likely.toString()).toBe('0.0079');
    const squares = ratio(63n, 1000000n);
    expect(rootTo(squares, inches(1n, 100000n)).toString()).toBe('0.00794');
  });

  // Same source: the stack of the three parts alone, "4.000 ± 0.010", "√(0.005² + 0.003² + 0.002²) = ±0.00616".
  test('the three parts alone: worst .010, likely .00616, kept to four places', () => {
    const { worst, likely } = stackUp([5n, 3n, 2n].map((n) => inches(n, 1000n)));
    expect(worst.toString()).toBe('0.01');
    expect(likely.toString()).toBe('0.0062');
    expect(rootTo(ratio(38n, 1000000n), inches(1n, 100000n)).toString()).toBe('0.00616');
  });

  // Source: Tolerance stack-ups, ideambox.com/hardware-notes/tolerance-stack-ups/ (date not read). Seen: "If five
  // dimensions each carry ±0.1 mm, the gap can drift by ±0.5 mm, full stop." Here a tenth of an inch.
  test('five parts of a tenth: worst 0.5', () => {
    expect(stackUp(Array.from({ length: 5 }, () => inches(1n, 10n))).worst.equals(ratio(1n, 2n))).toBe(true);
  });

  // Source: a page on RSS tolerance analysis with no author, date or name of its site,
  // 32.198.53.126/rss-tolerance-analysis; its copy at
  // 13.40.32.133/twilight_crossing/gilded_valley/rss-tolerance-analysis says that the table is for "a 10-part stack",
  // each ±0.1 mm. Seen there: predicted assembly variation, worst case "(\pm 1.0) mm", RSS "(\pm 0.316) mm". A weak
  // source, but the arithmetic is the one of the first. Printed to three places, we keep four; here a tenth of an
  // inch.
  test('ten parts of a tenth: worst 1.0, likely 0.316', () => {
    const { worst, likely } = stackUp(Array.from({ length: 10 }, () => inches(1n, 10n)));
    expect(worst.equals(1n)).toBe(true);
    expect(forDrawing(likely).toFixed(3)).toBe('0.316');
    expect(forDrawing(likely)).toBe(0.3162);
  });
});
