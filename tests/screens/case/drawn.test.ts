import { describe, expect, test } from 'vitest';
import { frontOf, sectionOf } from '../../../src/screens/case/drawn';
import type { Inside } from '../../../src/trade/carcass/case';
import { l } from '../../length/write-figures';
import { plainCase, work } from '../../trade/carcass/sample-case';

const fixed = (id: string, at: string): Inside => ({ id, kind: 'fixed', bay: 1, at: l(at) });
const shelved = work({
  ...plainCase,
  partitions: 0,
  hasToe: true,
  inside: [fixed('a', '40'), fixed('b', '20'), { id: 'p', kind: 'loose', bay: 1, count: 2 }],
});

describe.each([
  ['from the front', frontOf],
  ['cut through', sectionOf],
] as const)('a case %s', (_, drawn) => {
  const { pieces, high } = drawn(shelved);

  test('shows its toe board under the bottom', () => {
    const [toe] = pieces.filter((p) => p.kind === 'toe');
    expect(toe && [toe.y, toe.y + toe.h]).toEqual([0, 4.125]);
  });

  test('shows each loose shelf in an opening of its own, clear of what is fixed', () => {
    const loose = pieces.filter((p) => p.kind === 'loose');
    expect(loose).toHaveLength(2);
    const others = pieces.filter((p) => p.kind === 'ply' && p.h < 1);
    for (const p of loose) {
      expect(p.y + p.h).toBeLessThan(high);
      expect(others.some((o) => p.y < o.y + o.h && o.y < p.y + p.h)).toBe(false);
    }
    const fixedTop = 4.125 + 0.71875 + 20;
    expect(loose.filter((p) => p.y > fixedTop)).toHaveLength(1);
  });
});

// 38 3/8 and 3/16 at either side; 64 1/4 − 4 1/8 high
test('half-lapped, rails of a frame run from edge to edge and its middle stile over both', () => {
  const framed = {
    ...plainCase,
    hasFrame: true,
    overhang: l('3/16'),
    stocks: { ...plainCase.stocks, frame: 'f' },
  };
  const at = (role: string, meets?: 'lap') =>
    frontOf(work({ ...framed, frameMeets: meets })).pieces.find((p) => p.part === `c1~${role}`);
  expect(at('railtop', 'lap')).toMatchObject({ x: 0, w: 38.75 });
  expect(at('railtop')).toMatchObject({ x: 1.5, w: 35.75 });
  expect(at('middle', 'lap')).toMatchObject({ y: 4.125, h: 60.125 });
  expect(at('middle')).toMatchObject({ y: 5.625, h: 57.125 });
});

// 64 1/4 − 2 − 23/32 up, before the rabbet of 9/32 for the back
test('a top under the ends of the sides: cut through, the side is seen over it and the back goes up with it', () => {
  const low = work({ ...plainCase, inside: [], topJoint: 'dado', sidePast: l('2') });
  const at = (drawn: typeof frontOf, role: string) => drawn(low).pieces.find((p) => p.part === `c1~${role}`);
  expect(at(frontOf, 'top')).toMatchObject({ y: 61.53125, h: 0.71875 });
  expect(at(frontOf, 'left')).toMatchObject({ y: 0, h: 64.25 });
  expect(at(sectionOf, 'top')).toMatchObject({ y: 61.53125, w: 17.21875 });
  expect(at(sectionOf, 'left')).toMatchObject({ y: 62.25, h: 2, w: 17.21875 });
  expect(at(sectionOf, 'back')).toMatchObject({ y: 4.125, h: 60.125 });
  expect(sectionOf(work(plainCase)).pieces.find((p) => p.part === 'c1~left')).toBeUndefined();
});

test('two fixed shelves are told apart from the bottom up', () => {
  const shelf = (id: string) => frontOf(shelved).pieces.find((p) => p.part === `c1~${id}`);
  expect([shelf('b')?.no, shelf('a')?.no]).toEqual([1, 2]);
});

test('more loose shelves than there are openings stand evenly in them', () => {
  const three = work({ ...plainCase, partitions: 0, inside: [{ id: 'p', kind: 'loose', bay: 1, count: 3 }] });
  const ys = frontOf(three)
    .pieces.filter((p) => p.kind === 'loose')
    .map((p) => p.y);
  expect(ys).toHaveLength(3);
  const [a = 0, b = 0, c = 0] = ys;
  expect(c - b).toBeCloseTo(b - a);
});

describe('what holds loose shelves is drawn in the wall behind them', () => {
  // upper face of the bottom: 4 1/8 off the floor and 23/32
  const datum = 4.125 + 0.71875;
  const drawn = (...inside: readonly Inside[]) =>
    sectionOf(work({ ...plainCase, partitions: 0, hasFrame: false, inside })).pieces;
  const set = (id: string, own: Partial<Inside>): Inside => ({ id, kind: 'loose', bay: 1, ...own });

  test('holes where they are bored, and each shelf over some of its own', () => {
    const pins = set('p', { heldBy: 'pins', count: 3, first: l('4'), pitch: l('2'), width: l('1/4') });
    const pieces = drawn(pins);
    const holes = pieces.filter((p) => p.kind === 'hole');
    // two rows, the front one 2 in: its holes begin 1 7/8 from the front edge, 3 7/8 over the bottom
    expect(holes[0] && [holes[0].x, holes[0].y, holes[0].w]).toEqual([1.875, datum + 3.875, 0.25]);
    expect(new Set(holes.map(({ x }) => x)).size).toBe(2);
    const ups = pieces.filter((p) => p.kind === 'loose').map(({ y }) => y - datum - 0.125);
    expect(ups).toHaveLength(3);
    expect(ups.every((up) => up > 3 && Math.abs(up / 2 - Math.round(up / 2)) < 1e-9)).toBe(true);
    expect(new Set(ups).size).toBe(3);
  });

  test('strips up each opening, short of what is over them', () => {
    const strips = set('s', {
      heldBy: 'strips',
      width: l('5/8'),
      stripThick: l('3/16'),
      depth: l('3/16'),
      stripRoom: l('1/32'),
      endRoom: l('1'),
    });
    const metal = drawn(strips, fixed('f', '20')).filter((p) => p.kind === 'strip');
    // 20 − 1; from 20 23/32; half of 1/32 of room before the first
    expect([metal[0], metal[2]].map((p) => p && [p.x, p.y, p.w])).toEqual([
      [2.015625, datum, 0.625],
      [2.015625, datum + 20.71875, 0.625],
    ]);
    expect(metal.map(({ h }) => h).slice(0, 2)).toEqual([19, 19]);
  });

  test('of two sets in a bay each shelf is of its own, and stands as deep as it is', () => {
    const room = { heldBy: 'lines', frontPlay: l('1/4'), backPlay: l('1/2') } as const;
    const loose = drawn(set('a', room), set('b', { ...room, count: 2 })).filter((p) => p.kind === 'loose');
    expect(loose.map(({ part }) => part)).toEqual(['c1~a', 'c1~b', 'c1~b']);
    const [bare] = drawn(set('a', {})).filter((p) => p.kind === 'loose');
    expect(loose.map(({ x, w }) => [x, (bare?.w ?? 0) - w])).toEqual(loose.map(() => [0.25, 0.75]));
  });
});
