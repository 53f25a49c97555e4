import { describe, expect, test } from 'vitest';
import { equalParts } from '../../src/length/equal-parts';
import { equals, forDrawing, over, ratio, subtract, times } from '../../src/length/length';
import { tapes } from '../../src/length/tape';
import { frontParts } from '../../src/trade/boxes/bank-parts';
import { boxOf, boxWarnings } from '../../src/trade/boxes/box';
import type { BoxPlan } from '../../src/trade/boxes/box-plan';
import { contentsByFill, loadSays } from '../../src/trade/boxes/contents';
import { drawersOf } from '../../src/trade/boxes/drawers';
import { rabbeted } from '../../src/trade/boxes/joints/rabbeted';
import { type Bank, newBank } from '../../src/trade/fronts/bank';
import { frontWidth } from '../../src/trade/fronts/width';
import { frontsOf } from '../../src/trade/fronts/worked';
import { rabbetFor } from '../../src/trade/joints/rabbets';
import { slabWeight } from '../../src/trade/loads/stuff';
import { l, w } from '../trade/grooves/sample';

const value = <T>(found: { ok: true; value: T } | { ok: false; error: { code: string } }): T => {
  if (!found.ok) throw new Error(found.error.code);
  return found.value;
};

/** A box of our own figures; what is printed is put in its place below. */
const ours: BoxPlan = {
  opening: l('17'),
  clearance: l('1/16'),
  tape: '1/32',
  depth: l('16'),
  height: l('5'),
  side: l('1/2'),
  front: l('3/4'),
  back: l('1/2'),
  bottom: l('1/4'),
  lap: l('1/4'),
  backDado: l('1/4'),
  behind: l('0'),
  groove: { deep: l('1/4'), up: l('3/8'), fit: l('1/64') },
  ease: l('1/16'),
  bottomHow: 'slid-in',
};

// Source: Edwin W. Foster, Carpentry and Woodwork, Garden City, Doubleday, Page & Company 1911 (title page), p. 120 of
// bitlit.ru/page/en/edwin-w-foster/carpentry-and-woodwork/120. Seen: "The total width of the drawers in each tier was
// 1⁄8 inch less than the space. This gave clearance, so that they could be moved in or out easily." and "Later, when
// all twelve drawers were finished". Worked from it: the space, 24 1/8, as in foster-cabinet.test.ts; the total, 24.
// Not on the page, and ours: how many drawers stand in a tier, that they are equally wide (four in each of three
// tiers would make the twelve), and that the 1/8 is shared by all their sides.
describe("Foster's drawers side by side in a tier", () => {
  const space = l('24 1/8');
  const inchTapes = tapes.filter((tape) => tape !== '1 mm' && tape !== '1/2 mm');

  test.each([1, 2, 3, 4, 6].flatMap((count) => inchTapes.map((tape) => [count, tape] as const)))(
    '%s to a tier, on a tape in %s: together 24, 1/8 less than the space',
    (count, tape) => {
      const opening = value(equalParts(space, count, l('0'))).each;
      const clearance = over(l('1/8'), BigInt(2 * count));
      const { width } = value(boxOf({ ...ours, opening, clearance, tape }));
      expect([width.sum.value, width.mark.value].map((x) => w(times(x, BigInt(count))))).toEqual([
        '24',
        '24',
      ]);
    },
  );
});

// Source: Carpenters' Guide, Cases And Cupboards, p. 53
// (chestofbooks.com/home-improvement/woodworking/Carpenters-Guide/ Cases-And-Cupboards.html; author and date not
// read). Seen: 'Make the draw fronts of 13/16" boards, rabbet the end 3/8" deep and the width of the sides of the
// draw, allowing for the front to lap over the opening 3/8" to close the crack, then plow the sides and front 3/8"
// above the bottom, 3/8" wide for the draw bottom.' All else is ours; 7/16, 15 9/16, 3/4 and 4 1/4 are worked from
// these.
describe("the drawer of the Carpenters' Guide", () => {
  const front = l('13/16');
  const rabbet = l('3/8');
  const groove = { deep: l('1/4'), up: l('3/8'), fit: l('0') };
  const plan = { ...ours, front, lap: subtract(front, rabbet), bottom: l('3/8'), groove };

  test('sides that run into a rabbet 3/8 deep stop 7/16 behind the face of the front', () => {
    const box = value(boxOf(plan));
    expect(equals(box.reach, rabbet)).toBe(true);
    expect([subtract(plan.depth, box.side.value), box.side.value].map(w)).toEqual(['7/16', '15 9/16']);
  });

  test('the same by a rabbeted front: as wide as the side, 3/8 deep, under half of the front by 1/32', () => {
    const bank = { ...newBank('b'), frontRabbet: rabbet };
    const rabbetted = rabbeted.planned?.(bank, plan) ?? plan;
    const box = value(boxOf(rabbetted, rabbeted));
    expect([box.reach, box.side.value].map(w)).toEqual(['3/8', '15 9/16']);
    const [cut] =
      rabbeted.cuts(bank, {
        reach: box.reach,
        side: 'side',
        plan: rabbetted,
        layout: { kind: 'corner' },
        sideStock: undefined,
      }).rabbets ?? [];
    expect(cut && [cut.width, cut.depth].map(w)).toEqual([w(plan.side), '3/8']);
    // half of 13/16 is 13/32: what this page prints is less than the half of another
    expect(boxWarnings(rabbetted, rabbeted)).toEqual([
      { code: 'rabbet-shallow', deep: rabbet, limit: l('13/32') },
    ]);
  });

  // the front laps 3/8 over the opening; a box 1/16 free at each side: its rabbet is as wide as that and the side
  test('the front is that of its box: rabbeted as wide as the side and what laps over it', () => {
    const bank: Bank = {
      ...newBank('b'),
      ...({ fit: 'overlay', count: 1, frontIs: 'box', boxJoint: 'rabbeted', frontRabbet: rabbet } as const),
      ...{
        width: l('17'),
        height: l('6'),
        depth: l('18'),
        side: l('3/8'),
        clearance: l('1/16'),
        boxDeep: l('16'),
      },
      stocks: { front: 'board', side: 'thin', boxBottom: 'bottom' },
    };
    const made = frontsOf(bank, { worked: undefined, tape: '1/32' });
    if (!made.ok) throw new Error('no fronts');
    const fronts = made.value;
    const thick = (stock: string) =>
      stock === 'front' ? front : stock === 'boxBottom' ? l('3/8') : plan.side;
    const drawers = drawersOf(fronts, { thick, shop: {}, tape: '1/32' });
    if (!drawers.ok) throw new Error('no drawers');
    const [part] = frontParts(fronts, { tape: '1/32', thick, waits: [], drawers: drawers.value });
    // 1/2 of side, 1/16 beside it and 3/8 over the edge
    expect(part?.rabbets.map(({ width, depth }) => [w(width), w(depth)])).toEqual([
      ['15/16', '3/8'],
      ['15/16', '3/8'],
    ]);
    // 17 and 3/8 twice; what is left over the edge of the opening is 13/16 less 3/8
    expect([part?.length.mark.value, drawers.value.drawers[0]?.plan.lap].map(w)).toEqual(['17 3/4', '7/16']);
  });

  test('a bottom that fills a plough 3/8 wide and 3/8 up goes under a back 3/4 lower than the sides', () => {
    const box = value(boxOf(plan));
    expect(
      [box.grooveWide, subtract(plan.height, box.backHeight.value), box.backHeight.value].map(w),
    ).toEqual(['3/8', '3/4', '4 1/4']);
  });

  test('a front that laps 3/8 at both sides is 3/4 wider than the opening', () => {
    const edge = { kind: 'overlay', over: l('3/8') } as const;
    const { width, left, right } = value(frontWidth(l('17'), edge, edge));
    expect([width.value, left, right].map(w)).toEqual(['17 3/4', '3/8', '3/8']);
  });
});

// Source: Ira S. Griffith, Essentials of Woodworking, Peoria, The Manual Arts Press, copyright 1908 (title page),
// section 103 (bitlit.ru/page/en/ira-samuel-griffith/essentials-of-woodworking/78). Seen: "Line across the face side
// of the drawer front at a distance from the end equal to the thickness of the drawer sides". The sizes are ours.
describe("Griffith's rabbeted corner", () => {
  test.each(['1/2', '15/32', '12 mm'])(
    'a front between two rabbets as wide as sides of %s is the inside',
    (side) => {
      const rabbet = value(
        rabbetFor({ thickness: ours.front, lying: l(side), depth: l('3/8'), stack: l('13/16') }),
      );
      const box = value(boxOf({ ...ours, side: l(side) }));
      expect(equals(subtract(box.front.value, times(rabbet.width, 2n)), box.insideWide.value)).toBe(true);
    },
  );
});

// Source: ANSI/KCMA A161.1, Performance and Construction Standard for Kitchen and Vanity Cabinets; its 2012 issue,
// approved January 27, 2012, lists 7.1 Drawer Operation (pdfcoffee.com/2012-kcma-standard-pdf-free.html, contents
// seen). The test is told second-hand by www.timberpart.com/support/regulation-knowledge/kcma-drawer-operation/ (date
// not read): "Load drawer uniformly at 718Pa(15 pounds per square foot)", "Operate drawer through 25000 cycles." The
// drawer is ours, and so is its pair of slides that carries 75 lb.
describe('a drawer loaded as the printed test loads it', () => {
  test('stays within three quarters of a 75 lb pair, its own weight among it', () => {
    const [wide, deep] = [l('15 5/32'), l('14 15/32')];
    const feet = forDrawing(wide) * forDrawing(deep) * (1 / 144);
    const test15 = ratio(BigInt(Math.round(feet * 15 * 100)), 100n);
    expect(test15.valueOf()).toBeCloseTo(22.8, 1);
    expect(loadSays(test15.add(9n) as typeof test15, ratio(75n)).code).toBe('within');
    // water standing 2 7/8 in deep loads it about as much: our weight by volume against the printed one
    const water = contentsByFill({ wide, deep, high: l('2 7/8'), fill: ratio(1n), gravity: ratio(1n) });
    expect(water.valueOf()).toBeCloseTo(test15.valueOf(), 0);
  });
});

describe('weights behind a drawer’s load', () => {
  // Source: class PlywoodPanel of the open finite-element library xc (github.com/xcfem/xc,
  // python_modules/materials/awc_nds), "rho= 577.941243312 # density kg/m3", there said to be taken from table C of a
  // design text: seen second-hand, date not read. 0.3048 m to the foot and 0.45359237 kg to the pound are exact.
  test('our 2.2 lb a square foot of 23/32 ply is within four in a hundred of the printed density', () => {
    const pounds = (577.941243312 * 0.3048 ** 3) / 0.45359237;
    const inch = slabWeight({ long: l('12'), wide: l('12'), thick: l('1') }).valueOf();
    expect(Math.abs(inch / (pounds / 12) - 1)).toBeLessThan(0.04);
  });

  // Water 62.4 lb/ft3: from memory.
  test('a cubic foot of water comes to 62.4 lb', () => {
    const foot = { wide: l('12'), deep: l('12'), high: l('12') };
    expect(contentsByFill({ ...foot, fill: ratio(1n), gravity: ratio(1n) }).valueOf()).toBeCloseTo(62.4, 1);
  });
});
