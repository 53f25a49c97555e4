import fc from 'fast-check';
import { expect, test } from 'vitest';
import {
  add,
  fromMillimetres,
  half,
  inches,
  type Length,
  over,
  subtract,
  sum,
  times,
  zero,
} from '../../src/length/length';
import { grainOf, unitsOf } from '../../src/length/tape';
import { type Plan, planOf } from '../../src/plan/plan';
import type { Case } from '../../src/trade/carcass/case';
import type { FastenerRow } from '../../src/trade/fasteners/row';
import type { Operation } from '../../src/trade/setups/operation';
import { runs } from '../runs';
import { anyJob, assembled, footOf, pastTop, type Standing, shop } from './assembled';
import { cutPieces } from './cut-pieces';

const meetings = ['bottom', 'top', 'partition', 'shelf'] as const;

/** A hole in a face leaves 1/8 under it, a slot 3/16; in a metric shop 3 and 5. */
const left = {
  in: { dowel: inches(1n, 8n), biscuit: inches(3n, 16n) },
  mm: { dowel: fromMillimetres(3n), biscuit: fromMillimetres(5n) },
};

/** A row as it is bored: its figure with all that the mark leaves. */
type Bored = { readonly part: string; readonly row: FastenerRow; readonly at: Length };

const boredIn = ({ operations }: Plan): readonly Bored[] =>
  operations.flatMap(({ which, part, setup: { figure } }: Operation) =>
    which?.is === 'fasteners' && figure
      ? [{ part: part.slice(2), row: which.row, at: add(figure.value, figure.rest) }]
      : [],
  );

/** The left face of a partition from the outside of the case, as drawn: outside held, its bays alike. */
function drawnLeft(c: Case, side: Length, own: Length, k: number): Length {
  const clear = subtract(subtract(c.width ?? zero, times(side, 2n)), times(own, BigInt(c.partitions)));
  const bay = over(clear, BigInt(c.partitions + 1));
  return sum([side, times(bay, BigInt(k)), times(own, BigInt(k - 1))]);
}

/** Where each row in a face stands in the case, and where that of the end against it does; up, or from the left. */
function pairs(standing: Standing, all: readonly Bored[]): readonly (readonly [string, Length, Length])[] {
  const { c, walls, datum, foot, highest, outside, thick } = standing;
  const [side, own] = [thick('side'), thick('shelf')];
  const endOf = (part: string, what: string) => {
    const found = all.find((b) => b.part === part && b.row.in.at === 'ends' && b.row.id === what);
    if (!found) throw new Error(`${part}: no row in its end`);
    return found.at;
  };
  return all.flatMap(
    ({ part, row: { id, in: where }, at }): readonly (readonly [string, Length, Length])[] => {
      if (where.at === 'ends') return [];
      const what = `${id} in ${part}`;
      if (part === 'left' || part === 'right' || part.startsWith('partition')) {
        const past = pastTop(c);
        // the top is bored from its upper face, the sides from their upper ends: flush
        if (id === 'top' && past.n === 0n) return [[what, at, endOf('top', 'top')]];
        // else from its under face, the sides from their lower ends
        if (id === 'top')
          return [[what, add(foot, at), add(subtract(highest, add(past, side)), endOf('top', 'top'))]];
        const up = add(part.startsWith('partition') ? footOf(standing, part) : foot, at);
        if (id === 'bottom') return [[what, up, add(subtract(datum, side), endOf('bottom', 'bottom'))]];
        const shelf = c.inside.find((i) => id === i.id || id === `${i.id}b`);
        if (!shelf) throw new Error(`${what}: what stands there`);
        return [[what, up, sum([datum, shelf.at ?? zero, endOf(shelf.id, 'shelf')])]];
      }
      const past = (part === 'bottom' ? c.bottomPast : c.topPast) ?? zero;
      const isOver = (part === 'bottom' ? c.bottomJoint : c.topJoint) === 'over';
      if (id === 'left') return [[what, subtract(at, past), endOf('left', part)]];
      if (id === 'right')
        return [[what, subtract(add(outside, past), at), subtract(outside, endOf('right', part))]];
      const begins = isOver ? subtract(zero, past) : side;
      const no = Number(id.slice(1));
      expect(walls[no]?.role).toBe(`partition${no}`);
      return [
        [what, add(begins, at), add(drawnLeft(c, side, own, no), endOf(`partition${no}`, 'partition'))],
      ];
    },
  );
}

test.each(['dowel', 'biscuit'] as const)(
  'assembled, every %s in a face meets one in an end, at one height or width, front to back alike',
  (by) => {
    let met = 0;
    fc.assert(
      fc.property(
        anyJob,
        fc.constantFrom('butt', 'over' as const),
        fc.constantFrom('butt', 'over' as const),
        ({ job, c: any }, bottom, topJoint) => {
          const onFloor = (any.feet?.n ?? 0n) === 0n && !any.hasPlinth;
          const c: Case = {
            ...any,
            hold: 'outside',
            bays: [],
            hasPlinth: false,
            bottomJoint: onFloor ? bottom : 'butt',
            topJoint,
            bottomRightJoint: undefined,
            topRightJoint: undefined,
            partitionJoint: 'butt',
            shelfJoint: 'butt',
          };
          const joins = meetings.map((at) => ({ id: `j${at}`, by, of: 'c', at }));
          const plan = planOf({ ...job, cases: [c], joins }, shop);
          if (!plan.worked.get('c')?.ok || plan.operations.some((op) => op.cannot)) return;
          const all = boredIn(plan);
          const thick = { side: job.stock[0]?.used, shelf: job.stock[1]?.used, back: job.stock[2]?.used };
          const pieces = cutPieces(plan, shop);
          const standing = assembled(c, pieces, (role) => thick[role] ?? zero);
          // the mark of the bottom and that of what stands on it
          const bound = grainOf(job.tape);
          const off = pairs(standing, all).filter(([, a, b]) => subtract(a, b).abs().compare(bound) > 0);
          expect(off.map(([what, a, b]) => `${what}: ${subtract(a, b).toFraction(true)}`)).toEqual([]);
          const ends = all.flatMap(({ row }) => (row.in.at === 'ends' ? row.in.named : []));
          expect(ends).toHaveLength(all.filter(({ row }) => row.in.at === 'face').length);
          for (const { part, row } of all) {
            const last = row.marks[row.marks.length - 1] ?? zero;
            const wide = pieces.get(`c~${part}`)?.wide ?? zero;
            expect(add(last, half(row.long ?? row.thick)).compare(wide) < 0).toBe(true);
            const own = plan.parts.find((p) => p.id === `c~${part}`)?.thickness ?? zero;
            const most = subtract(own, left[unitsOf(job.tape)][by]);
            if (row.in.at === 'face') expect(row.deep.compare(most) <= 0).toBe(true);
            met += 1;
          }
        },
      ),
      { numRuns: runs(100) },
    );
    expect(met).toBeGreaterThan(200);
  },
  3_600_000,
);
