import fc from 'fast-check';
import { expect, test } from 'vitest';
import { add, half, inches, subtract, zero } from '../../src/length/length';
import { grainOf } from '../../src/length/tape';
import { planOf } from '../../src/plan/plan';
import type { Case } from '../../src/trade/carcass/case';
import { runs } from '../runs';
import { anyJob, assembled, offBy, shop } from './assembled';
import { cutPieces } from './cut-pieces';
import { seated } from './seated';

const joints = fc.constantFrom('dado', 'butt', 'tongue' as const);
const past = fc.constantFrom(inches(1n, 2n), inches(2n), inches(350n, 127n), inches(5n));

test('assembled, sides run past the upper face of a top by what is said, both alike, and all else meets it there', () => {
  let stood = 0;
  fc.assert(
    fc.property(anyJob, joints, joints, past, ({ job, c: any }, topJoint, topRightJoint, sidePast) => {
      const c: Case = { ...any, hasTop: true, topJoint, topRightJoint, sidePast };
      const plan = planOf({ ...job, cases: [c] }, shop);
      if (!plan.worked.get('c')?.ok || plan.operations.some((op) => op.cannot)) return;
      stood += 1;
      const thick = { side: job.stock[0]?.used, shelf: job.stock[1]?.used, back: job.stock[2]?.used };
      const pieces = cutPieces(plan, shop);
      const standing = assembled(c, pieces, (role) => thick[role] ?? zero);
      const bound = half(grainOf(job.tape));
      const off = [...offBy(standing)].filter(([, by]) => by.abs().compare(bound) > 0);
      expect(off.map(([what, by]) => `${what}: ${by.toFraction(true)}`)).toEqual([]);
      // up: from the upper face of the top, as it is seated in either side, to the upper end of that side
      for (const end of ['left', 'right']) {
        const side = standing.piece(end);
        const at = { piece: standing.piece('top'), end, thick: standing.thick('side') };
        const face = add(seated(side, 'top', at).middle, half(standing.thick('side')));
        expect(subtract(subtract(side.long, face), sidePast).abs().compare(bound) <= 0).toBe(true);
      }
    }),
    { numRuns: runs(100) },
  );
  expect(stood).toBeGreaterThan(30);
}, 3_600_000);
