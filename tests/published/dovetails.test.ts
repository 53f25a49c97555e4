import { describe, expect, test } from 'vitest';
import {
  add,
  atMost,
  forDrawing,
  type Length,
  type Ratio,
  ratio,
  subtract,
  times,
} from '../../src/length/length';
import { boxOf, boxWarnings } from '../../src/trade/boxes/box';
import { leastLap } from '../../src/trade/boxes/joints/half-blind';
import { tailsFor } from '../../src/trade/boxes/tail-choice';
import { grooveRoom, type TailPlan, type Tails, tailsOf, tailsWarnings } from '../../src/trade/boxes/tails';
import { newBank } from '../../src/trade/fronts/bank';
import { usualBank } from '../../src/trade/fronts/usual-bank';
import { l, w } from '../trade/grooves/sample';

const value = <T>(found: { ok: true; value: T } | { ok: false; error: { code: string } }): T => {
  if (!found.ok) throw new Error(found.error.code);
  return found.value;
};

// Sources, all seen; they do not agree: a range, not a rule.
// - The Boy Mechanic, Laying Out a Dovetail Joint
// (chestofbooks.com/crafts/popular-mechanics/The-Boy-Mechanic-1000-Things-for-
// Boys-to-Do/Laying-Out-a-Dovetail-Joint.html; date not read): "With the bevel square, set to a bevel of 1 in. in 3".
// - George Alexander Ross, Elementary Course in Woodwork, first edition, A. Flanagan Company, copyright 1901 (title
// page)
// (bitlit.ru/page/en/george-alexander-ross/elementary-course-in-woodwork-designed-for-use-in-high-and-technical-schools-with-
// one-hundred-and-thirty-four-illustrations-first-edition/43): "with the bevel set at a taper of 1 inch to 4 inches".
// - Dovetailing, www.furnituremaking.us/making-3/dovetailing.html (book and date not read): "rise of 1 in 5,1 in 6, 1
// in 7.   etc.. whereas the slope of a machine-cut dovetail is usually standardized at 20°". - Fine Woodworking,
// Building Furniture, 2007 (issuhub.com/view/index?id=5674&pageIndex=85): "The angle should be   approximately a 1:6
// to 1:8 ratio." 1 in 2.747 for 20 degrees is worked. Side, tails, pins and length are ours.
const slopes: readonly (readonly [string, Ratio])[] = [
  ['1 in 3', ratio(3n)],
  ['20 degrees by machine', ratio(2747n, 1000n)],
  ['1 in 4', ratio(4n)],
  ['1 in 5', ratio(5n)],
  ['1 in 6', ratio(6n)],
  ['1 in 7', ratio(7n)],
  ['1 in 8', ratio(8n)],
];

describe('dovetails over the slopes in print', () => {
  const side = (slope: Ratio): TailPlan => ({
    height: l('4 1/8'),
    tails: 3,
    halfPin: l('1/4'),
    pin: l('1/2'),
    slope,
    long: l('1/2'),
  });

  test.each(slopes)('%s: three tails can be cut, and fill the side at both lines', (_, slope) => {
    const plan = side(slope);
    const tails = value(tailsOf(plan));
    expect(tailsWarnings(plan)).toEqual([]);
    const end = add(times(tails.tail, 3n), add(times(plan.pin, 2n), times(plan.halfPin, 2n)));
    const base = add(times(tails.baseTail, 3n), add(times(tails.basePin, 2n), times(tails.baseHalfPin, 2n)));
    expect([end, base].map(w)).toEqual(['4 1/8', '4 1/8']);
  });

  test('the steeper the slope, the less of a tail is left at the baseline', () => {
    const left = [8n, 7n, 6n, 5n, 4n, 3n].map((k) => value(tailsOf(side(ratio(k)))).baseTail);
    left.push(value(tailsOf(side(ratio(2747n, 1000n)))).baseTail);
    expect(left.slice(1).every((x, k) => left[k]?.gt(x))).toBe(true);
  });

  test.each<[string, Ratio, number]>([
    // 20 is printed in degrees; the others are worked from the ratio, to the hundredth.
    ['1 in 2.747', ratio(2747n, 1000n), 20],
    ['1 in 4', ratio(4n), 14.04],
    ['1 in 6', ratio(6n), 9.46],
    ['1 in 8', ratio(8n), 7.13],
  ])('a tail of %s leans %s degrees', (_, slope, degrees) => {
    const plan = side(slope);
    const first = value(tailsOf(plan)).tails[0];
    const lean = first ? forDrawing(subtract(first.baseNear, first.near)) : 0;
    const angle = (Math.atan2(lean, forDrawing(plan.long)) * 180) / Math.PI;
    expect(angle).toBeCloseTo(degrees, 2);
  });

  test('the slope that stands in until one is said lies in the printed range', () => {
    expect(usualBank({}).slope.gte(3n) && usualBank({}).slope.lte(8n)).toBe(true);
  });
});

// Source: Fine Woodworking, Building Furniture, 2007 (issuhub.com/view/index/5674?pageIndex=84, seen; the scan breaks
// its lines and raises its numerators): the lap of the drawer front should be 3/32 to 3/16, a lap thinner than that
// can be weak; if the drawer front is 3/4 thick, the gauge is set to 9/16, which leaves a lap of 3/16. The rest of
// the box is ours.
describe('the lap of a half-blind front', () => {
  const plan = {
    opening: l('17'),
    clearance: l('1/16'),
    tape: '1/32',
    depth: l('16'),
    height: l('5'),
    side: l('1/2'),
    front: l('3/4'),
    back: l('1/2'),
    bottom: l('1/4'),
    backDado: l('1/4'),
    behind: l('0'),
    groove: { deep: l('1/4'), up: l('3/8'), fit: l('1/64') },
    ease: l('1/16'),
    bottomHow: 'slid-in',
  } as const;

  test('3/16 left of a front 3/4 thick: the tails reach 9/16', () => {
    expect(w(value(boxOf({ ...plan, lap: l('3/16') })).reach)).toBe('9/16');
  });

  test('the app asks for 1/8, within the printed range: what the range calls weak is warned of', () => {
    expect(atMost(l('3/32'), leastLap('in')) && atMost(leastLap('in'), l('3/16'))).toBe(true);
    const warned = (lap: string) => boxWarnings({ ...plan, lap: l(lap) }).map((x) => x.code);
    expect(['1/16', '5/64'].map(warned)).toEqual([['lap-thin'], ['lap-thin']]);
    expect(['1/8', '5/32', '3/16'].map(warned)).toEqual([[], [], []]);
  });
});

// Source: Ira S. Griffith, Essentials of Woodworking, Peoria, The Manual Arts Press, copyright 1908 (title page),
// section 104 (bitlit.ru/page/en/ira-samuel-griffith/essentials-of-woodworking/78). Seen: "The groove for the drawer
// bottom having been cut, or its position marked on the end of the front, lay out on the end the half tenons at both
// edges so that the groove shall come wholly within a tail mortise." All sizes are ours.
describe("Griffith's groove, wholly within a tail mortise", () => {
  const groove = (up: string, wide = '17/64') => ({ up: l(up), wide: l(wide) });

  /** The tail that takes the groove over its whole length, at both lines. */
  const takes = ({ tails }: Tails, { up, wide }: { readonly up: Length; readonly wide: Length }) =>
    tails.find(
      (t) =>
        [t.near, t.baseNear].every((x) => atMost(x, up)) &&
        [t.far, t.baseFar].every((x) => atMost(add(up, wide), x)),
    )?.no;

  const heights = ['2', '3', '3 1/2', '4 1/8', '5', '6 1/4', '7 1/2', '9 3/8', '12'];
  const ups = ['3/8', '7/16', '1/2'];

  test.each(heights.flatMap((height) => ups.map((up) => [height, up] as const)))(
    'a side %s high, the groove %s up: the tails are laid out so that one takes it',
    (height, up) => {
      const side = { height: l(height), reach: l('9/16'), groove: groove(up) };
      const tails = value(tailsFor(newBank('b1'), side).tails);
      expect(tails.groove).toEqual({ inside: true, tail: takes(tails, side.groove), cuts: 'none' });
      expect(tails.groove?.tail).toBeDefined();
    },
  );

  const plan: TailPlan = {
    height: l('5'),
    tails: 3,
    halfPin: l('3/8'),
    pin: l('1/2'),
    slope: ratio(6n),
    long: l('9/16'),
  };

  test.each([
    ['in the half tenon at the lower edge', '1/4', 'half-pin'],
    ['half out of its tail', '27/64', 'half-pin'],
    ['across a tenon', '1 1/2', 'pin'],
    ['in the half tenon at the upper edge', '4 1/2', 'half-pin'],
  ])('a groove %s is not within a tail, and it is said what it cuts', (_, up, cuts) => {
    const tails = value(tailsOf({ ...plan, groove: groove(up) }));
    expect(takes(tails, groove(up))).toBeUndefined();
    expect(tails.groove).toEqual({ inside: false, cuts });
  });

  test.each(['1/4', '27/64', '1 1/2', '4 1/2'])(
    'where the app would move one %s up, a tail takes it',
    (up) => {
      const { lower, higher } = grooveRoom(value(tailsOf(plan)), groove(up));
      const moved = [lower, higher].flatMap((x) => (x ? [x] : []));
      expect(moved.length).toBeGreaterThan(0);
      for (const x of moved) {
        const there = { ...groove(up), up: x };
        const tails = value(tailsOf({ ...plan, groove: there }));
        expect(takes(tails, there)).toBeDefined();
        expect(tails.groove?.inside).toBe(true);
      }
    },
  );
});
