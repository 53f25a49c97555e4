import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { forDrawing } from '../../../src/length/length';
import {
  doorPlace,
  doorSwing,
  type Floor,
  type PlacedDoor,
  standsBefore,
} from '../../../src/trade/room/door-swing';
import { runs } from '../../runs';
import { between, l, refusal, spelled, value } from './sample';

const stands = { from: l('1/2'), wide: l('38'), deep: l('18') };
const floor: Floor = { wide: l('96'), deep: l('40'), stands };
const door: PlacedDoor = {
  wall: 'front',
  from: l('10'),
  width: l('30'),
  leaf: l('30'),
  hung: 'begin',
  opens: 'in',
};
const grain = l('1/16');
const told = (more: Partial<PlacedDoor>, on: Partial<Floor> = {}) =>
  spelled(doorSwing({ ...door, ...more }, { ...floor, ...on }, grain));

describe('doorSwing', () => {
  test('Example 16 of room: a leaf of 30 in the wall 40 away meets the face of the case, 22 off its wall', () => {
    // out from the wall 40 - 18 = 22 to 40; along from the hinge at 10: -9 1/2 to 28 1/2. 22² = 484 < 900, and
    // 28 1/2² + 484 >= 900: the edge meets the face at 22. √(900 - 484) = 20.396, + 9 1/2 = 29.896: 29 15/16 to the
    // right; or its right side behind the hinge: 28 1/2 to the left, of which 1/2 is there
    expect(told({})).toEqual({
      code: 'strikes',
      opensTo: '22',
      moves: [
        { toward: 'right', by: '29 15/16' },
        { toward: 'left', by: '28 1/2', short: '28' },
      ],
    });
  });

  test('a leaf longer than the corner it meets: as far as its edge then stands off its wall, down', () => {
    // a case of 12: its corner at 2 1/2 along, 22 out, √490.25 = 22.142 off the hinge; 30 · 22 / 22.142 = 29.808
    expect(told({}, { stands: { ...stands, wide: l('12') } })).toMatchObject({ opensTo: '29 3/4' });
  });

  test('in a side wall: hung away from the case or next to it', () => {
    // room 60 wide: 60 - 38 1/2 = 21 1/2 off the wall. Hinge at 36: 18² + 21 1/2² = 786 1/4 < 900;
    // √(900 - 324) = 24, so 2 1/2 to the left, of which 1/2 is there
    const right = { wall: 'right', from: l('6') } as const;
    const narrow = { wide: l('60'), deep: undefined };
    expect(told({ ...right, hung: 'end' }, narrow)).toEqual({
      code: 'strikes',
      opensTo: '21 1/2',
      moves: [{ toward: 'left', by: '2 1/2', short: '2' }],
    });
    // hinge at 6: corner at 12 along, 21 1/2 out: 30 · 21.5 / √606.25 = 26.196; 30 - 21 1/2 = 8 1/2
    expect(told({ ...right, hung: 'begin' }, narrow)).toEqual({
      code: 'strikes',
      opensTo: '26 3/16',
      moves: [{ toward: 'left', by: '8 1/2', short: '8' }],
    });
    // the same to the left of a case that stands 21 1/2 off that wall: it moves right
    const far = { ...narrow, stands: { ...stands, from: l('21 1/2') } };
    expect(told({ ...right, wall: 'left', hung: 'end' }, far)).toMatchObject({
      moves: [{ toward: 'right', by: '2 1/2', short: '2' }],
    });
  });

  test('clear, by how much; behind its hinge, and out of the room, nothing is asked', () => {
    // in the case's own wall, hinge at 90: 90 - 38 1/2 - 30 = 21 1/2
    const back = { wall: 'back', from: l('60') } as const;
    expect(told({ ...back, hung: 'end' })).toEqual({ code: 'clear', spare: '21 1/2' });
    expect(told({ ...back, hung: 'begin' })).toEqual({ code: 'away' });
    expect(told({ opens: 'out' })).toEqual({ code: 'away' });
    // just touching is clear: a room 48 deep leaves 48 - 18 = 30
    expect(told({}, { deep: l('48') })).toEqual({ code: 'clear', spare: '0' });
    expect(told({}, { deep: undefined })).toBeUndefined();
  });
});

describe('doorPlace', () => {
  test('an opening past the other corner, and one wider than its wall', () => {
    // 96 - 30 = 66
    expect(refusal(doorPlace({ ...door, from: l('70') }, floor))).toEqual({
      code: 'past-corner',
      by: '4',
      most: '66',
    });
    expect(refusal(doorPlace({ ...door, wall: 'left', width: l('42') }, floor))).toEqual({
      code: 'wider-than-wall',
      by: '2',
      most: '40',
    });
    expect(value(doorPlace({ ...door, from: l('66') }, floor))).toBeNull();
    expect(value(doorPlace({ ...door, wall: 'left', from: l('200') }, { wide: l('96') }))).toBeNull();
  });
});

describe('standsBefore', () => {
  test('an opening in its own wall, or in a side wall it is fitted to', () => {
    // 38 1/2 - 30
    expect(spelled(standsBefore({ ...door, wall: 'back', from: l('30') }, floor))).toBe('8 1/2');
    // 18 - 6, 1/2 off the wall; nothing at the right, 57 1/2 off it
    expect(spelled(standsBefore({ ...door, wall: 'left', from: l('6') }, floor))).toBe('12');
    expect(standsBefore({ ...door, wall: 'right', from: l('6') }, floor)).toBeUndefined();
    expect(standsBefore({ ...door, wall: 'back', from: l('38 1/2') }, floor)).toBeUndefined();
  });
});

type Flat = readonly [x: number, y: number];

/** The hinge, and the ways the shut and the open leaf lie, in the room: said anew, wall by wall. */
function leafOf(d: PlacedDoor, wide: number, deep: number): { hinge: Flat; shut: Flat; open: Flat } {
  const [begin, end] = [forDrawing(d.from), forDrawing(d.from) + forDrawing(d.width)];
  const at = d.hung === 'begin' ? begin : end;
  const way = d.hung === 'begin' ? 1 : -1;
  if (d.wall === 'left') return { hinge: [0, at], shut: [0, way], open: [1, 0] };
  if (d.wall === 'right') return { hinge: [wide, at], shut: [0, way], open: [-1, 0] };
  if (d.wall === 'back') return { hinge: [at, 0], shut: [way, 0], open: [0, 1] };
  return { hinge: [at, deep], shut: [way, 0], open: [0, -1] };
}

/** Whether a leaf turned by so much of a right angle has a point within the case: by points along it. */
function isIn(d: PlacedDoor, f: Floor, turned: number, by: number): boolean {
  const { hinge, shut, open } = leafOf(d, forDrawing(f.wide), forDrawing(f.deep ?? l('0')));
  const [c, s] = [Math.cos((turned * Math.PI) / 2), Math.sin((turned * Math.PI) / 2)];
  const [left, right, front] = [f.stands.from, f.stands.from.add(f.stands.wide), f.stands.deep].map((x) =>
    x.valueOf(),
  ) as [number, number, number];
  return Array.from({ length: 200 }, (_, k) => ((k + 1) / 200) * forDrawing(d.leaf)).some((r) => {
    const x = hinge[0] + r * (c * shut[0] + s * open[0]);
    const y = hinge[1] + r * (c * shut[1] + s * open[1]);
    return x > left + by && x < right - by && y > by && y < front - by;
  });
}

const doors: fc.Arbitrary<PlacedDoor> = fc.record({
  wall: fc.constantFrom('left', 'right', 'front', 'back'),
  from: between(0, 60),
  width: between(20, 40),
  leaf: between(20, 40),
  hung: fc.constantFrom('begin', 'end'),
  opens: fc.constant('in' as const),
});
const floors: fc.Arbitrary<Floor> = fc.record({
  wide: between(60, 120),
  deep: between(40, 120),
  stands: fc.record({ from: between(0, 20), wide: between(10, 40), deep: between(8, 30) }),
});

test('a leaf drawn step by step strikes where it is said to, and nowhere where it is clear', () => {
  fc.assert(
    fc.property(doors, floors, (d, f) => {
      const found = doorSwing(d, f, grain);
      const struck = Array.from({ length: 91 }, (_, k) => k / 90).filter((turned) =>
        isIn(d, f, turned, 0.02),
      );
      const first = struck[0];
      if (found?.code !== 'strikes') {
        expect(first).toBeUndefined();
        return;
      }
      // the edge of the leaf is never farther out, when it is first seen to strike, than it is said to open at least;
      // steps of a degree, points a fifth of an inch apart
      if (first !== undefined)
        expect(Math.sin((first * Math.PI) / 2) * forDrawing(d.leaf)).toBeGreaterThan(
          forDrawing(found.opensTo) - 0.001,
        );
    }),
    { numRuns: runs(300) },
  );
});

test('where it is said to strike by more than a hair a drawn leaf does, and moved as said it does not', () => {
  fc.assert(
    fc.property(doors, floors, (d, f) => {
      const found = doorSwing(d, f, grain);
      if (found?.code !== 'strikes') return;
      for (const { toward, by } of found.moves) {
        const from = toward === 'right' ? f.stands.from.add(by) : f.stands.from.sub(by);
        const moved = { ...f, stands: { ...f.stands, from: from as typeof by } };
        expect(doorSwing(d, moved, grain)?.code).not.toBe('strikes');
        expect(isIn(d, moved, 0.5, 0.001) || isIn(d, moved, 1, 0.001) || isIn(d, moved, 0, 0.001)).toBe(
          false,
        );
        // two grains less and it is still in the way
        const less = toward === 'right' ? from.sub(grain).sub(grain) : from.add(grain).add(grain);
        const short = { ...f, stands: { ...f.stands, from: less as typeof by } };
        if (forDrawing(by) > 0.2) expect(doorSwing(d, short, grain)?.code).toBe('strikes');
      }
      const deepIn = Array.from({ length: 91 }, (_, k) => k / 90).some((turned) => isIn(d, f, turned, 0));
      const moves = found.moves.every(({ by }) => forDrawing(by) > 2);
      if (moves) expect(deepIn).toBe(true);
    }),
    { numRuns: runs(300) },
  );
});
