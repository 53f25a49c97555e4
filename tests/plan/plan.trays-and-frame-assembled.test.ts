import fc from 'fast-check';
import { expect, test } from 'vitest';
import { add, half, inches, type Length, subtract, sum, times, zero } from '../../src/length/length';
import { grainOf } from '../../src/length/tape';
import { planOf } from '../../src/plan/plan';
import { runs } from '../runs';
import {
  anyJob,
  assembled,
  at,
  footOf,
  middleOf,
  type Standing,
  thousandths,
  shop as usual,
} from './assembled';
import { type CutPiece, cutPieces } from './cut-pieces';

const shop = { ...usual, bit: inches(1n, 8n) };

/** Shallow trays in grooves of a bay, and a face frame with a rail in it: sizes off the marks of any tape. */
const more = fc.record({
  bay: fc.integer({ min: 1, max: 3 }),
  first: at(1, 3),
  pitch: at(8, 14),
  depth: fc.constantFrom(inches(3n, 16n), inches(5n, 32n), inches(197n, 1000n)),
  slack: fc.constantFrom(zero, inches(1n, 32n), inches(3n, 64n)),
  tray: thousandths(180, 260),
  overhang: fc.constantFrom(zero, inches(3n, 16n), inches(1n, 127n)),
  stile: at(1, 2),
  middle: at(1, 2),
  rail: at(1, 2),
  frameHow: fc.constantFrom(undefined, 'floor' as const),
  frameMeets: fc.constantFrom(undefined, 'lap' as const),
  frameClear: at(0, 1),
  frameSill: fc.constantFrom(undefined, inches(1n, 127n), inches(-1n, 8n)),
  frameToe: at(1, 3),
});

const framedJob = fc.tuple(anyJob, more).map(([{ job, c }, m]) => {
  const stick = { kind: 'stick' as const, readings: [inches(3n, 4n)], readingIds: ['r'], badPlaces: [] };
  const trays = {
    id: 't',
    kind: 'trays' as const,
    bay: Math.min(m.bay, c.partitions + 1),
    first: m.first,
    pitch: m.pitch,
    endRoom: inches(3n),
    width: add(m.tray, inches(1n, 32n)),
    depth: m.depth,
    slack: m.slack,
  };
  const framed = {
    ...c,
    // a fixed shelf would stand in the trays of its bay
    inside: [...c.inside.filter((i) => i.bay !== trays.bay && i.kind === 'loose'), trays],
    hasFrame: true,
    overhang: m.overhang,
    frameHow: m.frameHow,
    frameMeets: m.frameMeets,
    frameClear: m.frameClear,
    frameSill: m.frameSill,
    frameToe: m.frameToe,
    stile: m.stile,
    middle: m.middle,
    topRail: m.rail,
    bottomRail: m.rail,
    stocks: { ...c.stocks, tray: 't', frame: 'f' },
  };
  const stock = [
    ...job.stock,
    { id: 't', name: '', ...stick, kind: 'sheet' as const, readings: [m.tray], used: m.tray },
    { id: 'f', name: '', ...stick, used: inches(3n, 4n) },
  ];
  // a cutter or a bit of 1/2 goes into no groove for a tray
  const parts = Object.fromEntries(
    Object.entries(job.parts).map(([id, own]) => [
      id,
      { ...own, ...(own.cutter ? { cutter: inches(1n, 8n) } : {}) },
    ]),
  );
  return { job: { ...job, stock, parts, cases: [framed] }, c: framed, trays };
});

/** Middles of the grooves of a run in a piece, from its reference end, by their number. */
const runIn = (piece: CutPiece, run: string): ReadonlyMap<string, Length> =>
  new Map(
    [...piece.grooves.keys()]
      .filter((name) => name.startsWith(`${run}~`))
      .map((name) => [name.slice(run.length), middleOf(piece, name)]),
  );

/** The walls of a bay with the runs of their facing sides, and how far each one's foot stands from the floor. */
function wallsOf(standing: Standing, bay: number) {
  const { walls, piece } = standing;
  return [walls[bay - 1], walls[bay]].flatMap((wall, k) => {
    if (!wall) return [];
    const own = piece(wall.role);
    const inner = wall.role.startsWith('partition');
    const foot = footOf(standing, wall.role);
    const run = inner && k === 0 ? 'tb' : 't';
    return { own, foot, run, wall };
  });
}

test('cut as printed, every tray lies level in its grooves and goes in with its slack', () => {
  let lay = 0;
  fc.assert(
    fc.property(framedJob, ({ job, c, trays }) => {
      const plan = planOf(job, shop);
      if (!plan.worked.get('c')?.ok || plan.operations.some((op) => op.cannot)) return;
      const thick = { side: job.stock[0]?.used, shelf: job.stock[1]?.used, back: job.stock[2]?.used };
      const pieces = cutPieces(plan, shop);
      const standing = assembled(c, pieces, (role) => thick[role] ?? zero);
      const bound = half(grainOf(job.tape));
      const [left, right] = wallsOf(standing, trays.bay);
      if (!left || !right) throw new Error('no walls');
      const [lefts, rights] = [runIn(left.own, left.run), runIn(right.own, right.run)];
      expect([...lefts.keys()]).toEqual([...rights.keys()]);
      for (const [name, middle] of lefts) {
        const across = add(rights.get(name) ?? zero, right.foot);
        const tilt = subtract(add(middle, left.foot), across);
        expect(`${name} ${tilt.abs().compare(bound) <= 0}`).toBe(`${name} true`);
        lay += 1;
      }
      if (lefts.size === 0) return;
      // from groove floor to groove floor, less the slack
      const bay = subtract(right.wall.left, left.wall.right);
      const room = add(bay, times(trays.depth, 2n));
      const off = subtract(subtract(room, trays.slack), standing.piece('t').long);
      expect(off.abs().compare(bound) <= 0).toBe(true);
    }),
    { numRuns: runs(30) },
  );
  expect(lay).toBeGreaterThan(8);
});

test('cut as printed, a face frame meets the case at its edges, and its rails and stiles close', () => {
  let stood = 0;
  let floored = 0;
  fc.assert(
    fc.property(framedJob, ({ job, c }) => {
      const plan = planOf(job, shop);
      if (!plan.worked.get('c')?.ok || plan.operations.some((op) => op.cannot)) return;
      stood += 1;
      const thick = { side: job.stock[0]?.used, shelf: job.stock[1]?.used, back: job.stock[2]?.used };
      const standing = assembled(c, cutPieces(plan, shop), (role) => thick[role] ?? zero);
      const { piece, outside } = standing;
      const within = (by: Length) => by.abs().compare(half(grainOf(job.tape))) <= 0;
      const lapped = c.frameMeets === 'lap';
      const wide = add(piece('railtop').long, lapped ? zero : times(piece('stile').wide, 2n));
      expect(within(subtract(wide, add(outside, times(c.overhang, 2n))))).toBe(true);
      expect(within(subtract(piece('railtop').long, piece('railbottom').long))).toBe(true);
      // from under the bottom, or clear of the floor, to the top of the case
      const down = c.frameHow === 'floor';
      const feet = c.hasPlinth ? zero : (c.feet ?? zero);
      const low = down ? c.frameClear : feet;
      expect(within(subtract(piece('stile').long, subtract(standing.highest, low)))).toBe(true);
      // to the floor the bottom rail ends at its sill over the bottom as it stands
      const railLow = down ? c.frameToe : feet;
      const sill = add(standing.datum, c.frameSill ?? zero);
      if (down) {
        floored += 1;
        expect(within(subtract(add(railLow, piece('railbottom').wide), sill))).toBe(true);
      }
      if (c.partitions > 0) {
        const railTop = down ? sill : add(railLow, piece('railbottom').wide);
        const high = lapped
          ? add(railLow, piece('middle').long)
          : sum([railTop, piece('middle').long, piece('railtop').wide]);
        expect(within(subtract(high, standing.highest))).toBe(true);
      }
    }),
    { numRuns: runs(60) },
  );
  expect(stood).toBeGreaterThan(4);
  expect(floored).toBeGreaterThan(0);
});

/**
 * The pieces of a half-lapped frame where they stand, from its left edge and the lower edge of its bottom rail: at
 * each crossing what is left of the rail and what is left of the upright fill the thickness, over the same places.
 */
function crossingsOff(standing: Standing, c: { readonly overhang: Length }): ReadonlyMap<string, Length> {
  const { piece, walls } = standing;
  const off = new Map<string, Length>();
  const stile = piece('stile');
  const inner = walls.slice(1, -1);
  const uprights = [
    { role: 'stile', left: zero, lap: 'lapleft' },
    ...inner.map(({ left, right }, k) => ({
      role: 'middle',
      left: subtract(add(c.overhang, half(add(left, right))), half(piece('middle').wide)),
      lap: `lapmiddle${k + 1}`,
    })),
    { role: 'stile', left: subtract(piece('railtop').long, stile.wide), lap: 'lapright' },
  ];
  for (const { role, left, lap } of uprights)
    for (const [end, railRole] of [
      ['lapbottom', 'railbottom'],
      ['laptop', 'railtop'],
    ] as const) {
      const [upright, rail] = [piece(role), piece(railRole)];
      const [across, up] = [rail.laps.get(lap), upright.laps.get(end)];
      const name = `${railRole} ${lap}`;
      if (!across || !up) throw new Error(`no lap: ${name}`);
      off.set(`${name} at`, subtract(across.near, left));
      off.set(`${name} as wide as the upright`, subtract(across.long, upright.wide));
      off.set(`${role} ${end} as long as the rail is wide`, subtract(up.long, rail.wide));
      // stick of 3/4
      off.set(`${name} fills the thickness`, subtract(add(across.deep, up.deep), inches(3n, 4n)));
      // the stack is in the table: a rail lies on the face that is seen, an upright on the other
      off.set(`${name} flush in front`, across.show === 'down' && up.show === 'up' ? zero : inches(1n));
    }
  const top = stile.laps.get('laptop');
  off.set('stile to the top', subtract(add(top?.near ?? zero, top?.long ?? zero), stile.long));
  return off;
}

test('cut as printed, the laps of a half-lapped frame fill each other, middle stiles on their partitions', () => {
  let lapped = 0;
  let middles = 0;
  let floored = 0;
  fc.assert(
    fc.property(framedJob, ({ job, c }) => {
      if (c.frameMeets !== 'lap') return;
      const plan = planOf(job, shop);
      if (!plan.worked.get('c')?.ok || plan.operations.some((op) => op.cannot)) return;
      lapped += 1;
      if (c.partitions > 0) middles += 1;
      const thick = { side: job.stock[0]?.used, shelf: job.stock[1]?.used, back: job.stock[2]?.used };
      const standing = assembled(c, cutPieces(plan, shop), (role) => thick[role] ?? zero);
      const bound = half(grainOf(job.tape));
      for (const [what, by] of crossingsOff(standing, c))
        expect(`${what} ${by.abs().compare(bound) <= 0}`).toBe(`${what} true`);
      // a lower rail over the ends of the stiles: their laps begin as far up as it hangs over them
      const low = standing.piece('stile').laps.get('lapbottom')?.near ?? zero;
      const down = c.frameHow === 'floor';
      if (down) floored += 1;
      expect(low.equals(down ? subtract(c.frameToe, c.frameClear) : zero)).toBe(true);
      const shut = sum([low, standing.piece('railbottom').wide, standing.piece('railtop').wide]);
      expect(shut.compare(standing.piece('stile').long)).toBeLessThan(0);
    }),
    { numRuns: runs(60) },
  );
  expect(lapped).toBeGreaterThan(6);
  expect(middles).toBeGreaterThan(0);
  expect(floored).toBeGreaterThan(0);
});
