import { describe, expect, test } from 'vitest';
import { mixOf } from '../../../src/store/handover/mixes';

describe('mixOf', () => {
  test('the first pass carries each block by itself', () => {
    for (let k = 0; k < 9; k += 1)
      expect([...mixOf(k, 9)].map((on, i) => (on ? i : -1)).filter((i) => i >= 0)).toEqual([k]);
  });

  test('a later code carries about half, and never nothing', () => {
    let blocks = 0;
    for (let k = 40; k < 1040; k += 1) {
      const mix = [...mixOf(k, 40)].filter((on) => on === 1).length;
      expect(mix).toBeGreaterThan(0);
      blocks += mix;
    }
    expect(blocks / 1000).toBeGreaterThan(19);
    expect(blocks / 1000).toBeLessThan(21);
    for (let k = 1; k < 3000; k += 1) expect(mixOf(k, 1)).toEqual(new Uint8Array([1]));
  });
});
