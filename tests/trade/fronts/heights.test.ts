import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  equals,
  inches,
  isPositive,
  type Length,
  less,
  longest,
  ratio,
  shortest,
  subtract,
  sum,
  times,
} from '../../../src/length/length';
import { heightsOf, lowWarnings, type Share } from '../../../src/trade/fronts/heights';
import { runs } from '../../runs';
import { l, w } from '../grooves/sample';

type Asked = Parameters<typeof heightsOf>[0];

const total = l('28 27/32');
const step: Share = { kind: 'step', step: l('11/16') };
const equal: Share = { kind: 'equal' };
const exact = (share: Share, more: Partial<Asked> = {}) => {
  const made = heightsOf({ total, count: 5, share, ...more });
  if (!made.ok) throw new Error(made.error.code);
  return made.value;
};
const words = (share: Share, more: Partial<Asked> = {}) => exact(share, more).map((x) => w(x));
const fault = (h: Asked) => {
  const made = heightsOf(h);
  return made.ok ? undefined : made.error;
};
const by = (h: Asked): string | undefined => {
  const error = fault(h);
  return error && 'by' in error ? `${error.code} ${w(error.by)}` : error?.code;
};

describe('heightsOf', () => {
  test('Example 1 of fronts: a step of 11/16 over 28 27/32, exact', () => {
    expect(words(step)).toEqual(['4 63/160', '5 13/160', '5 123/160', '6 73/160', '7 23/160']);
  });

  test('a step down is the same bank turned over', () => {
    expect(words({ kind: 'step', step: l('-11/16') })).toEqual([...words(step)].reverse());
  });

  // Worked by hand: h_1 = S(q-1)/(q^n-1) = 923/32 · 1/4 · 1024/2101 = 923·8/2101.
  test.each(['0', '-1/8'])('a height given as %s is refused by its front', (high) => {
    const found = heightsOf({
      total: l('20'),
      count: 2,
      share: { kind: 'equal' },
      given: [undefined, l(high)],
    });
    expect(!found.ok && found.error).toEqual({ code: 'given-not-positive', front: 2 });
  });

  test('Example 2 of fronts: a ratio of 5/4 starts from S(q-1)/(q^n-1)', () => {
    const heights = exact({ kind: 'ratio', ratio: ratio(5n, 4n) });
    expect(heights[0] && equals(heights[0], inches(7384n, 2101n))).toBe(true);
    expect(equals(sum(heights), total)).toBe(true);
  });

  test('a ratio of one is equal, and weights of one are too', () => {
    const alike = words(equal);
    expect(alike).toEqual(['5 123/160', '5 123/160', '5 123/160', '5 123/160', '5 123/160']);
    expect(words({ kind: 'ratio', ratio: ratio(1n) })).toEqual(alike);
    expect(words({ kind: 'weights', weights: [] })).toEqual(alike);
  });

  test('a weight that is not said is one', () => {
    const made = words(
      { kind: 'weights', weights: [ratio(1n, 2n), ratio(3n, 2n)] },
      { total: l('9'), count: 3 },
    );
    expect(made).toEqual(['1 1/2', '4 1/2', '3']);
  });

  test('given heights stand and the others share what they leave by the rule', () => {
    const made = exact(step, { total: l('20'), count: 4, given: [undefined, l('6')] });
    expect(made.map((x) => w(x))).toEqual(['3 47/48', '6', '4 2/3', '5 17/48']);
  });

  test('a weight goes with its front, whatever is given over it', () => {
    const share: Share = { kind: 'weights', weights: [ratio(7n), ratio(1n), ratio(2n)] };
    expect(words(share, { total: l('9'), count: 3, given: [l('3')] })).toEqual(['3', '2', '4']);
  });

  test('when all are given they stand, and what they leave of the total is left', () => {
    const given = [l('4'), l('5')];
    expect(words(step, { total: l('10'), count: 2, given })).toEqual(['4', '5']);
    expect(words(step, { total: l('9'), count: 2, given })).toEqual(['4', '5']);
  });

  test('one too low for its contents is held at what they ask, the rest share again', () => {
    const held = words(equal, { total: l('27'), count: 4, least: [undefined, l('9')] });
    expect(held).toEqual(['6', '9', '6', '6']);
    const enough = words(equal, { total: l('27'), count: 4, least: [undefined, l('6 3/4')] });
    expect(enough).toEqual(['6 3/4', '6 3/4', '6 3/4', '6 3/4']);
  });

  test('holding one can bring the next under its least: it is held too', () => {
    const least = [l('6'), l('2 3/4'), undefined];
    expect(words(equal, { total: l('11'), count: 3, least })).toEqual(['6', '2 3/4', '2 1/4']);
  });

  // By the step alone 1, 3, 5: the second is an inch under, the first a fifth. With 4 held the step closes up over it
  // and the first comes to 1 1/2, which is enough.
  test('the one farthest under is held first, and holding it can lift another over its least', () => {
    const share: Share = { kind: 'step', step: l('2') };
    const made = words(share, { total: l('9'), count: 3, least: [l('1 1/5'), l('4')] });
    expect(made).toEqual(['1 1/2', '4', '3 1/2']);
  });

  test('a least above what is given alters nothing given', () => {
    expect(words(equal, { total: l('9'), count: 2, given: [l('4')], least: [l('6')] })).toEqual(['4', '5']);
  });
});

describe('heightsOf refuses', () => {
  test('a count that is not one to twenty-four, whole', () => {
    for (const count of [0, -1, 25, 2.5, Number.NaN])
      expect(fault({ total, count, share: equal })?.code).toBe('count-not-whole');
    for (const count of [1, 24]) expect(fault({ total, count, share: equal })).toBeUndefined();
  });

  test('gaps that take the whole opening, by how much', () => {
    expect(by({ total: l('-3/16'), count: 2, share: equal })).toBe('nothing-left 3/16');
    expect(by({ total: l('0'), count: 2, share: equal })).toBe('nothing-left 0');
    expect(by({ total: l('1/64'), count: 2, share: equal })).toBeUndefined();
  });

  test('given heights over the total, by how much', () => {
    const given = [l('20'), l('9')];
    expect(by({ total, count: 2, share: step, given })).toBe('given-too-high 5/32');
    expect(by({ total: l('29'), count: 2, share: step, given })).toBeUndefined();
  });

  test('given heights that leave the others nothing', () => {
    const given = [l('20'), l('9')];
    expect(by({ total: l('29'), count: 3, share: equal, given })).toBe('given-too-high 0');
    expect(by({ total: l('29 1/64'), count: 3, share: equal, given })).toBeUndefined();
  });

  test('contents that ask for more than there is, by how much all of them together', () => {
    const least = [l('20'), l('8'), l('4')];
    expect(by({ total: l('28 27/32'), count: 3, share: equal, least })).toBe('least-too-high 3 5/32');
    expect(by({ total: l('32'), count: 3, share: equal, least })).toBeUndefined();
    const given = [undefined, undefined, l('5')];
    expect(by({ total: l('32'), count: 3, share: equal, least, given })).toBe('least-too-high 1');
  });

  test('a least under nothing makes no room for the others', () => {
    const least = [l('-5'), l('10'), l('4')];
    expect(by({ total: l('9'), count: 3, share: equal, least })).toBe('least-too-high 5');
    expect(by({ total: l('14 1/64'), count: 3, share: equal, least })).toBeUndefined();
  });

  test('contents that leave a front without any nothing at all', () => {
    const least = [l('20'), l('8')];
    expect(by({ total: l('28'), count: 3, share: equal, least })).toBe('least-too-high 0');
    expect(by({ total: l('28 1/64'), count: 3, share: equal, least })).toBeUndefined();
  });

  test('a step of 2S/(n(n-1)), either way; just under, it goes', () => {
    const most = l('2 283/320');
    const at = (x: Length) => fault({ total, count: 5, share: { kind: 'step', step: x } });
    const error = at(most);
    expect(error?.code === 'step-too-big' && w(error.most)).toBe('2 283/320');
    expect(at(times(most, -1n))?.code).toBe('step-too-big');
    expect(at(subtract(most, l('1/1000')))).toBeUndefined();
    expect(at(times(subtract(most, l('1/1000')), -1n))).toBeUndefined();
  });

  test('a step by the fronts that are shared, not by all', () => {
    const at = (x: string) =>
      fault({ total: l('20'), count: 4, share: { kind: 'step', step: l(x) }, given: [l('5')] });
    const error = at('5');
    expect(error?.code === 'step-too-big' && w(error.most)).toBe('5');
    expect(at('4 63/64')).toBeUndefined();
  });

  test('no step for one front alone', () => {
    expect(words({ kind: 'step', step: l('900') }, { count: 1 })).toEqual(['28 27/32']);
  });

  test('a ratio of nothing or less', () => {
    const at = (n: bigint) =>
      fault({ total, count: 3, share: { kind: 'ratio', ratio: ratio(n, 100n) } })?.code;
    expect([at(0n), at(-5n), at(1n)]).toEqual(['ratio-not-positive', 'ratio-not-positive', undefined]);
  });

  test('a weight of nothing or less, by its front', () => {
    const at = (...ns: bigint[]) =>
      fault({ total, count: 2, share: { kind: 'weights', weights: ns.map((n) => ratio(n, 100n)) } });
    expect(at(100n, 0n)).toEqual({ code: 'weight-not-positive', front: 2 });
    expect(at(-1n, 1n)).toEqual({ code: 'weight-not-positive', front: 1 });
    expect(at(100n, 1n)).toBeUndefined();
    expect(at(100n, 1n, 0n)).toBeUndefined();
  });
});

describe('lowWarnings', () => {
  test('a front under 2 1/2 is named; one of 2 1/2 is not', () => {
    expect(lowWarnings([l('2 1/2'), l('2 31/64'), l('1')])).toEqual([2, 3]);
    expect(lowWarnings([l('65 mm'), l('64 mm')], 'mm')).toEqual([2]);
  });
});

const lengths = fc.bigInt({ min: 64n, max: 64n * 40n }).map((n) => inches(n, 64n));
const small = fc.bigInt({ min: 1n, max: 64n * 9n }).map((n) => inches(n, 64n));
const some = fc.array(fc.option(small, { nil: undefined }), { minLength: 5, maxLength: 5 });
const shares: fc.Arbitrary<Share> = fc.oneof(
  fc.constant(equal),
  fc.bigInt({ min: -8n, max: 8n }).map((n): Share => ({ kind: 'step', step: inches(n, 16n) })),
  fc.bigInt({ min: 1n, max: 12n }).map((n): Share => ({ kind: 'ratio', ratio: ratio(n, 6n) })),
  fc
    .array(fc.bigInt({ min: 1n, max: 9n }), { minLength: 5, maxLength: 5 })
    .map((ws): Share => ({ kind: 'weights', weights: ws.map((x) => ratio(x)) })),
);

describe('heights in general', () => {
  test('come to the total exactly, keep what is given, and keep every least', () => {
    let shared = 0;
    fc.assert(
      fc.property(lengths, shares, some, some, (all, share, given, least) => {
        const made = heightsOf({ total: all, count: 5, share, given, least });
        if (!made.ok) return;
        shared += 1;
        if (given.some((x) => !x)) expect(equals(sum(made.value), all)).toBe(true);
        made.value.forEach((h, k) => {
          expect(isPositive(h)).toBe(true);
          const [said, wanted] = [given[k], least[k]];
          if (said) expect(equals(h, said)).toBe(true);
          else if (wanted) expect(less(h, wanted)).toBe(false);
        });
      }),
      { numRuns: runs(200) },
    );
    expect(shared).toBeGreaterThan(runs(200) / 10);
  });

  test('are refused for their contents only when given and leasts are too much together', () => {
    fc.assert(
      fc.property(lengths, shares, some, (all, share, least) => {
        const asked = sum(least.flatMap((x) => x ?? []));
        const error = fault({ total: all, count: 5, share, least });
        const over = less(all, asked);
        expect(over ? error?.code === 'least-too-high' && w(error.by) : undefined).toBe(
          over ? w(subtract(asked, all)) : undefined,
        );
        if (!over && !(equals(all, asked) && least.some((x) => !x)))
          expect(error?.code).not.toBe('least-too-high');
      }),
      { numRuns: runs(200) },
    );
  });

  test('equal ones stand at one level, but for those whose contents ask for more', () => {
    fc.assert(
      fc.property(lengths, some, (all, least) => {
        const made = heightsOf({ total: all, count: 5, share: equal, least });
        if (!made.ok) return;
        const [first = all, ...rest] = made.value;
        const level = shortest(first, ...rest);
        made.value.forEach((h, k) => {
          expect(w(h)).toBe(w(longest(level, least[k] ?? level)));
        });
      }),
      { numRuns: runs(200) },
    );
  });
});
