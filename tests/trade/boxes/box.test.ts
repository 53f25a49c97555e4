import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  add,
  atMost,
  equals,
  inches,
  isNegative,
  type Length,
  less,
  negate,
  subtract,
  sum,
  times,
} from '../../../src/length/length';
import { grainOf, tapes } from '../../../src/length/tape';
import { type Box, boxOf, boxWarnings, openingFor, slideFits } from '../../../src/trade/boxes/box';
import type { BoxPlan } from '../../../src/trade/boxes/box-plan';
import { runs } from '../../runs';
import { codes, l, w } from '../grooves/sample';

/**
 * Example 1 of boxes. It gives neither the back's thickness nor the fit: 5/8 and 15/32 for front and back lead to its
 * inside 14 15/32.
 */
const asPlanned: BoxPlan = {
  opening: l('17 3/32'),
  clearance: l('1/2'),
  tape: '1/32',
  depth: l('16'),
  height: l('4 1/8'),
  side: l('15/32'),
  front: l('5/8'),
  back: l('15/32'),
  bottom: l('11/32'),
  lap: l('5/32'),
  backDado: l('7/32'),
  behind: l('7/16'),
  groove: { deep: l('3/16'), up: l('13/32'), fit: l('1/64') },
  ease: l('1/16'),
  bottomHow: 'captured',
};
const groove = (more: Partial<BoxPlan['groove']>) => ({ groove: { ...asPlanned.groove, ...more } });

const made = (more: Partial<BoxPlan> = {}): Box => {
  const found = boxOf({ ...asPlanned, ...more });
  if (!found.ok) throw new Error(found.error.code);
  return found.value;
};
/** An error in one line, its lengths written: `inside-gone by 1/32`. */
const refused = (more: Partial<BoxPlan>): string => {
  const found = boxOf({ ...asPlanned, ...more });
  if (found.ok) throw new Error('expected a refusal');
  return Object.entries(found.error)
    .map(([key, x]) => (key === 'code' ? x : `${key} ${typeof x === 'string' ? x : w(x)}`))
    .join(' ');
};

describe('boxOf', () => {
  test('Example 1 of boxes: every piece of a box with its bottom captured', () => {
    const box = made();
    expect(w(box.width.mark.value)).toBe('16 3/32');
    expect([box.side, box.front, box.back].map((s) => w(s.value))).toEqual([
      '15 27/32',
      '16 3/32',
      '15 19/32',
    ]);
    expect(w(box.reach)).toBe('15/32');
    expect([box.insideWide, box.insideDeep].map((s) => w(s.value))).toEqual(['15 5/32', '14 15/32']);
    expect([box.bottomWide, box.bottomDeep].map((s) => w(s.value))).toEqual(['15 15/32', '14 25/32']);
    expect([w(box.backHeight.value), w(box.grooveWide)]).toEqual(['4 1/8', '23/64']);
  });

  test('Example 2 of boxes: under a short back the bottom is 15 15/32 × 15 1/2, the back 3 3/8 high', () => {
    const box = made({ bottomHow: 'slid-in' });
    expect([box.bottomWide, box.bottomDeep, box.backHeight].map((s) => w(s.value))).toEqual([
      '15 15/32',
      '15 1/2',
      '3 3/8',
    ]);
  });

  test('step 6 of the carried cabinet: made for the lesser of 17 1/32 and 16 31/32', () => {
    const opening = openingFor(l('17 1/32'), l('16 31/32'));
    const box = made({ opening: opening?.least ?? l('0') });
    expect(opening?.pack).toBe(true);
    expect([box.width.mark.value, box.back.value].map(w)).toEqual(['15 31/32', '15 15/32']);
    expect([box.bottomWide.value, box.bottomDeep.value].map(w)).toEqual(['15 11/32', '14 25/32']);
  });

  test('in a metric shop front and back may differ by .8 before slides are packed', () => {
    const off = (back: string) => openingFor(l('400 mm'), l(back), 'mm')?.pack;
    expect([off('399.2 mm'), off('399.1 mm')]).toEqual([false, true]);
  });

  test('the width rounds down, keeps what was left, and all that stands on it stands on the mark', () => {
    const box = made({ tape: '1/16' });
    expect([w(box.width.mark.value), w(box.width.mark.rest)]).toEqual(['16 1/16', '1/32']);
    expect([box.front, box.insideWide, box.back, box.bottomWide].map((s) => w(s.value))).toEqual([
      '16 1/16',
      '15 1/8',
      '15 9/16',
      '15 7/16',
    ]);
  });

  test('a figure tells its sum, and the sums of what is in it', () => {
    const { bottomWide } = made();
    expect(bottomWide.terms.map((t) => [t.what, w(t.value)])).toEqual([
      ['inside-width', '15 5/32'],
      ['two-groove-depths', '3/8'],
      ['ease', '-1/16'],
    ]);
    expect(bottomWide.terms[0]?.from?.terms[0]?.from?.terms.map((t) => t.what)).toEqual([
      'opening',
      'side-slides',
    ]);
  });

  test('what may be nothing is nothing without complaint: tails right through, back against the ends', () => {
    const none = l('0');
    const box = made({
      lap: none,
      behind: none,
      backDado: none,
      clearance: none,
      ease: none,
      ...groove({ fit: none }),
    });
    expect([box.reach, box.side.value, box.width.mark.value].map(w)).toEqual(['5/8', '16', '17 3/32']);
    expect(equals(box.back.value, box.insideWide.value)).toBe(true);
  });
});

describe('boxOf refuses', () => {
  test.each<[string, Partial<BoxPlan>, Partial<BoxPlan>]>([
    // Two slides of 1/2 and two sides of 15/32 take 1 15/16.
    ['inside-gone by 0', { opening: l('1 15/16') }, { opening: l('1 31/32') }],
    ['inside-gone by 1/32', { opening: l('1 29/32') }, { opening: l('1 31/32') }],
    // Front 5/8, back 15/32 and 7/16 behind it take 1 17/32.
    ['inside-depth-gone by 0', { depth: l('1 17/32') }, { depth: l('1 9/16') }],
    ['inside-depth-gone by 1/64', { depth: l('1 33/64') }, { depth: l('1 9/16') }],
    ['lap-too-deep lap 5/8 front 5/8', { lap: l('5/8') }, { lap: l('39/64') }],
    // Groove 13/32 up and a bottom 11/32 take 3/4, whether the back stops there or is grooved.
    ['back-gone by 0', { height: l('3/4'), bottomHow: 'slid-in' }, { height: l('25/32') }],
    ['back-gone by 1/32', { height: l('23/32') }, { height: l('25/32') }],
    [
      'groove-through which side deep 15/32 thickness 15/32',
      groove({ deep: l('15/32') }),
      groove({ deep: l('29/64') }),
    ],
    ['groove-through which front deep 3/16 thickness 3/16', { front: l('3/16') }, { front: l('13/64') }],
    ['groove-through which back deep 3/16 thickness 3/16', { back: l('3/16') }, { back: l('13/64') }],
    [
      'groove-through which side deep 15/32 thickness 15/32',
      { backDado: l('15/32') },
      { backDado: l('29/64') },
    ],
  ])('%s, and not a hair less', (want, wrong, right) => {
    expect(refused(wrong)).toBe(want);
    expect(boxOf({ ...asPlanned, ...right }).ok).toBe(true);
  });

  test('a back over a slid-in bottom has no groove to go through', () => {
    expect(boxOf({ ...asPlanned, back: l('3/16'), bottomHow: 'slid-in' }).ok).toBe(true);
  });

  test.each(['opening', 'depth', 'height', 'side', 'front', 'back', 'bottom'] as const)(
    'no %s, or less than none',
    (field) => {
      expect(refused({ [field]: l('0') })).toBe(`not-positive field ${field}`);
      expect(refused({ [field]: l('-1/64') })).toBe(`not-positive field ${field}`);
    },
  );

  test.each<[string, Partial<BoxPlan>]>([
    ['groove-deep', groove({ deep: l('0') })],
    ['groove-up', groove({ up: l('0') })],
    ['clearance', { clearance: l('-1/64') }],
    ['lap', { lap: l('-1/64') }],
    ['back-dado', { backDado: l('-1/64') }],
    ['behind', { behind: l('-1/64') }],
    ['groove-fit', groove({ fit: l('-1/64') })],
    // A bottom larger than its grooves allow.
    ['ease', { ease: l('-1/64') }],
  ])('a wrong %s', (field, wrong) => {
    expect(refused(wrong)).toBe(`not-positive field ${field}`);
  });
});

describe('boxWarnings', () => {
  test('Example 1 of boxes has none', () => expect(boxWarnings(asPlanned)).toEqual([]));

  test('a lap of 1/8 passes, under it is thin', () => {
    expect(boxWarnings({ ...asPlanned, lap: l('1/8') })).toEqual([]);
    expect(boxWarnings({ ...asPlanned, lap: l('7/64') })).toEqual([{ code: 'lap-thin', lap: l('7/64') }]);
  });

  test('a groove to half the side passes, past it is deep', () => {
    expect(boxWarnings({ ...asPlanned, ...groove({ deep: l('15/64') }) })).toEqual([]);
    const deep = boxWarnings({ ...asPlanned, lap: l('3/32'), ...groove({ deep: l('1/4') }) });
    expect(codes(deep)).toEqual(['lap-thin', 'groove-deep']);
    expect(deep[1]).toEqual({ code: 'groove-deep', deep: l('1/4'), half: l('15/64') });
  });
});

describe('slideFits', () => {
  test.each([
    ['16 1/8', true, '0'],
    ['16 9/64', true, '-1/64'],
    ['16 7/64', false, '1/64'],
  ])('a slide of 16 in a room of %s: %s, over %s', (room, fits, over) => {
    const found = slideFits(l('16'), l(room));
    expect([found.fits, w(found.over)]).toEqual([fits, over]);
  });

  // 400 in 403: 3 mm are left free, which is less than the 3.175 of an eighth. Common practice, no source
  test('in a shop in millimetres it leaves 3 mm', () => {
    expect(slideFits(l('400 mm'), l('403 mm'), 'mm').fits).toBe(true);
    expect(slideFits(l('400 mm'), l('403 mm')).fits).toBe(false);
    expect(slideFits(l('400 mm'), l('402.9 mm'), 'mm').fits).toBe(false);
  });
});

describe('openingFor', () => {
  test.each([
    ['17 1/32', '16 31/32', '16 31/32', '1/16', true],
    ['16 31/32', '17 1/32', '16 31/32', '1/16', true],
    // Just 1/32 apart is not over it.
    ['17', '17 1/32', '17', '1/32', false],
    ['17', '17 3/64', '17', '3/64', true],
    ['17', '17', '17', '0', false],
  ])('front %s, back %s: made for %s, off %s, pack %s', (front, back, least, off, pack) => {
    const found = openingFor(l(front), l(back));
    expect([w(found?.least), w(found?.off), found?.pack]).toEqual([least, off, pack]);
  });

  test('one measure stands for both; none is nothing', () => {
    for (const found of [openingFor(l('17'), undefined), openingFor(undefined, l('17'))])
      expect([w(found?.least), w(found?.off), found?.pack]).toEqual(['17', '0', false]);
    expect(openingFor(undefined, undefined)).toBeUndefined();
  });
});

describe('a box of any size', () => {
  const parts = (min: number, max: number) =>
    fc
      .record({ n: fc.integer({ min, max }), odd: fc.integer({ min: 0, max: 6 }) })
      .map(({ n, odd }) => inches(BigInt(n * 7 + odd), 32n * 7n));
  const plans: fc.Arbitrary<BoxPlan> = fc.record({
    opening: parts(32 * 6, 32 * 30),
    clearance: parts(0, 20),
    tape: fc.constantFrom(...tapes),
    depth: parts(32 * 4, 32 * 24),
    height: parts(32 * 2, 32 * 12),
    side: parts(14, 24),
    front: parts(14, 28),
    back: parts(14, 24),
    bottom: parts(6, 16),
    lap: parts(0, 8),
    backDado: parts(0, 12),
    behind: parts(0, 20),
    groove: fc.record({ deep: parts(4, 12), up: parts(8, 16), fit: parts(0, 1) }),
    ease: parts(0, 4),
    bottomHow: fc.constantFrom('captured', 'slid-in' as const),
  });
  const holds = (check: (plan: BoxPlan, box: Box) => boolean) =>
    fc.assert(
      fc.property(plans, (plan) => check(plan, made(plan))),
      { numRuns: runs(200) },
    );

  test('is never wider than the opening less two clearances, and within a grain of it', () => {
    holds((plan, { width }) => {
      const room = subtract(plan.opening, times(plan.clearance, 2n));
      const short = subtract(room, width.mark.value);
      return !isNegative(short) && less(short, grainOf(plan.tape)) && equals(short, width.mark.rest);
    });
  });

  test('adds up across: the back out of its dadoes, and two sides, are the front', () => {
    holds((plan, { back, front }) => {
      const parts = [back.value, times(plan.backDado, -2n), times(plan.side, 2n)];
      return equals(sum(parts), front.value);
    });
  });

  test('adds up front to back, from the face of the front to the ends of the sides', () => {
    holds((plan, { side, insideDeep, reach }) => {
      const through = sum([plan.front, insideDeep.value, plan.back, plan.behind]);
      return equals(through, plan.depth) && equals(add(side.value, subtract(plan.front, reach)), plan.depth);
    });
  });

  test('has a bottom that is its ease short of the floors, or of the side ends when slid in', () => {
    holds((plan, { bottomWide, bottomDeep }) => {
      const front = subtract(plan.front, plan.groove.deep);
      const far: Length =
        plan.bottomHow === 'slid-in'
          ? plan.depth
          : sum([plan.depth, negate(plan.behind), negate(plan.back), plan.groove.deep]);
      const floors = subtract(made(plan).width.mark.value, times(subtract(plan.side, plan.groove.deep), 2n));
      return (
        equals(add(bottomDeep.value, plan.ease), subtract(far, front)) &&
        equals(add(bottomWide.value, plan.ease), floors)
      );
    });
  });

  test('has a back that stands within its height, clear over a bottom slid in', () => {
    holds((plan, { backHeight }) => {
      const under = plan.bottomHow === 'slid-in' ? add(plan.groove.up, plan.bottom) : l('0');
      return atMost(backHeight.value, plan.height) && equals(add(backHeight.value, under), plan.height);
    });
  });
});
