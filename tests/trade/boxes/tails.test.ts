import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  add,
  atMost,
  equals,
  half,
  inches,
  isNegative,
  type Length,
  less,
  ratio,
  subtract,
  sum,
  times,
  zero,
} from '../../../src/length/length';
import {
  grooveRoom,
  type TailPlan,
  type Tails,
  tailsOf,
  tailsWarnings,
  templateHeights,
  templateTails,
} from '../../../src/trade/boxes/tails';
import { runs } from '../../runs';
import { codes, l, w } from '../grooves/sample';

/** Example 3 of boxes, three tails. */
const three: TailPlan = {
  height: l('4 1/8'),
  tails: 3,
  halfPin: l('5/16'),
  pin: l('11/32'),
  slope: ratio(8n),
  long: l('15/32'),
  groove: { up: l('13/32'), wide: l('11/32') },
};
/** Example 4 of boxes, five. */
const five: TailPlan = { ...three, tails: 5, halfPin: l('1/4'), pin: l('9/32') };

const made = (plan: TailPlan): Tails => {
  const found = tailsOf(plan);
  if (!found.ok) throw new Error(found.error.code);
  return found.value;
};
const refused = (more: Partial<TailPlan>): string => {
  const found = tailsOf({ ...three, ...more });
  if (found.ok) throw new Error('expected a refusal');
  return Object.entries(found.error)
    .map(([key, x]) => (key === 'code' ? x : `${key} ${typeof x === 'object' ? w(x) : x}`))
    .join(' ');
};
const at = (up: string, wide = '11/32') => ({ groove: { up: l(up), wide: l(wide) } });

describe('tailsOf', () => {
  test('Example 3 of boxes: three tails, the groove inside one', () => {
    const tails = made(three);
    expect([tails.tail, tails.baseTail, tails.basePin].map(w)).toEqual(['15/16', '105/128', '59/128']);
    expect(tails.groove).toEqual({ inside: true, tail: 1, cuts: 'none' });
    expect(tails.centred).toBe(true);
  });

  test('Example 4 of boxes: five tails, the groove not inside one', () => {
    const tails = made(five);
    expect(w(tails.tail)).toBe('1/2');
    expect(tails.groove).toEqual({ inside: false, cuts: 'pin' });
  });

  test('heights go up from the lower edge, each tail narrower at the baseline by T/k on either side', () => {
    const { tails, baseHalfPin } = made(three);
    expect(tails.map((t) => [t.no, w(t.near), w(t.far)])).toEqual([
      [1, '5/16', '1 1/4'],
      [2, '1 19/32', '2 17/32'],
      [3, '2 7/8', '3 13/16'],
    ]);
    // 15/32 over 8 is 15/256.
    expect([tails[0]?.baseNear, tails[0]?.baseFar, baseHalfPin].map(w)).toEqual([
      '95/256',
      '1 49/256',
      '95/256',
    ]);
  });

  test('an odd count has a tail on the centre line, an even one a pin', () => {
    const middle = made(three).tails[1];
    expect(middle && w(half(add(middle.near, middle.far)))).toBe('2 1/16');
    const { tails, centred } = made({ ...three, tails: 2 });
    expect(centred).toBe(false);
    expect(tails.some((t) => less(t.near, l('2 1/16')) && less(l('2 1/16'), t.far))).toBe(false);
  });

  test('one tail has half pins only', () => {
    const { tails, tail } = made({ ...three, tails: 1 });
    expect([tails.length, w(tail)]).toEqual([1, '3 1/2']);
  });

  test('without a groove none is checked', () => {
    const { groove: _, ...plain } = three;
    expect(made(plain).groove).toBeUndefined();
  });
});

describe('the groove among the tails', () => {
  // The lowest tail runs from 95/256 to 1 49/256 at the baseline.
  test.each([
    ['just on the lower edge of a tail', '95/256', '1/8', { inside: true, tail: 1, cuts: 'none' }],
    ['a hair under it', '94/256', '1/8', { inside: false, cuts: 'half-pin' }],
    ['as wide as the tail', '95/256', '210/256', { inside: true, tail: 1, cuts: 'none' }],
    ['a hair wider', '95/256', '211/256', { inside: false, cuts: 'pin' }],
    ['in the second tail', '1 7/8', '1/4', { inside: true, tail: 2, cuts: 'none' }],
    // The upper half pin begins at 4 1/8 less 95/256.
    ['up to the upper half pin', '3 129/256', '1/4', { inside: true, tail: 3, cuts: 'none' }],
    ['a hair into it', '3 130/256', '1/4', { inside: false, cuts: 'half-pin' }],
    ['up to the upper edge', '3 7/8', '1/4', { inside: false, cuts: 'half-pin' }],
    ['out of the upper edge', '3 57/64', '1/4', { inside: false, cuts: 'edge' }],
    ['out of the lower edge', '-1/64', '1/4', { inside: false, cuts: 'edge' }],
  ])('%s', (_, up, wide, want) => {
    expect(made({ ...three, ...at(up, wide) }).groove).toEqual(want);
  });

  test('clear of the pins at the end line is not enough: it must be clear at the baseline', () => {
    const { tails, groove } = made({ ...three, ...at('5/16', '1/4') });
    expect(tails[0] && atMost(tails[0].near, l('5/16'))).toBe(true);
    expect(groove).toEqual({ inside: false, cuts: 'half-pin' });
  });
});

describe('tailsOf refuses', () => {
  test.each<[string, Partial<TailPlan>, Partial<TailPlan>]>([
    ['count-not-whole', { tails: 2.5 }, { tails: 2 }],
    ['count-not-whole', { tails: 0 }, { tails: 1 }],
    ['count-not-whole', { tails: Number.NaN }, { tails: 3 }],
    ['too-many most 40', { tails: 41, height: l('80') }, { tails: 40, height: l('80') }],
    ['slope-not-positive', { slope: ratio(0n) }, { slope: ratio(2n) }],
    ['slope-not-positive', { slope: ratio(-8n) }, { slope: ratio(8n) }],
    ['not-positive field height', { height: zero }, { height: l('1 3/4') }],
    ['not-positive field long', { long: zero }, { long: l('1/64') }],
    ['pin-negative which half-pin by 1/64', { halfPin: l('-1/64') }, { halfPin: zero }],
    ['pin-negative which pin by 1/64', { pin: l('-1/64') }, { pin: zero }],
    // Pins take 1 5/16, and each tail leans in 15/128: nothing is left of three at 1 5/16 + 45/128 = 1 85/128.
    ['pins-eat-tails by 0', { height: l('1 85/128') }, { height: l('1 86/128') }],
    ['pins-eat-tails by 1/128', { height: l('1 82/128') }, { height: l('1 86/128') }],
  ])('%s, and takes what is just right', (want, wrong, right) => {
    expect(refused(wrong)).toBe(want);
    expect(tailsOf({ ...three, ...right }).ok).toBe(true);
  });
});

describe('grooveRoom', () => {
  test('Example 4 of boxes, five tails: down to the upper edge of the lowest tail, or up to the lower edge of the next', () => {
    // Lowest tail at the baseline: 79/256 to 177/256; the next begins at 279/256; the groove is 88/256 wide.
    const room = grooveRoom(made(five), { up: l('13/32'), wide: l('11/32') });
    expect([room.lower, room.higher].map(w)).toEqual(['89/256', '1 23/256']);
  });

  test('under the lowest tail only upward is left, over the topmost only downward', () => {
    const groove = { up: l('1/64'), wide: l('11/32') };
    expect(w(grooveRoom(made(five), groove).lower)).toBe('none');
    expect(w(grooveRoom(made(five), groove).higher)).toBe('79/256');
    const high = { ...groove, up: l('3 3/4') };
    expect(w(grooveRoom(made(five), high).higher)).toBe('none');
    // The topmost tail ends at 4 1/8 less 79/256 at the baseline: 977/256, less 88/256.
    expect(w(grooveRoom(made(five), high).lower)).toBe('3 121/256');
  });

  test('a groove at the limit of its tail is not sent where it is', () => {
    const wide = l('11/32');
    expect(w(grooveRoom(made(five), { up: l('89/256'), wide }).lower)).toBe('none');
    expect(w(grooveRoom(made(five), { up: l('79/256'), wide }).higher)).toBe('1 23/256');
  });

  test('a groove wider than any tail has no place', () => {
    // A tail is 98/256 at the baseline.
    const just = { up: l('1'), wide: l('98/256') };
    expect(w(grooveRoom(made(five), just).higher)).toBe('1 23/256');
    expect(grooveRoom(made(five), { ...just, wide: l('99/256') })).toEqual({});
  });
});

describe('tailsWarnings', () => {
  test('a half pin of 3/16 passes, under it is thin', () => {
    expect(tailsWarnings({ ...three, halfPin: l('3/16') })).toEqual([]);
    expect(tailsWarnings({ ...three, halfPin: l('11/64') })).toEqual([
      { code: 'half-pin-thin', halfPin: l('11/64'), least: l('3/16') },
    ]);
  });

  test('in a metric shop one under 5 mm is thin: common practice, no source', () => {
    expect(tailsWarnings({ ...three, halfPin: l('5 mm') }, 'mm')).toEqual([]);
    expect(tailsWarnings({ ...three, halfPin: l('4.8 mm') }, 'mm')).toEqual([
      { code: 'half-pin-thin', halfPin: l('4.8 mm'), least: l('5 mm') },
    ]);
  });

  test('a cutter as wide as the tail at the baseline passes, a wider one is told', () => {
    expect(tailsWarnings({ ...three, cutter: l('105/128') })).toEqual([]);
    expect(codes(tailsWarnings({ ...three, cutter: l('53/64') }))).toEqual(['tail-under-cutter']);
  });

  test('what cannot be laid out has none', () => {
    expect(tailsWarnings({ ...three, halfPin: l('1/8'), tails: 13 })).toEqual([]);
  });
});

describe('templateHeights', () => {
  test.each([
    ['4', '3 1/2', '4 3/8', false, 4],
    ['3 1/2', '3 1/2', '3 1/2', true, 4],
    ['3 33/64', '3 1/2', '4 3/8', false, 4],
    ['3 31/64', '2 5/8', '3 1/2', false, 3],
    ['7/8', '7/8', '7/8', true, 1],
    ['3/4', 'none', '7/8', false, 0],
  ])('%s by a pitch of 7/8: below %s, above %s, fits %s, tails %s', (high, below, above, fits, tails) => {
    const found = templateHeights(l(high), l('7/8'));
    expect([w(found.below), w(found.above), found.fits, found.tails]).toEqual([below, above, fits, tails]);
  });

  test('no pitch is a mistake in the program', () => {
    expect(() => templateHeights(l('4'), zero)).toThrow(RangeError);
  });
});

describe('templateTails', () => {
  const { tails: _, halfPin: __, ...base } = three;
  const laid = (more: Partial<TailPlan> & { readonly pitch?: Length } = {}) =>
    templateTails({ ...base, pin: l('1/4'), pitch: l('7/8'), ...more });

  test('4 1/8 by a pitch of 7/8: four tails of 5/8, half pins 7/16', () => {
    const plan = laid();
    expect([plan.tails, w(plan.halfPin), w(made(plan).tail)]).toEqual([4, '7/16', '5/8']);
  });

  test('a height of whole pitches has half a pin at both edges', () => {
    const plan = laid({ height: l('3 1/2') });
    expect([plan.tails, w(plan.halfPin)]).toEqual([4, '1/8']);
  });

  test('the groove is checked as in any layout', () => {
    // Half pin 7/16 and 15/256 of lean: the lowest tail begins at 127/256 at the baseline.
    expect(made(laid(at('127/256'))).groove).toEqual({ inside: true, tail: 1, cuts: 'none' });
    expect(made(laid(at('126/256'))).groove?.cuts).toBe('half-pin');
  });

  test('a side too low for one tail is refused, not drawn past its edges', () => {
    // One tail of 5/8 just goes into 5/8, with no half pins.
    expect(tailsOf(laid({ height: l('5/8') })).ok).toBe(true);
    expect(tailsOf(laid({ height: l('19/32') }))).toEqual({
      ok: false,
      error: { code: 'pin-negative', which: 'half-pin', by: l('1/64') },
    });
  });

  test('the tails of any height are a pitch apart, and another would not go in', () => {
    fc.assert(
      fc.property(fc.integer({ min: 56, max: 800 }), fc.integer({ min: 1, max: 24 }), (high, thin) => {
        const plan = laid({ height: inches(BigInt(high), 64n), pin: inches(BigInt(thin), 64n) });
        const { tails, tail } = made(plan);
        const apart = tails.slice(1).map((t, k) => subtract(t.near, tails[k]?.near ?? zero));
        const room = subtract(plan.height, times(l('7/8'), BigInt(plan.tails)));
        return (
          apart.every((x) => equals(x, l('7/8'))) &&
          equals(add(tail, plan.pin), l('7/8')) &&
          !isNegative(room) &&
          less(room, l('7/8'))
        );
      }),
      { numRuns: runs(200) },
    );
  });
});

describe('tails of any plan', () => {
  const parts = (min: number, max: number) => fc.integer({ min, max }).map((n) => inches(BigInt(n), 64n));
  const plans = fc
    .record({
      height: parts(64, 64 * 10),
      tails: fc.integer({ min: 1, max: 7 }),
      halfPin: parts(0, 24),
      pin: parts(0, 36),
      slope: fc.constantFrom(ratio(4n), ratio(5n), ratio(6n), ratio(8n), ratio(11n, 4n)),
      // In eighths, so that at 1 in 8 a groove often just touches a pin.
      long: fc.integer({ min: 1, max: 7 }).map((n) => inches(BigInt(n), 8n)),
      groove: fc.record({ up: parts(-8, 64 * 4), wide: parts(1, 32) }),
    })
    .filter((plan) => tailsOf(plan).ok);
  const holds = (
    check: (plan: typeof plans extends fc.Arbitrary<infer P> ? P : never, t: Tails) => boolean,
  ) =>
    fc.assert(
      fc.property(plans, (plan) => check(plan, made(plan))),
      { numRuns: runs(200) },
    );

  /** Pins and half pins at the baseline, read off between the tails. */
  const pinsOf = ({ tails }: Tails, height: Length) => {
    const froms = [zero, ...tails.map((t) => t.baseFar)];
    const tos = [...tails.map((t) => t.baseNear), height];
    return froms.map((from, k) => ({ from, to: tos[k] ?? height }));
  };
  const overlap = (pin: { from: Length; to: Length }, up: Length, top: Length) =>
    less(pin.from, top) && less(up, pin.to);

  test('with their pins add to the height exactly, at the end line and at the baseline', () => {
    holds((plan, t) => {
      const n = BigInt(plan.tails);
      const end = [times(plan.halfPin, 2n), times(t.tail, n), times(plan.pin, n - 1n)];
      const base = [times(t.baseHalfPin, 2n), times(t.baseTail, n), times(t.basePin, n - 1n)];
      return equals(sum(end), plan.height) && equals(sum(base), plan.height);
    });
  });

  test('stand as their widths say, the same from either edge', () => {
    holds((plan, t) =>
      t.tails.every((x, k) => {
        const twin = t.tails[t.tails.length - 1 - k];
        return (
          equals(subtract(x.far, x.near), t.tail) &&
          equals(subtract(x.baseFar, x.baseNear), t.baseTail) &&
          twin !== undefined &&
          equals(add(x.near, twin.far), plan.height) &&
          equals(add(x.baseNear, twin.baseFar), plan.height)
        );
      }),
    );
  });

  test('hold the groove inside just when it meets no pin at the baseline and neither edge', () => {
    holds((plan, t) => {
      const { up, wide } = plan.groove;
      const top = add(up, wide);
      const met = pinsOf(t, plan.height).filter((p) => overlap(p, up, top));
      const within = atMost(zero, up) && atMost(top, plan.height);
      return t.groove?.inside === (within && met.length === 0);
    });
  });

  test('tell what the groove cuts', () => {
    holds((plan, t) => {
      const { up, wide } = plan.groove;
      const top = add(up, wide);
      const pins = pinsOf(t, plan.height);
      const cuts = pins.map((p) => overlap(p, up, top));
      const within = atMost(zero, up) && atMost(top, plan.height);
      const half = cuts[0] || cuts[cuts.length - 1];
      const want = !within ? 'edge' : half ? 'half-pin' : cuts.some((c) => c) ? 'pin' : 'none';
      return t.groove?.cuts === want;
    });
  });

  test('have room for a groove where they say, and nowhere nearer', () => {
    holds((plan, t) => {
      const { wide, up } = plan.groove;
      const inside = (x: Length) => made({ ...plan, groove: { up: x, wide } }).groove?.inside ?? false;
      const { lower, higher } = grooveRoom(t, plan.groove);
      if (t.groove?.inside) return true;
      const grid = Array.from({ length: 64 * 10 }, (_, k) => inches(BigInt(k), 64n));
      const nearer = grid.filter(
        (x) => (!lower || less(lower, x)) && (!higher || less(x, higher)) && !equals(x, up),
      );
      return [lower, higher].every((x) => !x || inside(x)) && !nearer.some(inside);
    });
  });
});
