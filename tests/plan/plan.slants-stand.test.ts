import fc from 'fast-check';
import { expect, test } from 'vitest';
import {
  add,
  fromMillimetres,
  inches,
  type Length,
  negate,
  over,
  ratio,
  subtract,
  times,
  zero,
} from '../../src/length/length';
import { unitsOf } from '../../src/length/tape';
import { joinPlace } from '../../src/plan/join-place';
import { planOf } from '../../src/plan/plan';
import type { Case } from '../../src/trade/carcass/case';
import { runs } from '../runs';
import { anyJob, shop } from './assembled';

/** Sine and cosine of 15 degrees to four places, from any table. */
const [sin, cos, tan] = [ratio(2588n, 10_000n), ratio(9659n, 10_000n), ratio(2679n, 10_000n)];
const sixteenths = (least: number, most: number) =>
  fc.integer({ min: least, max: most }).map((n) => inches(BigInt(n), 16n));

/** The middle of the screw so far from the seat of its head: back from the end, and off the face it goes in by. */
const middleAt = (seat: Length, leaves: Length, x: Length) => ({
  back: times(subtract(seat, x), cos),
  off: add(subtract(leaves, times(seat, sin)), times(x, sin)),
});

test('any case, any jig: a slant screw passes the middle of the end, its head in the part, its tip in the mate', () => {
  let stood = 0;
  fc.assert(
    fc.property(
      anyJob,
      sixteenths(6, 16),
      fc.constantFrom('bottom', 'shelf', 'partition', 'top' as const),
      ({ job, c: any }, seat, at) => {
        const feet = any.feet ?? zero;
        const butt = { bottomJoint: 'butt', partitionJoint: 'butt', shelfJoint: 'butt' } as const;
        const c: Case = { ...any, ...butt, topJoint: 'over', feet, hasPlinth: false };
        const plain = { ...c, bottomRightJoint: undefined, topRightJoint: undefined };
        const join = { id: 'j', by: 'slant', of: 'c', at, seat, head: inches(11n, 32n) } as const;
        const list = [3n, 4n, 5n, 6n, 8n, 10n].map((n) => inches(n, 4n));
        const plan = planOf({ ...job, cases: [plain], joins: [join] }, { ...shop, screws: list });
        const thick = (id: string) => plan.parts.find((p) => p.id === id)?.thickness ?? zero;
        const rows = plan.operations.flatMap((op) =>
          op.which?.is === 'fasteners' ? [{ op, row: op.which.row }] : [],
        );
        const { is, meets } = joinPlace(plan, join, list);
        const long = is?.by === 'slant' && is.found.ok ? is.found.value.long : zero;
        for (const { op, row } of rows) {
          expect([row.in.at, op.setup.machine]).toEqual(['ends', 'slant']);
          // set at its mark, with all that leaves
          const { figure } = op.setup;
          expect(figure && add(figure.value, figure.rest)).toEqual(seat);
          const own = thick(op.part);
          const { slant } = row;
          if (!slant) throw new Error('slanted');
          // it leaves the end at the middle of its thickness
          expect(middleAt(seat, row.from, seat)).toEqual({ back: zero, off: over(own, 2n) });
          // the seat lies back and down where the row says
          expect(middleAt(seat, row.from, zero).back).toEqual(slant.seatBack);
          // its line comes to the face where the row begins: so far back its rise is all of what it leaves at
          expect(times(slant.meets, tan)).toEqual(row.from);
          // its tip bites 3/8 of every mate and leaves 1/8 of it, in a metric shop 10 and 3
          const isMetric = unitsOf(job.tape) === 'mm';
          const bites = isMetric ? fromMillimetres(10n) : inches(3n, 8n);
          const leaves = isMetric ? fromMillimetres(3n) : inches(1n, 8n);
          for (const { mate } of meets?.ends ?? []) {
            const deep = negate(middleAt(seat, row.from, long).back);
            expect(deep.compare(bites)).toBeGreaterThanOrEqual(0);
            expect(deep.compare(subtract(mate.thickness ?? zero, leaves))).toBeLessThanOrEqual(0);
          }
          stood += 1;
        }
        // nothing is bored in what they bite
        expect(rows.every(({ row }) => row.in.at === 'ends')).toBe(true);
      },
    ),
    { numRuns: runs(100) },
  );
  expect(stood).toBeGreaterThan(20);
}, 3_600_000);
