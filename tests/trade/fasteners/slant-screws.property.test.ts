import fc from 'fast-check';
import { expect, test } from 'vitest';
import { atMost, inches, less, subtract } from '../../../src/length/length';
import { slantScrewFor } from '../../../src/trade/fasteners/slant-screws';

const sixteenths = (least: number, most: number) =>
  fc.integer({ min: least, max: most }).map((n) => inches(BigInt(n), 16n));

test('the slant screw taken bites enough and stays inside; a longer one on the shelf would not', () => {
  const lengths = [4, 5, 6, 8, 10].map((n) => inches(BigInt(n), 4n));
  fc.assert(
    fc.property(sixteenths(8, 24), sixteenths(8, 40), fc.boolean(), (part, mate, inPlane) => {
      const plan = { part, mate, inPlane, seat: inches(5n, 8n), head: inches(11n, 32n), lengths };
      const found = slantScrewFor(plan);
      if (!found.ok) return;
      const { bite, long } = found.value;
      expect(atMost(inches(3n, 8n), bite)).toBe(true);
      expect(atMost(bite, subtract(mate, inches(1n, 8n)))).toBe(true);
      const longer = lengths.filter((x) => less(long, x));
      if (longer.length > 0) expect(slantScrewFor({ ...plan, lengths: longer }).ok).toBe(false);
    }),
  );
});
