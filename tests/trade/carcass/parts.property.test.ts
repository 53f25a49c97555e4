import fc from 'fast-check';
import { expect, test } from 'vitest';
import { inches, less, sum, zero } from '../../../src/length/length';
import { type Case, newCase } from '../../../src/trade/carcass/case';
import { checkOf } from '../../../src/trade/carcass/check';
import { partsOf } from '../../../src/trade/carcass/parts';
import { runs } from '../../runs';

const length = (least: number, most: number, d: bigint) =>
  fc.integer({ min: least * Number(d), max: most * Number(d) }).map((n) => inches(BigInt(n), d));
const denominator = fc.constantFrom(16n, 32n, 64n, 127n, 1000n);
const at = (least: number, most: number) => denominator.chain((d) => length(least, most, d));

const anyCase = fc
  .record({
    width: at(24, 90),
    height: at(20, 90),
    depth: at(8, 30),
    feet: at(0, 6),
    partitions: fc.integer({ min: 0, max: 4 }),
    hasTop: fc.boolean(),
    bottomJoint: fc.constantFrom(undefined, 'dado', 'rabbet', 'butt', 'over' as const),
    topJoint: fc.constantFrom(undefined, 'rabbet', 'dado', 'butt', 'over' as const),
    sidePast: fc.option(at(0, 4), { nil: undefined }),
    partitionJoint: fc.constantFrom(undefined, 'dado', 'butt' as const),
    bottomPast: at(0, 1),
    topPast: at(0, 1),
    hasBack: fc.boolean(),
    hold: fc.constantFrom('outside' as const, 'openings' as const),
    opening: at(4, 20),
    clear: at(10, 80),
    thick: fc.tuple(at(1, 2), at(1, 2), at(1, 2)),
    cut: fc.tuple(length(0, 1, 8n), length(0, 1, 8n)),
  })
  .map(({ thick, cut, ...rest }) => ({
    c: {
      ...newCase('c'),
      ...rest,
      stocks: { side: 'a', bottom: 'b', top: 'b', partition: 'p', back: 'p' },
      dado: sum([cut[0], inches(1n, 64n)]),
      topRabbet: sum([cut[1], inches(1n, 64n)]),
    } satisfies Case,
    stuff: thick.map((thickness, k) => ({
      id: ['a', 'b', 'p'][k] ?? '',
      name: '',
      thickness,
      measured: true,
    })),
  }));

test('parts always add back to the outside, whatever the stuff measures', () => {
  let worked = 0;
  fc.assert(
    fc.property(anyCase, ({ c, stuff }) => {
      const found = partsOf(c, { stuff, tape: '1/32' });
      if (!found.ok) return;
      worked += 1;
      expect(checkOf(found.value).filter((line) => !line.meets)).toEqual([]);
    }),
    { numRuns: runs(1000) },
  );
  expect(worked).toBeGreaterThan(300);
});

test('a part that enters an opening is never marked longer than it is; no size is nothing or less', () => {
  fc.assert(
    fc.property(anyCase, ({ c, stuff }) => {
      const found = partsOf({ ...c, inside: [{ id: 's', kind: 'loose', bay: 1 }] }, { stuff, tape: '1/16' });
      if (!found.ok) return;
      for (const { length, width } of found.value.parts) {
        for (const size of [length, width]) {
          expect(less(zero, size.sum.value)).toBe(true);
          if (size.mode === 'floor') expect(less(size.sum.value, size.mark.value)).toBe(false);
        }
      }
    }),
    { numRuns: runs(300) },
  );
});
