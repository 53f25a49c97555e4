import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { add, atMost, inches, less, ratio, subtract, times } from '../../../src/length/length';
import { type PanelPlan, panelOf } from '../../../src/trade/movement/panel';
import { coefficientOf, species } from '../../../src/trade/movement/species';
import { runs } from '../../runs';
import { l, w } from '../grooves/sample';
import { thou, year } from './sample';

const oak: PanelPlan = {
  opening: l('10 5/8'),
  groove: l('3/8'),
  tip: l('1/32'),
  season: year('6', '8', '12'),
  coefficient: coefficientOf('red-oak'),
  grain: l('1/32'),
};
const found = (more: Partial<PanelPlan> = {}) => {
  const result = panelOf({ ...oak, ...more });
  if (!result.ok) throw new Error(result.error.code);
  return result.value;
};
const refused = (more: Partial<PanelPlan>) => {
  const result = panelOf({ ...oak, ...more });
  return result.ok ? 'ok' : result.error;
};

describe('panelOf', () => {
  // (270 + 20 - 1.6) / 1.01476 = 284.2, down to 284; 284 × .99262 = 281.90408; - 280 leaves 1.90408, 1.09592 under 3
  test('in a metric shop 3 mm stays in the groove: common practice, no source', () => {
    const sizes = { opening: l('270 mm'), groove: l('10 mm'), tip: l('0.8 mm'), grain: l('1 mm') };
    const mm = panelOf({ ...oak, ...sizes, units: 'mm' });
    expect(mm.ok && [mm.value.cut.value, mm.value.pushedShort]).toEqual(['284 mm', '1.09592 mm'].map(l));
  });

  // (10 5/8 + 3/4 - 1/16) / 1.01476 = 11.3125 / 1.01476 = 11.148, down to 11 1/8. 11.125 × 1.01476 = 11.2892;
  // 11.125 × .99262 = 11.0429; pushed 11.0429 - 10.625 - .375 = .0429; pinned .4179 / 2 = .2089.
  test('Example 3 of movement: cut 11 1/8, from 11.043 to 11.289', () => {
    const { cut, widest, least, pushed, pinned } = found();
    expect([w(cut.value), thou(widest), thou(least), thou(pushed), thou(pinned)]).toEqual([
      '11 1/8',
      11289,
      11043,
      43,
      209,
    ]);
  });

  // 1/8 - .0429 = .0821. Grooves of 13/32, 7/16, 15/32: (10.625 + .8125 - .0625) / 1.01476 = 11.2095, down to 11 3/16,
  // × .99262 = 11.1049, - 11.03125 = .0737; (10.625 + .875 - .0625) / 1.01476 = 11.2711, down to 11 1/4, × .99262 =
  // 11.16698, - 11.0625 = .10448; 15/32: 11.5 / 1.01476 = 11.3327, down to 11 5/16, × .99262 = 11.2290,
  // - 11.09375 = .1353
  test('pushed over it has too little left, by how much, and which groove would do, its own panel rounded', () => {
    expect([thou(found().pushedShort), w(found().deeper)]).toEqual([82, '15/32']);
    expect([found().pinnedShort, found({ groove: l('15/32') }).pushedShort]).toEqual([undefined, undefined]);
    const deep = found({ groove: l('15/32') });
    expect([w(deep.cut.value), thou(deep.pushed), deep.deeper]).toEqual(['11 5/16', 135, undefined]);
    expect(thou(found({ groove: l('7/16') }).pushed)).toBe(104);
  });

  test('a still year leaves what the tips and rounding leave', () => {
    // 10 5/8 + 3/4 - 1/16 = 11 5/16; pushed 11 5/16 - 11 = 5/16
    const still = found({ season: year('8', '8', '8') });
    expect([w(still.cut.value), w(still.widest), w(still.pushed)]).toEqual(['11 5/16', '11 5/16', '5/16']);
  });

  test('bad input is refused', () => {
    expect(refused({ opening: l('0') })).toEqual({ code: 'not-positive', what: 'opening' });
    expect(refused({ groove: l('-1/8') })).toEqual({ code: 'not-positive', what: 'groove' });
    expect(refused({ tip: l('-1/64') })).toEqual({ code: 'tip-negative' });
    expect(refused({ tip: l('1/2') })).toMatchObject({ code: 'tip-over-groove', by: l('1/8') });
    expect(refused({ season: year('9', '8', '12') })).toMatchObject({ code: 'below-low' });
    expect(refused({ season: year('6', '8', '7') })).toMatchObject({ code: 'above-high' });
    expect(refused({ coefficient: ratio(1n, 100n) })).toMatchObject({ code: 'coefficient' });
  });

  const plans = fc.record({
    opening: fc.bigInt({ min: 128n, max: 3000n }).map((x) => inches(x, 64n)),
    groove: fc.bigInt({ min: 8n, max: 64n }).map((x) => inches(x, 64n)),
    tip: fc.bigInt({ min: 0n, max: 7n }).map((x) => inches(x, 64n)),
    season: fc
      .tuple(fc.integer({ min: 60, max: 100 }), fc.nat(30), fc.nat(30))
      .map(([low, a, b]) => year(`${low / 10}`, `${(low + a) / 10}`, `${(low + a + b) / 10}`)),
    coefficient: fc.constantFrom(...species).map((of) => coefficientOf(of)),
    grain: fc.constantFrom(l('1/16'), l('1/32'), l('1/64')),
  });

  test('in the dampest it fills no more than its grooves less the tips, and one mark more would', () => {
    fc.assert(
      fc.property(plans, (plan) => {
        const { cut, widest } = found(plan);
        const room = subtract(add(plan.opening, times(plan.groove, 2n)), times(plan.tip, 2n));
        expect(atMost(widest, room)).toBe(true);
        const grown = ratio(1n).add(
          plan.coefficient.mul(plan.season.high.sub(plan.season.now)),
        ) as typeof plan.coefficient;
        expect(less(room, times(add(cut.value, plan.grain), grown))).toBe(true);
      }),
      { numRuns: runs(200) },
    );
  });

  test('a groove named as deep enough is, and the mark before it is not', () => {
    fc.assert(
      fc.property(plans, (plan) => {
        const { deeper, pushedShort } = found(plan);
        if (!deeper) return;
        expect(pushedShort).toBeDefined();
        expect(found({ ...plan, groove: deeper }).pushedShort).toBeUndefined();
        const before = subtract(deeper, plan.grain);
        if (less(plan.groove, before)) expect(found({ ...plan, groove: before }).pushedShort).toBeDefined();
      }),
      { numRuns: runs(100) },
    );
  });
});
