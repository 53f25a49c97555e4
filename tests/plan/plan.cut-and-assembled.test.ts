import fc from 'fast-check';
import { expect, test } from 'vitest';
import { half, subtract, zero } from '../../src/length/length';
import { grainOf } from '../../src/length/tape';
import { planOf } from '../../src/plan/plan';
import { runs } from '../runs';
import { anyJob, assembled, offBy, shop } from './assembled';
import { cutPieces, handOnMachine } from './cut-pieces';

test('cut as printed, with all that the marks leave, every case goes together within half a mark', () => {
  let stood = 0;
  fc.assert(
    fc.property(anyJob, ({ job, c }) => {
      const plan = planOf(job, shop);
      if (!plan.worked.get('c')?.ok || plan.operations.some((op) => op.cannot)) return;
      stood += 1;
      const thick = { side: job.stock[0]?.used, shelf: job.stock[1]?.used, back: job.stock[2]?.used };
      const standing = assembled(c, cutPieces(plan, shop), (role) => thick[role] ?? zero);
      const bound = half(grainOf(job.tape));
      const bad = [...offBy(standing)].filter(([, by]) => by.abs().compare(bound) > 0);
      expect(bad.map(([what, by]) => `${what}: ${by.toFraction(true)}`)).toEqual([]);
      if (c.hold === 'outside') {
        expect(
          subtract(standing.outside, c.width ?? zero)
            .abs()
            .compare(bound) <= 0,
        ).toBe(true);
      }
      const sizes = plan.worked.get('c');
      if (sizes?.ok) {
        const told = sizes.value.sizes.width.value;
        expect(subtract(standing.outside, told).abs().compare(bound) <= 0).toBe(true);
      }
    }),
    { numRuns: runs(100) },
  );
  expect(stood).toBeGreaterThan(50);
});

test('every groove for a part is as wide as it: no narrower, and no wider than its fit', () => {
  let grooves = 0;
  fc.assert(
    fc.property(anyJob, ({ job }) => {
      const plan = planOf(job, shop);
      if (!plan.worked.get('c')?.ok || plan.operations.some((op) => op.cannot)) return;
      const pieces = cutPieces(plan, shop);
      for (const { id, board } of plan.parts) {
        for (const wide of board?.wides ?? []) {
          const cut = pieces.get(id)?.grooves.get(wide.id);
          const fits = job.stock.find((s) => s.id === wide.fits)?.used;
          if (!cut || !fits) continue;
          grooves += 1;
          expect(subtract(subtract(cut.hi, cut.lo), fits).toFraction()).toBe('1/200');
        }
      }
    }),
    { numRuns: runs(150) },
  );
  expect(grooves).toBeGreaterThan(100); // 200 in the mean
});

/**
 * As they stand in the case, faced from the front: x to the right, y back, z up. Reference end to the other, front to
 * back, out of the grooved face: the left side is (z, y, x), and z × y = −x, so −1; the others likewise.
 */
const hands: Record<string, 1 | -1> = { left: -1, right: 1, bottom: 1, top: -1 };

test('every groove is cut in the hand of its part: left and right come out mirrored, not twice the same', () => {
  let cut = 0;
  fc.assert(
    fc.property(anyJob, ({ job }) => {
      const plan = planOf(job, shop);
      for (const op of plan.operations) {
        if (op.what !== 'groove' || op.cannot) continue;
        const role = op.part.slice('c~'.length);
        const end = plan.parts.find((p) => p.id === op.part)?.end ?? '';
        const inPartition = op.placing?.face?.named === 'left' ? 1 : -1;
        expect(`${op.id} ${handOnMachine(op, end)}`).toBe(`${op.id} ${hands[role] ?? inPartition}`);
        cut += 1;
      }
    }),
    { numRuns: runs(100) },
  );
  expect(cut).toBeGreaterThan(100);
});
