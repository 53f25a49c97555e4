import fc from 'fast-check';
import { expect, test } from 'vitest';
import { add, atMost, inches, less, subtract } from '../../../src/length/length';
import { biscuitsFor } from '../../../src/trade/fasteners/biscuits';
import { dowelsFor } from '../../../src/trade/fasteners/dowels';
import { slantScrewFor } from '../../../src/trade/fasteners/slant-screws';

const sixteenths = (least: number, most: number) =>
  fc.integer({ min: least, max: most }).map((n) => inches(BigInt(n), 16n));

const size = fc.record({ thick: sixteenths(3, 8), long: sixteenths(12, 40) });

test('a dowel comes out nowhere, and both its holes together are an eighth longer than it', () => {
  fc.assert(
    fc.property(
      sixteenths(6, 40),
      sixteenths(6, 40),
      sixteenths(16, 500),
      fc.array(size, { minLength: 1, maxLength: 5 }),
      (part, mate, run, sizes) => {
        const found = dowelsFor({ part, mate, run, end: inches(1n), most: inches(6n), sizes });
        if (!found.ok) return;
        const { inFace, inEdge, size, row, from } = found.value;
        expect(less(inFace, mate)).toBe(true);
        expect(add(inFace, inEdge).equals(add(size.long, inches(1n, 8n)))).toBe(true);
        const [first, second] = row.marks;
        if (first && second) expect(atMost(subtract(second, first), inches(6n))).toBe(true);
        expect(less(size.thick.div(2n) as typeof from, from)).toBe(true);
      },
    ),
  );
});

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
