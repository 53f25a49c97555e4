import fc from 'fast-check';
import { expect, test } from 'vitest';
import { add, atMost, inches, less, subtract } from '../../../src/length/length';
import { dowelsFor } from '../../../src/trade/fasteners/dowels';

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
