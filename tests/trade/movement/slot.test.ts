import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { add, atMost, half, inches, ratio, subtract } from '../../../src/length/length';
import { slotOf } from '../../../src/trade/movement/slot';
import { coefficientOf, species } from '../../../src/trade/movement/species';
import { runs } from '../../runs';
import { l, w } from '../grooves/sample';
import { thou, year } from './sample';

type Plan = Parameters<typeof slotOf>[0];
const maple: Plan = {
  reach: l('15 3/4'),
  shank: inches(164n, 1000n),
  margin: l('1/32'),
  season: year('6', '7', '12'),
  coefficient: coefficientOf('hard-maple'),
  grain: l('1/16'),
};
const found = (more: Partial<Plan> = {}) => {
  const result = slotOf({ ...maple, ...more });
  if (!result.ok) throw new Error(result.error.code);
  return result.value;
};
const refused = (more: Partial<Plan>) => {
  const result = slotOf({ ...maple, ...more });
  return result.ok ? 'ok' : result.error;
};

describe('slotOf', () => {
  // out 15.75 × .00353 × 5 = .27799, in × 1 = .05560; .164 + .27799 + .05560 + .0625 = .56009, up to 9/16 = .5625;
  // set .03125 + .05560 + .082 = .16885
  test('Example 4 of movement: out .278, in .056, slot 9/16, the screw .169 from the inner end', () => {
    const { out, in: back, long, set } = found();
    expect([thou(out), thou(back), w(long.value), thou(set)]).toEqual([278, 56, '9/16', 169]);
  });

  test('on the mark is long enough, a hair more goes to the next', () => {
    // a still year: shank 1/8 and 2 × 1/32 are just 3/16
    const still = { season: year('7', '7', '7'), shank: l('1/8') };
    expect([
      w(found(still).long.value),
      w(found({ ...still, shank: inches(126n, 1000n) }).long.value),
    ]).toEqual(['3/16', '1/4']);
  });

  test('bad input is refused', () => {
    expect(refused({ reach: l('0') })).toEqual({ code: 'not-positive', what: 'reach' });
    expect(refused({ shank: l('0') })).toEqual({ code: 'not-positive', what: 'shank' });
    expect(refused({ margin: l('-1/64') })).toEqual({ code: 'margin-negative' });
    expect(refused({ season: year('6', '13', '12') })).toMatchObject({ code: 'above-high' });
  });

  test('driest and dampest, the screw keeps its margin at both ends of the slot', () => {
    const size = fc.bigInt({ min: 1n, max: 2000n }).map((x) => inches(x, 64n));
    const small = fc.bigInt({ min: 0n, max: 20n }).map((x) => inches(x, 64n));
    const season = fc
      .tuple(fc.integer({ min: 40, max: 100 }), fc.nat(50), fc.nat(50))
      .map(([low, a, b]) => year(`${low / 10}`, `${(low + a) / 10}`, `${(low + a + b) / 10}`));
    const coefficient = fc.constantFrom(...species).map((of) => coefficientOf(of, 'quarter'));
    fc.assert(
      fc.property(size, size, small, season, coefficient, (reach, shank, margin, s, c) => {
        const plan = { ...maple, reach, shank, margin, season: s, coefficient: c };
        const { set, long } = found(plan);
        // where the middle of the screw stands, from the inner end, at a moisture: by the rule itself
        const at = (m: typeof s.now) => add(set, reach.mul(c.mul(m.sub(s.now))) as typeof reach);
        expect(atMost(margin, subtract(at(s.low), half(shank)))).toBe(true);
        expect(atMost(margin, subtract(long.value, add(at(s.high), half(shank))))).toBe(true);
        expect(c.gt(ratio(0n))).toBe(true);
      }),
      { numRuns: runs(200) },
    );
  });
});
