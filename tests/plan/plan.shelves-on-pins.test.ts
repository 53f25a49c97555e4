import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Job } from '../../src/job/job';
import {
  absolute,
  add,
  fromMillimetres,
  half,
  inches,
  isZero,
  type Length,
  less,
  longest,
  subtract,
  times,
  zero,
} from '../../src/length/length';
import { grainOf, markAt } from '../../src/length/tape';
import { type Plan, planOf } from '../../src/plan/plan';
import type { Inside } from '../../src/trade/carcass/case';
import type { Operation } from '../../src/trade/setups/operation';
import { type Bore, rowTape } from '../../src/trade/shelves/bore';
import { runs } from '../runs';
import { anyJob, assembled, at, type Standing, shop } from './assembled';
import { cutPieces, handOnMachine } from './cut-pieces';

const eighths = (least: number, most: number) =>
  fc.integer({ min: least, max: most }).map((n) => inches(BigInt(n), 8n));

/** Loose shelves on pins in one bay of the case, in rows of their own or 32 mm apart. */
const anyShelves = fc
  .record({
    bay: fc.integer({ min: 1, max: 3 }),
    heldBy: fc.constantFrom('pins', 'lines' as const),
    bore: fc.constantFrom('press', 'template' as const),
    first: at(2, 6),
    pitch: at(1, 4),
    endRoom: at(1, 6),
    front: eighths(8, 24),
    behind: eighths(8, 24),
    depth: fc.constantFrom(inches(1n, 4n), fromMillimetres(6n)),
    flange: fc.constantFrom(zero, inches(1n, 16n), fromMillimetres(2n)),
    play: fc.constantFrom(inches(1n, 32n), inches(1n, 16n)),
  })
  .map(({ bay, ...own }): Inside => ({ id: 'pins', kind: 'loose', bay, ...own }));

const pinnedJob = fc.tuple(anyJob, anyShelves).map(([{ job, c }, shelves]) => {
  const own = { ...shelves, bay: Math.min(shelves.bay, c.partitions + 1) };
  const inside = [...c.inside.filter(({ kind }) => kind === 'fixed'), own];
  const pinned = { ...c, inside };
  return { job: { ...job, cases: [pinned] } as Job, c: pinned, shelves: own };
});

type Row = { readonly op: Operation; readonly bore: Bore; readonly wall: string };

const rowsOf = (plan: Plan): readonly Row[] =>
  plan.operations.flatMap((op) =>
    op.which?.is === 'row' ? [{ op, bore: op.which.bore, wall: op.part.slice('c~'.length) }] : [],
  );

/** The lower end of a wall over the floor, as it stands: a side on it, a partition in the bottom. */
function footOf({ piece, datum }: Standing, wall: string): Length {
  if (!wall.startsWith('partition')) return zero;
  const seat = piece('bottom').grooves.get(wall.replace('partition', 'p'));
  return subtract(datum, seat?.deep ?? zero);
}

type Stood = {
  readonly job: Job;
  readonly shelves: Inside;
  readonly plan: Plan;
  readonly standing: Standing;
  readonly rows: readonly Row[];
};

/** Each job that can be built, put together at exact places. */
function each(check: (stood: Stood) => void): number {
  let stood = 0;
  fc.assert(
    fc.property(pinnedJob, ({ job, c, shelves }) => {
      const plan = planOf(job, shop);
      if (!plan.worked.get('c')?.ok || plan.operations.some((op) => op.cannot)) return;
      const thick = { side: job.stock[0]?.used, shelf: job.stock[1]?.used, back: job.stock[2]?.used };
      const standing = assembled(c, cutPieces(plan, shop), (role) => thick[role] ?? zero);
      stood += 1;
      check({ job, shelves, plan, standing, rows: rowsOf(plan) });
    }),
    { numRuns: runs(60) },
  );
  return stood;
}

describe('loose shelves on pins', () => {
  test('every hole of a bay has one it faces, in both rows, level within a mark, and the four do not rock', () => {
    const stood = each(({ job, standing, rows }) => {
      for (const row of ['front', 'rear'] as const) {
        const walls = rows.filter(({ bore }) => bore.row === row);
        expect(walls.length === 0 || walls.length === 2).toBe(true);
        const [a, b] = walls;
        if (!a || !b) continue;
        // one setting, both off the front edge
        expect(a.op.setup.key).toBe(b.op.setup.key);
        expect(a.bore.holes.map(({ no }) => no)).toEqual(b.bore.holes.map(({ no }) => no));
        const tape = rowTape(a.bore, job.tape);
        const high = ({ bore, wall }: Row, k: number) =>
          add(footOf(standing, wall), markAt(bore.holes[k]?.at ?? zero, tape).value);
        // half a mark in either wall, half a mark where the bottom lies
        const most = add(grainOf(tape), half(grainOf(job.tape)));
        for (const k of a.bore.holes.keys())
          expect(less(most, absolute(subtract(high(a, k), high(b, k))))).toBe(false);
      }
      // front and rear of a wall share their marks: |FL + BR − FR − BL| = 0
      const [fl, bl] = rows.filter(({ wall }) => wall === rows[0]?.wall);
      if (fl && bl) expect(fl.bore.holes).toEqual(bl.bore.holes);
    });
    expect(stood).toBeGreaterThan(20);
  });

  test('no hole is bored into a groove as it was cut, nor nearer than the wood that should stay', () => {
    const stood = each(({ job, standing, rows }) => {
      for (const { bore, wall } of rows) {
        for (const [name, cut] of standing.piece(wall).grooves) {
          // the two faces of a partition: what stands in its right one has a name that ends so
          if (wall.startsWith('partition') && (name.endsWith('b') ? 'B' : 'A') !== bore.face) continue;
          const least = subtract(longest(inches(1n, 4n), bore.dia), grainOf(job.tape));
          for (const { at: middle } of bore.holes) {
            const [low, high] = [subtract(middle, half(bore.dia)), add(middle, half(bore.dia))];
            const clear = !less(subtract(cut.lo, high), least) || !less(subtract(low, cut.hi), least);
            expect([wall, name, clear]).toEqual([wall, name, true]);
          }
        }
      }
    });
    expect(stood).toBeGreaterThan(20);
  });

  test('a shelf goes in with its play and its pins, and no shorter than a mark', () => {
    const stood = each(({ job, shelves, standing }) => {
      const [left, right] = [standing.walls[shelves.bay - 1], standing.walls[shelves.bay]];
      if (!left || !right) throw new Error('no bay');
      const bay = subtract(right.left, left.right);
      const free = times(add(shelves.flange ?? zero, shelves.play ?? zero), 2n);
      const over = subtract(bay, add(standing.piece('pins').long, free));
      // cut with what its mark leaves it is exact; the walls stand within half a mark
      expect(less(half(grainOf(job.tape)), absolute(over))).toBe(false);
    });
    expect(stood).toBeGreaterThan(20);
  });

  test('both walls are bored in their own hand, at the press and under a template', () => {
    let bored = 0;
    each(({ rows, plan }) => {
      for (const { op, bore, wall } of rows) {
        const end = plan.parts.find((p) => p.id === op.part)?.end ?? '';
        // the left side and a partition's right face look right: see the hands of the grooves
        const hands = { left: -1, right: 1, A: 1, B: -1 } as const;
        const want = wall === 'left' || wall === 'right' ? hands[wall] : hands[bore.face];
        expect(`${op.id} ${handOnMachine(op, end)}`).toBe(`${op.id} ${want}`);
        bored += 1;
      }
    });
    expect(bored).toBeGreaterThan(40);
  });

  test('the rear row is as far from the back as said, 32 mm lines a whole number of steps behind the front', () => {
    each(({ shelves, standing, rows }) => {
      const [front, rear] = ['front', 'rear'].map((name) => rows.find(({ bore }) => bore.row === name)?.bore);
      if (!front || !rear) return;
      // a shelf with no room said goes as far back as the inside does
      const inner = standing.piece('pins').wide;
      const behind = subtract(inner, rear.off);
      if (shelves.heldBy === 'pins') {
        expect(isZero(subtract(behind, shelves.behind ?? zero))).toBe(true);
      } else {
        const steps = subtract(rear.off, front.off).div(fromMillimetres(32n));
        expect(steps.d).toBe(1n);
        expect(less(behind, shelves.behind ?? zero)).toBe(false);
        expect(less(behind, add(shelves.behind ?? zero, fromMillimetres(32n)))).toBe(true);
      }
    });
  });
});
