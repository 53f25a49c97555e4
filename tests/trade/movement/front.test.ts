import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { add, atMost, inches, less, type Ratio, subtract, times } from '../../../src/length/length';
import { type SolidFront, solidFront } from '../../../src/trade/movement/front';
import { factorsOf } from '../../../src/trade/movement/season';
import { coefficientOf, species } from '../../../src/trade/movement/species';
import { runs } from '../../runs';
import { l, w } from '../grooves/sample';
import { thou, year } from './sample';

const oak: SolidFront = {
  opening: l('9 1/4'),
  least: l('1/32'),
  season: year('6', '7', '12'),
  coefficient: coefficientOf('red-oak'),
  grain: l('1/32'),
};
const found = (more: Partial<SolidFront> = {}) => {
  const result = solidFront({ ...oak, ...more });
  if (!result.ok) throw new Error(result.error.code);
  return result.value;
};
const refused = (more: Partial<SolidFront>) => {
  const result = solidFront({ ...oak, ...more });
  return result.ok ? 'ok' : result.error;
};

describe('solidFront', () => {
  // (9 1/4 - 1/16) / 1.01845 = 9.1875 / 1.01845 = 9.0211, down to 9. Now (9.25 - 9) / 2 = 1/8; summer 9 × 1.01845 =
  // 9.16605, gap .04198; winter 9 × .99631 = 8.96679, gap .14161
  test('Example 5 of movement: 9 high, gaps now 1/8, summer .042, winter .142', () => {
    const { high, now, summer, winter, tight, wide } = found();
    expect([w(high.value), w(now), thou(summer), thou(winter)]).toEqual(['9', '1/8', 42, 142]);
    expect([tight, wide]).toEqual([undefined, undefined]);
  });

  // 14 high: 13.9375 / 1.01845 = 13.685, down to 13 21/32; × .99631 = 13.6059; gap .1971, .0408 over 5/32
  test('a high front opens too far in winter: by how much, and the highest opening that would not', () => {
    const { high, winter, wide, openingMost } = found({ opening: l('14') });
    expect([w(high.value), thou(winter), thou(wide)]).toEqual(['13 21/32', 197, 41]);
    if (!openingMost) throw new Error('no opening');
    expect(found({ opening: openingMost }).wide).toBeUndefined();
    expect(less(openingMost, l('14'))).toBe(true);
  });

  test('a summer gap under 1/32 is said, by how much', () => {
    // least 0: 9.25 / 1.01845 = 9.0824, down to 9 1/16 = 9.0625, × 1.01845 = 9.2297, gap .0101, .0211 under
    const { summer, tight } = found({ least: l('0') });
    expect([thou(summer), thou(tight)]).toEqual([10, 21]);
  });

  test('bad input is refused, and gaps that leave no front', () => {
    expect(refused({ opening: l('0') })).toEqual({ code: 'not-positive', what: 'opening' });
    expect(refused({ least: l('-1/32') })).toEqual({ code: 'least-negative' });
    expect(refused({ opening: l('1/4'), least: l('3/16') })).toMatchObject({
      code: 'no-front',
      by: l('1/8'),
    });
    expect(refused({ season: year('8', '7', '12') })).toMatchObject({ code: 'below-low' });
  });

  test('at both ends of the year it stays in its opening, its summer gap not under the least', () => {
    const opening = fc.bigInt({ min: 128n, max: 1500n }).map((x) => inches(x, 64n));
    const least = fc.bigInt({ min: 0n, max: 8n }).map((x) => inches(x, 64n));
    const season = fc
      .tuple(fc.integer({ min: 60, max: 100 }), fc.nat(30), fc.nat(30))
      .map(([low, a, b]) => year(`${low / 10}`, `${(low + a) / 10}`, `${(low + a + b) / 10}`));
    const coefficient = fc.constantFrom(...species).map((of): Ratio => coefficientOf(of));
    fc.assert(
      fc.property(opening, least, season, coefficient, (o, g, s, c) => {
        const { high, summer, winter, now } = found({ opening: o, least: g, season: s, coefficient: c });
        expect(atMost(g, summer)).toBe(true);
        expect(atMost(summer, now) && atMost(now, winter)).toBe(true);
        const { damp } = factorsOf(s, c);
        const more = times(add(high.value, oak.grain), damp);
        expect(less(subtract(o, more), times(g, 2n))).toBe(true);
      }),
      { numRuns: runs(200) },
    );
  });
});
