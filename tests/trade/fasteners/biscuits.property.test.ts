import fc from 'fast-check';
import { expect, test } from 'vitest';
import { atMost, inches, less, subtract } from '../../../src/length/length';
import { biscuitsFor } from '../../../src/trade/fasteners/biscuits';

const sixteenths = (least: number, most: number) =>
  fc.integer({ min: least, max: most }).map((n) => inches(BigInt(n), 16n));

test('the biscuit taken leaves the wood asked for, and every larger one lacks some', () => {
  fc.assert(
    fc.property(sixteenths(4, 24), sixteenths(4, 24), sixteenths(20, 400), (part, mate, run) => {
      const leave = inches(3n, 16n);
      const found = biscuitsFor({ part, mate, run, most: inches(6n), leave });
      if (!found.ok) return;
      const { no, slotDeep, refused, row } = found.value;
      expect(atMost(leave, subtract(mate, slotDeep))).toBe(true);
      expect(refused.length).toBe({ 20: 0, 10: 1, 0: 2 }[no]);
      for (const { by } of refused) expect(less(inches(0n), by)).toBe(true);
      for (const mark of row.marks) expect(less(mark, run)).toBe(true);
    }),
  );
});
