import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { add, inches } from '../../../src/length/length';
import { crossGrain } from '../../../src/trade/movement/cross';
import { coefficientOf } from '../../../src/trade/movement/species';
import { runs } from '../../runs';
import { l, w } from '../grooves/sample';
import { thou, year } from './sample';

const oak = {
  length: l('16'),
  season: year('6', '8', '12'),
  coefficient: coefficientOf('red-oak'),
  grain: l('1/16'),
};
const found = (more: Partial<typeof oak> = {}) => {
  const result = crossGrain({ ...oak, ...more });
  if (!result.ok) throw new Error(result.error.code);
  return result.value;
};

describe('crossGrain', () => {
  // 16 × .00369 × 6 = .35424; - .03125 = .32299; (1/32) / .02214 = 1.4115, down to 1 3/8
  test('Example 6 of movement: a cleat glued across 16 of oak has .354 to go somewhere; 1 3/8 would do', () => {
    const { difference, over, longest } = found();
    expect([thou(difference), thou(over), w(longest)]).toEqual([354, 323, '1 3/8']);
  });

  // 400 × .00369 × 6 = 8.856 mm; - .8 = 8.056; .8 / .02214 = 36.1, down to 36. Common practice, no source.
  test('in a metric shop .8 mm is borne', () => {
    const mm = crossGrain({ ...oak, length: l('400 mm'), grain: l('1 mm'), units: 'mm' });
    expect(mm.ok && [mm.value.over, mm.value.longest]).toEqual(['8.056 mm', '36 mm'].map(l));
  });

  test('what would do does, and a mark more does not', () => {
    expect(found({ length: l('1 3/8') }).over).toBeUndefined();
    expect(found({ length: l('1 7/16') }).over).toBeDefined();
  });

  test('a still year has nothing to go anywhere', () => {
    expect([
      thou(found({ season: year('8', '8', '8') }).difference),
      found({ season: year('8', '8', '8') }).over,
    ]).toEqual([0, undefined]);
  });

  test('no length, or moistures in no order, are refused', () => {
    const code = (more: Partial<typeof oak>) => {
      const result = crossGrain({ ...oak, ...more });
      return result.ok ? 'ok' : result.error.code;
    };
    expect([
      code({ length: l('0') }),
      code({ season: year('9', '8', '12') }),
      code({ season: year('6', '8', '7') }),
    ]).toEqual(['not-positive', 'below-low', 'above-high']);
  });

  test('the longest named is not over, one mark longer is', () => {
    fc.assert(
      fc.property(fc.bigInt({ min: 64n, max: 4000n }), fc.integer({ min: 1, max: 60 }), (x, d) => {
        const at = { length: inches(x, 64n), season: year('6', '6', `${(60 + d) / 10}`) };
        const { longest } = found(at);
        if (!longest) return;
        expect(found({ ...at, length: add(longest, oak.grain) }).over).toBeDefined();
        if (longest.n > 0n) expect(found({ ...at, length: longest }).over).toBeUndefined();
      }),
      { numRuns: runs(100) },
    );
  });
});
