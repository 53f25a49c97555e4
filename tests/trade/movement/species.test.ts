import { describe, expect, test } from 'vitest';
import { ratio } from '../../../src/length/length';
import { coefficientOf, species } from '../../../src/trade/movement/species';

describe('coefficientOf', () => {
  test('a cut nobody knows counts as flat-sawn', () => {
    for (const of of species) expect(coefficientOf(of).equals(coefficientOf(of, 'flat'))).toBe(true);
  });

  // no wood shrinks more along a radius than along its rings, and all of them lie in the range the rules take
  test('flat-sawn moves more than quartersawn, and every one is over 0 and under .01', () => {
    expect(species.length).toBeGreaterThan(20);
    for (const of of species) {
      expect(coefficientOf(of, 'quarter').lt(coefficientOf(of, 'flat')), of).toBe(true);
      expect(coefficientOf(of, 'quarter').gt(0n) && coefficientOf(of).lt(ratio(1n, 100n)), of).toBe(true);
    }
  });
});
