import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { add, atMost, equals, inches, type Length, less, ratio, subtract } from '../../../src/length/length';
import { grainOf, tapes } from '../../../src/length/tape';
import { type CutStep, cutSteps } from '../../../src/trade/sheets/cut-steps';
import type { Branch, Rect } from '../../../src/trade/sheets/tree';
import { runs } from '../../runs';
import { cut, leaf, left, n } from './cutting';

const off = (least: number, most: number) =>
  fc
    .tuple(
      fc.integer({ min: least, max: most }),
      fc.constantFrom(16n, 64n, 127n),
      fc.bigInt({ min: 0n, max: 126n }),
    )
    .map(([whole, d, k]) => add(inches(BigInt(whole)), inches(k % d, d)));

/** A trim, strips off the near edge, pieces off their near end; what is left stays. */
const laid = fc
  .record({
    trim: off(1, 2),
    strips: fc.array(fc.tuple(off(3, 9), fc.array(off(8, 22), { maxLength: 3 })), {
      minLength: 1,
      maxLength: 3,
    }),
  })
  .map(({ trim, strips }) => {
    const along = (lengths: readonly Length[], row: number): Branch =>
      lengths.reduceRight<Branch>((far, long, k) => cut('cross', long, leaf(`${row}.${k}`), far), left);
    const across = strips.reduceRight<Branch>(
      (far, [wide, lengths], row) => cut('rip', wide, along(lengths, row), far),
      left,
    );
    return cut('rip', trim, { is: 'waste' }, across);
  });

const sawn = fc.record({
  tree: laid,
  tape: fc.constantFrom(...tapes),
  kerf: fc.constantFrom(n(0, 5, 64), n(0, 1, 8), inches(2n, 25n)),
  shoeKeep: off(4, 6),
  shoeWaste: off(1, 2),
  // a saw of which one shoe alone was measured has its guide on that side
  measured: fc.constantFrom('keep', 'waste', 'none' as const),
});
type Sawn = typeof sawn extends fc.Arbitrary<infer T> ? T : never;

/** Where the saw's line comes out with its guide at the printed mark: the shoe stands between, and the kerf. */
function lineOf(step: CutStep, { kerf, shoeKeep, shoeWaste, measured }: Sawn): Length {
  const [toKeep, toWaste] = step.keep === 'near' ? [add, subtract] : [subtract, add];
  if (measured === 'keep' && step.onKeep) return toKeep(step.onKeep.value, shoeKeep);
  if (measured === 'waste' && step.onWaste) return toWaste(toWaste(step.onWaste.value, shoeWaste), kerf);
  return step.figure.value;
}

test('sawn along a guide set by its shoe, as printed: what is kept is never short of the line, and a mark long at most', () => {
  let guided = 0;
  fc.assert(
    fc.property(sawn, (given) => {
      const { tree, tape, kerf, shoeKeep, shoeWaste, measured } = given;
      const shop = {
        kerf,
        ...(measured === 'keep' ? { shoeKeep } : measured === 'waste' ? { shoeWaste } : {}),
      };
      const size: Rect = { long: n(96), wide: n(48) };
      const at = { kind: 'sheet', kerf, tape, shop, carry: ratio(50n), guideOnly: true } as const;
      for (const step of cutSteps({ size, tree }, at)) {
        expect(step.tool).toBe('guide');
        const [whole, near, far] =
          step.way === 'rip'
            ? [step.size.wide, step.near.wide, step.far.wide]
            : [step.size.long, step.near.long, step.far.long];
        const line = lineOf(step, given);
        const kept = step.keep === 'near' ? line : subtract(whole, line);
        const wanted = step.keep === 'near' ? near : far;
        expect([step.path, less(kept, wanted)]).toEqual([step.path, false]);
        expect([step.path, less(subtract(kept, wanted), grainOf(tape))]).toEqual([step.path, true]);
        if (!equals(line, step.figure.value) || step.onKeep || step.onWaste) guided += 1;
        expect(atMost(line, whole)).toBe(true);
      }
    }),
    { numRuns: runs(200) },
  );
  expect(guided).toBeGreaterThan(100);
});
