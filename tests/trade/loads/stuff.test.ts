import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { add, inches, ratio } from '../../../src/length/length';
import { perFootOf, slabWeight, stiffnessOf } from '../../../src/trade/loads/stuff';
import { runs } from '../../runs';
import { l } from '../grooves/sample';

const foot = (thick: string, stuff: 'ply' | 'hardwood' | 'softwood' | 'pressed' = 'ply') =>
  perFootOf(stuff, l(thick)).valueOf();

describe('perFootOf', () => {
  // Common practice, no source: 23/32 ply 2.2, 1/4 ply (reads 7/32) .75, oak 3/4 2.8. Half way between the two plies,
  // at 15/32, half way between their weights: 1.475. Thinner than 7/32 by its share: 1/8 is 4/7 of .75. 3/4 softwood
  // 34 lb a cubic foot ÷ 16 = 2.125; 3/4 pressed .8 × 62.4 ÷ 16 = 3.12.
  test.each([
    ['23/32', 'ply', 2.2],
    ['7/32', 'ply', 0.75],
    ['15/32', 'ply', 1.475],
    ['1/8', 'ply', 0.75 * (4 / 7)],
    ['1 7/16', 'ply', 4.4],
    ['3/4', 'hardwood', 2.8],
    ['3/4', 'softwood', 2.125],
    ['3/4', 'pressed', 3.12],
  ] as const)('Example 1 of loads: %s %s weighs %s lb a square foot', (thick, stuff, pounds) => {
    expect(foot(thick, stuff)).toBeCloseTo(pounds, 12);
  });

  test('a thin back is no mere share of 23/32: that would be .67', () => {
    expect(foot('7/32')).toBeGreaterThan((2.2 * 7) / 23);
  });

  test('thicker is heavier, without a step', () => {
    const thick = fc.bigInt({ min: 1n, max: 2000n });
    fc.assert(
      fc.property(thick, fc.constantFrom('ply', 'hardwood', 'softwood', 'pressed'), (n, stuff) => {
        const [a, b] = [perFootOf(stuff, inches(n, 1000n)), perFootOf(stuff, inches(n + 1n, 1000n))];
        expect(a.lt(b)).toBe(true);
        expect(b.sub(a).lt(ratio(1n, 100n))).toBe(true);
      }),
      { numRuns: runs(200) },
    );
  });
});

describe('slabWeight', () => {
  const at = { long: l('24'), wide: l('18'), thick: l('23/32') };
  test('3 square feet of 23/32 ply weigh 6.6 lb; what was weighed goes before the kind', () => {
    expect(slabWeight(at).toString()).toBe('6.6');
    expect(slabWeight({ ...at, stuff: 'hardwood', perFoot: ratio(2n) }).toString()).toBe('6');
  });

  const foot = { long: l('12'), wide: l('12'), thick: l('23/32') };
  const pounds = (more: Partial<typeof foot>) => slabWeight({ ...foot, ...more }).toFraction();

  test('a square foot of 23/32 ply weighs 2.2 lb (common practice, no source); half as long or wide, half as much', () => {
    expect([pounds({}), pounds({ long: l('6') }), pounds({ wide: l('6') })]).toEqual([
      '11/5',
      '11/10',
      '11/10',
    ]);
  });

  test('twice as thick as 23/32 is two of it, half as thick as 7/32 half of it', () => {
    expect([pounds({ thick: l('1 7/16') }), pounds({ thick: l('7/64') })]).toEqual(['22/5', '3/8']);
  });

  test('a piece cut in two weighs what it did', () => {
    const part = fc.bigInt({ min: 0n, max: 2000n }).map((n) => inches(n, 77n));
    fc.assert(
      fc.property(part, part, part, (a, b, wide) => {
        const weigh = (long: typeof a) => slabWeight({ ...foot, long, wide });
        expect(
          weigh(a)
            .add(weigh(b))
            .equals(weigh(add(a, b))),
        ).toBe(true);
      }),
      { numRuns: runs(100) },
    );
  });
});

describe('stiffnessOf', () => {
  // Common practice, no source: ply 1.2 to 1.5 million along its face grain, .6 to .8 across.
  test('ply is half as stiff across its face grain; solid wood across its grain is no shelf', () => {
    expect([
      stiffnessOf('ply', 'along')?.least.toString(),
      stiffnessOf('ply', 'across')?.most.toString(),
    ]).toEqual(['1200000', '800000']);
    expect([stiffnessOf('hardwood', 'across'), stiffnessOf('softwood', 'across')]).toEqual([
      undefined,
      undefined,
    ]);
  });

  test('the least is never over the most', () => {
    for (const stuff of ['ply', 'hardwood', 'softwood', 'pressed'] as const)
      for (const grain of ['along', 'across'] as const) {
        const found = stiffnessOf(stuff, grain);
        if (found) expect(found.least.lt(found.most)).toBe(true);
      }
  });
});
