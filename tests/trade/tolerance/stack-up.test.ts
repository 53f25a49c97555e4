import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { inches, less, sum } from '../../../src/length/length';
import { stackUp } from '../../../src/trade/tolerance/stack-up';
import { runs } from '../../runs';

const thousandths = (...n: bigint[]) => n.map((k) => inches(k, 1000n));

describe('stackUp', () => {
  test('of nothing is nothing', () => {
    const { worst, likely } = stackUp([]);
    expect([worst.toFraction(), likely.toFraction()]).toEqual(['0', '0']);
  });

  test('takes a tolerance by its size, whichever way it is written', () => {
    expect(stackUp(thousandths(-5n, 3n)).worst.equals(inches(8n, 1000n))).toBe(true);
  });

  test('the likely figure is at most the worst, and at least the largest of them, to its own last place', () => {
    const property = fc.property(fc.array(fc.bigInt(0n, 500n), { minLength: 1, maxLength: 12 }), (list) => {
      const parts = thousandths(...list);
      const { worst, likely } = stackUp(parts);
      expect(worst.equals(sum(parts))).toBe(true);
      expect(less(worst, likely)).toBe(false);
      for (const part of parts) expect(less(likely, part)).toBe(false);
    });
    fc.assert(property, { numRuns: runs(300) });
  });
});
