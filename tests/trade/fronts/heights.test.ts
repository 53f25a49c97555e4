import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { equals, inches, isPositive, type Length, less, ratio, sum } from '../../../src/length/length';
import { alike, fairRound, shareTrim } from '../../../src/trade/fronts/fair';
import { heightsOf, lowWarnings, type Share } from '../../../src/trade/fronts/heights';
import { runs } from '../../runs';
import { l, w } from '../grooves/sample';

const total = l('28 27/32');
const grain = inches(1n, 32n);
const step: Share = { kind: 'step', step: l('11/16') };
const exact = (share: Share, more: Partial<Parameters<typeof heightsOf>[0]> = {}) => {
  const made = heightsOf({ total, count: 5, share, ...more });
  if (!made.ok) throw new Error(made.error.code);
  return made.value;
};
const fault = (h: Parameters<typeof heightsOf>[0]) => {
  const made = heightsOf(h);
  return made.ok ? undefined : made.error;
};

describe('heightsOf', () => {
  test('EX 6a: a step of 11/16 over 28 27/32, exact, then cut at a thirty-second with nothing left', () => {
    const heights = exact(step);
    expect(heights.map((x) => w(x))).toEqual(['4 63/160', '5 13/160', '5 123/160', '6 73/160', '7 23/160']);
    const cut = fairRound(heights, { total, grain });
    expect(cut.heights.map((x) => w(x))).toEqual(['4 3/8', '5 1/16', '5 25/32', '6 15/32', '7 5/32']);
    expect(w(cut.left)).toBe('0');
  });

  test('EX 6b: a ratio of 5/4 at a sixty-fourth', () => {
    const heights = exact({ kind: 'ratio', ratio: ratio(5n, 4n) });
    const cut = fairRound(heights, { total, grain: inches(1n, 64n) });
    expect(cut.heights.map((x) => w(x))).toEqual(['3 33/64', '4 25/64', '5 1/2', '6 55/64', '8 37/64']);
    expect(w(sum(cut.heights))).toBe('28 27/32');
  });

  test('EX 6b: all alike at a thirty-second, 3/32 left', () => {
    const { each, left } = alike(total, 5, grain);
    expect([w(each), w(left)]).toEqual(['5 3/4', '3/32']);
  });

  test('H.5: from 29 9/32 the same step cuts 4 3/8, 5 1/16, 5 3/4, 6 15/32, 7 5/32', () => {
    const cut = fairRound(exact(step, { total: l('28 13/16') }), { total: l('28 13/16'), grain });
    expect(cut.heights.map((x) => w(x))).toEqual(['4 3/8', '5 1/16', '5 3/4', '6 15/32', '7 5/32']);
    expect(w(cut.left)).toBe('0');
  });

  test('a ratio of one is equal, and weights of one are too', () => {
    const equal = exact({ kind: 'equal' }).map((x) => w(x));
    expect(exact({ kind: 'ratio', ratio: ratio(1n) }).map((x) => w(x))).toEqual(equal);
    expect(exact({ kind: 'weights', weights: [] }).map((x) => w(x))).toEqual(equal);
  });

  test('given heights stand and the others share what they leave by the rule', () => {
    const made = exact(step, { given: [undefined, l('6'), undefined, undefined, undefined] });
    expect(w(made[1])).toBe('6');
    expect(w(sum(made))).toBe('28 27/32');
    expect(w(made[2]?.sub(made[0] ?? 0) as Length)).toBe('11/16');
  });

  test('one that comes out too low for its contents is held at what they ask, the rest share again', () => {
    const least = [l('5 1/2'), undefined, undefined, undefined, undefined];
    const made = exact({ kind: 'equal' }, { least: [l('7'), undefined, undefined, undefined, undefined] });
    expect(w(made[0])).toBe('7');
    expect(w(sum(made))).toBe('28 27/32');
    expect(exact({ kind: 'equal' }, { least }).map((x) => w(x))).toEqual(
      exact({ kind: 'equal' }).map((x) => w(x)),
    );
  });

  test('refused: no fronts, no room, too much given, a ratio or a share of nothing', () => {
    expect(fault({ total, count: 0, share: step })?.code).toBe('count-not-whole');
    expect(fault({ total, count: 25, share: step })?.code).toBe('count-not-whole');
    expect(fault({ total: l('0'), count: 2, share: step })).toMatchObject({ code: 'nothing-left' });
    const given = [l('20'), l('9')];
    expect(fault({ total, count: 2, share: step, given })).toMatchObject({ code: 'given-too-high' });
    expect(fault({ total: l('29'), count: 2, share: step, given })).toBeUndefined();
    expect(fault({ total, count: 3, share: { kind: 'ratio', ratio: ratio(0n) } })?.code).toBe(
      'ratio-not-positive',
    );
    expect(fault({ total, count: 2, share: { kind: 'weights', weights: [ratio(1n), ratio(0n)] } })).toEqual({
      code: 'weight-not-positive',
      front: 2,
    });
  });

  test('given heights over the total are refused by how much', () => {
    const error = fault({ total, count: 2, share: step, given: [l('20'), l('9')] });
    expect(error?.code === 'given-too-high' && w(error.by)).toBe('5/32');
  });

  test('contents that ask for more than there is are refused by how much', () => {
    const error = fault({ total, count: 2, share: { kind: 'equal' }, least: [l('20'), l('10')] });
    expect(error?.code === 'least-too-high' && w(error.by)).toBe('1 5/32');
  });

  test('a step of 2S/(n(n-1)) leaves the first front nothing; just under, it goes', () => {
    const at = (x: Length) => fault({ total, count: 5, share: { kind: 'step', step: x } });
    const most = total.div(10n) as Length;
    const error = at(most);
    expect(error?.code === 'step-too-big' && equals(error.most, most)).toBe(true);
    expect(at(most.sub(inches(1n, 1000n)) as Length)).toBeUndefined();
    expect(at(most.neg() as Length)?.code).toBe('step-too-big');
  });

  test('a front under 2 1/2 is named; one of 2 1/2 is not', () => {
    expect(lowWarnings([l('2 1/2'), l('2 31/64')])).toEqual([2]);
  });
});

const lengths = fc.bigInt({ min: 64n, max: 64n * 40n }).map((n) => inches(n, 64n));
const shares: fc.Arbitrary<Share> = fc.oneof(
  fc.constant<Share>({ kind: 'equal' }),
  fc.bigInt({ min: -8n, max: 8n }).map((n): Share => ({ kind: 'step', step: inches(n, 16n) })),
  fc.bigInt({ min: 1n, max: 12n }).map((n): Share => ({ kind: 'ratio', ratio: ratio(n, 6n) })),
  fc
    .array(fc.bigInt({ min: 1n, max: 9n }), { minLength: 8, maxLength: 8 })
    .map((ws): Share => ({ kind: 'weights', weights: ws.map((x) => ratio(x)) })),
);

describe('rounded together', () => {
  test('the sum is exact, nobody is off by a grain, and the order of heights is kept', () => {
    fc.assert(
      fc.property(lengths, fc.integer({ min: 1, max: 8 }), shares, (all, count, share) => {
        const made = heightsOf({ total: all, count, share });
        if (!made.ok) return;
        expect(equals(sum(made.value), all)).toBe(true);
        const cut = fairRound(made.value, { total: all, grain });
        expect(equals(sum([...cut.heights, cut.left]), all)).toBe(true);
        expect(less(cut.left, grain) && !less(cut.left, inches(0n))).toBe(true);
        made.value.forEach((h, k) => {
          const off = (cut.heights[k] ?? h).sub(h).abs() as Length;
          expect(less(off, grain)).toBe(true);
          const next = made.value[k + 1];
          if (next && !less(next, h)) expect(less(cut.heights[k + 1] ?? h, cut.heights[k] ?? h)).toBe(false);
        });
      }),
      { numRuns: runs(300) },
    );
  });

  test('given heights are never altered, and no least is undercut while there is room for all', () => {
    fc.assert(
      fc.property(
        lengths,
        fc.array(fc.option(lengths, { nil: undefined }), { minLength: 4, maxLength: 4 }),
        fc.array(fc.option(lengths, { nil: undefined }), { minLength: 4, maxLength: 4 }),
        (all, given, least) => {
          const made = heightsOf({ total: all, count: 4, share: { kind: 'equal' }, given, least });
          if (!made.ok) return;
          made.value.forEach((h, k) => {
            expect(isPositive(h)).toBe(true);
            const said = given[k];
            if (said) expect(equals(h, said)).toBe(true);
            const wanted = least[k];
            if (!said && wanted) expect(less(h, wanted)).toBe(false);
          });
          if (given.some((x) => !x)) expect(equals(sum(made.value), all)).toBe(true);
        },
      ),
      { numRuns: runs(300) },
    );
  });
});

describe('shareTrim', () => {
  test('H.8: 5/64 off two fronts is 1/32 and 3/64, the larger off the lower', () => {
    expect(shareTrim(l('5/64'), 2, inches(1n, 64n)).map((x) => w(x))).toEqual(['1/32', '3/64']);
  });

  test('a total between two grains is rounded up; nothing to take is nothing each', () => {
    expect(shareTrim(l('1/128'), 3, inches(1n, 64n)).map((x) => w(x))).toEqual(['0', '0', '1/64']);
    expect(shareTrim(l('0'), 2, inches(1n, 64n)).map((x) => w(x))).toEqual(['0', '0']);
    expect(() => shareTrim(l('-1/64'), 2, inches(1n, 64n))).toThrow(RangeError);
  });
});
