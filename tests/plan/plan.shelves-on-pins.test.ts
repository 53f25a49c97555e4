import fc from 'fast-check';
import { expect, test } from 'vitest';
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
  negate,
  subtract,
  times,
  zero,
} from '../../src/length/length';
import { toStored } from '../../src/length/stored';
import { grainOf, markAt } from '../../src/length/tape';
import { type Plan, planOf } from '../../src/plan/plan';
import type { Inside } from '../../src/trade/carcass/case';
import type { Operation } from '../../src/trade/setups/operation';
import { type Bore, rowTape } from '../../src/trade/shelves/bore';
import { stripsOf } from '../../src/trade/shelves/strips';
import { runs } from '../runs';
import { anyJob, assembled, at, footOf, type Standing, shop } from './assembled';
import { cutPieces, handOnMachine } from './cut-pieces';

const eighths = (least: number, most: number) =>
  fc.integer({ min: least, max: most }).map((n) => inches(BigInt(n), 8n));

/** Loose shelves on pins in one bay of the case, in rows of their own or 32 mm apart. */
const anyShelves = fc
  .record({
    bay: fc.integer({ min: 1, max: 3 }),
    heldBy: fc.constantFrom('pins', 'lines', 'strips' as const),
    bore: fc.constantFrom('press', 'template' as const),
    first: at(2, 6),
    pitch: at(1, 4),
    endRoom: at(1, 6),
    front: eighths(8, 24),
    behind: eighths(8, 24),
    depth: fc.constantFrom(inches(1n, 4n), fromMillimetres(6n)),
    width: fc.constantFrom(inches(1n, 4n), inches(5n, 8n)),
    stripThick: fc.constantFrom(inches(3n, 16n), inches(17n, 64n)),
    flange: fc.constantFrom(zero, inches(1n, 16n), fromMillimetres(2n)),
    play: fc.constantFrom(inches(1n, 32n), inches(1n, 16n)),
    band: fc.constantFrom(zero, inches(1n, 4n), inches(127n, 1000n)),
  })
  // a hole as wide as a strip would touch the next
  .map(
    ({ width, bay, ...own }): Inside => ({
      id: 'pins',
      kind: 'loose',
      bay,
      ...own,
      ...(own.heldBy === 'strips' ? { width } : {}),
    }),
  );

const pinnedJob = fc.tuple(anyJob, anyShelves).map(([{ job, c }, shelves]) => {
  const own = { ...shelves, bay: Math.min(shelves.bay, c.partitions + 1) };
  const inside = [...c.inside.filter(({ kind }) => kind === 'fixed'), own];
  // its edging out of the thicker sheet, as if that were a stick
  const pinned = { ...c, inside, stocks: { ...c.stocks, shelfedge: 'a' } };
  return { job: { ...job, cases: [pinned] } as Job, c: pinned, shelves: own };
});

type Row = { readonly op: Operation; readonly bore: Bore; readonly wall: string };

const rowsOf = (plan: Plan): readonly Row[] =>
  plan.operations.flatMap((op) =>
    op.which?.is === 'row' ? [{ op, bore: op.which.bore, wall: op.part.slice('c~'.length) }] : [],
  );

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
    { numRuns: runs(100) },
  );
  return stood;
}

/** Every hole of a bay has one it faces, in both rows, level within a mark, and the four do not rock. */
function levelAndStill({ job, standing, rows }: Stood): void {
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
}

/** No hole is bored into a groove as it was cut, nor nearer than the wood that should stay. */
function clearOfGrooves({ job, standing, rows }: Stood): void {
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
}

/** A shelf goes in with its play and its pins, and no shorter than a mark. */
function shelfGoesIn({ job, shelves, standing }: Stood): void {
  const [left, right] = [standing.walls[shelves.bay - 1], standing.walls[shelves.bay]];
  if (!left || !right) throw new Error('no bay');
  const bay = subtract(right.left, left.right);
  const thick = subtract(shelves.stripThick ?? zero, shelves.depth ?? zero);
  const proud = shelves.heldBy === 'strips' ? longest(zero, thick) : (shelves.flange ?? zero);
  const free = times(add(proud, shelves.play ?? zero), 2n);
  const over = subtract(bay, add(standing.piece('pins').long, free));
  // cut with what its mark leaves it is exact; the walls stand within half a mark
  expect(less(half(grainOf(job.tape)), absolute(over))).toBe(false);
}

/** Both walls are bored in their own hand, at the press and under a template. */
function inTheirHands({ rows, plan }: Stood): void {
  for (const { op, bore, wall } of rows) {
    const end = plan.parts.find((p) => p.id === op.part)?.end ?? '';
    // the left side and a partition's right face look right: see the hands of the grooves
    const hands = { left: -1, right: 1, A: 1, B: -1 } as const;
    const want = wall === 'left' || wall === 'right' ? hands[wall] : hands[bore.face];
    expect(`${op.id} ${handOnMachine(op, end)}`).toBe(`${op.id} ${want}`);
  }
}

/** As deep as the inside with no room said: the core, and the edging ripped for it where it has some. */
function insideDeep(standing: Standing, { band = zero }: Inside): Length {
  return add(standing.piece('pins').wide, isZero(band) ? zero : standing.piece('pins~edge').wide);
}

/** Edging covers the front of its shelf from end to end, and is ripped to what was said of it. */
function edgingCovers({ shelves, standing }: Stood): void {
  const { band = zero } = shelves;
  if (isZero(band)) return;
  const [shelf, edge] = [standing.piece('pins'), standing.piece('pins~edge')];
  expect([isZero(subtract(edge.long, shelf.long)), isZero(subtract(edge.wide, band))]).toEqual([true, true]);
}

/** Strips stand in the openings between the fixed shelves as those stand, with what they are short left over them. */
function stripsBetween({ shelves, standing, plan, job }: Stood): void {
  const found = plan.worked.get('c');
  const strips = found?.ok ? stripsOf(found.value.sizes, shelves) : undefined;
  // a tongue does not say where the middle of its shelf is
  if (!strips || !found?.ok || found.value.sizes.case.shelfJoint === 'tongue') return;
  const { sizes, parts } = found.value;
  const own = sizes.case.inside.filter((i) => i.kind === 'fixed' && i.bay === shelves.bay);
  const wall = shelves.bay === 1 ? 'left' : `partition${shelves.bay - 1}`;
  const foot = footOf(standing, wall);
  const floor = add(foot, parts.find(({ id }) => id === `c~${wall}`)?.board?.datum ?? zero);
  // each shelf as it stands in its wall: over one strip, under the next
  const faces = own.flatMap(({ id }) => {
    const name = shelves.bay === 1 ? id : `${id}b`;
    const cut = standing.piece(wall).grooves.get(name);
    if (!cut) return [];
    const middle = add(foot, half(add(cut.lo, cut.hi)));
    return [
      {
        low: subtract(middle, half(standing.thick('shelf'))),
        high: add(middle, half(standing.thick('shelf'))),
      },
    ];
  });
  if (faces.length < own.length) return;
  expect(strips.pieces).toHaveLength(own.length + 1);
  const free = shelves.endRoom ?? zero;
  for (const { low, long } of strips.pieces) {
    const [from, to] = [add(floor, low), add(add(floor, low), long)];
    for (const face of faces) {
      const over = subtract(face.low, to);
      const under = subtract(from, face.high);
      // half a mark for the dado, half a mark for what the floor of the case stands on
      const clear = !less(over, subtract(free, grainOf(job.tape))) || !less(under, negate(grainOf(job.tape)));
      expect([wall, toStored(low), clear]).toEqual([wall, toStored(low), true]);
    }
  }
}

/** The rear row is as far from the back as said, 32 mm lines a whole number of steps behind the front. */
function rearRow({ shelves, standing, rows }: Stood): void {
  const [front, rear] = ['front', 'rear'].map((name) => rows.find(({ bore }) => bore.row === name)?.bore);
  if (!front || !rear) return;
  const inner = insideDeep(standing, shelves);
  const behind = subtract(inner, rear.off);
  if (shelves.heldBy === 'pins') {
    expect(isZero(subtract(behind, shelves.behind ?? zero))).toBe(true);
  } else {
    const steps = subtract(rear.off, front.off).div(fromMillimetres(32n));
    expect(steps.d).toBe(1n);
    expect(less(behind, shelves.behind ?? zero)).toBe(false);
    expect(less(behind, add(shelves.behind ?? zero, fromMillimetres(32n)))).toBe(true);
  }
}

/** The grooves of strips face each other in both walls, in the hand of each. */
function stripsFace({ shelves, standing, plan }: Stood): void {
  if (shelves.heldBy !== 'strips') return;
  const inner = insideDeep(standing, shelves);
  for (const row of ['front', 'rear'] as const) {
    const ops = plan.operations.filter(({ id }) => id.includes(`/along~pins~${row}/`));
    expect(ops).toHaveLength(2);
    const [a, b] = ops;
    expect(a?.setup.key).toBe(b?.setup.key);
    for (const op of ops) {
      const near = add(op.setup.figure?.value ?? zero, op.setup.figure?.rest ?? zero);
      const behind = subtract(inner, add(near, op.setup.cutter ?? zero));
      expect(
        isZero(subtract(row === 'front' ? near : behind, shelves[row === 'front' ? row : 'behind'] ?? zero)),
      ).toBe(true);
      const wall = op.part.slice('c~'.length);
      const hands = { left: -1, right: 1, A: 1, B: -1 } as const;
      const face = op.name.copy === 'B' ? 'B' : 'A';
      expect(`${op.id} ${handAlong(op)}`).toBe(
        `${op.id} ${wall === 'left' || wall === 'right' ? hands[wall] : hands[face]}`,
      );
    }
  }
}

const checks = [
  levelAndStill,
  clearOfGrooves,
  shelfGoesIn,
  inTheirHands,
  rearRow,
  stripsFace,
  stripsBetween,
  edgingCovers,
];

// 10,000 of a night take minutes where two share a core; nothing rests on how many
test('loose shelves on pins or strips stand level, go in, and leave their wood, however the case is built', () => {
  const seen = { rows: 0, strips: 0 };
  const stood = each((made) => {
    for (const check of checks) check(made);
    if (made.shelves.heldBy === 'strips') seen.strips += 1;
    else seen.rows += made.rows.length;
  });
  expect(stood).toBeGreaterThan(30);
  expect(seen.rows).toBeGreaterThan(40);
  expect(seen.strips).toBeGreaterThan(5);
}, 3_600_000);

/**
 * The hand a groove along the front edge makes of its piece, as `handOnMachine` says it of one across. The front edge
 * is on a rip fence at your right, the cut face down, what leads away from you: bottom to top is away or toward, front
 * to back left, out of the face down, and their box has the sign below.
 */
function handAlong({ placing }: Operation): number {
  if (placing?.onFence?.named !== 'front' || placing.face?.lies !== 'down' || !placing.leads) return 0;
  const upward = placing.leads.named === 'bottom' ? -1 : 1; // along y
  const [frontToBack, out] = [-1, -1]; // along x, along z
  // |0 u 0; f 0 0; 0 0 o| = −u f o
  return -upward * frontToBack * out;
}
