import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { spread } from '../../../src/screens/marks/spread';
import { runs } from '../../runs';

describe('spread', () => {
  test('rows of figures keep their order, never touch, and stay beside the board', () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 0, max: 9600 }), { minLength: 1, maxLength: 60 }), (places) => {
        const nears = [...places].sort((a, b) => a - b).map((x) => x / 100);
        const { height, rows } = spread(nears, 96);
        rows.forEach((y, k) => {
          expect(y).toBeGreaterThanOrEqual(41);
          expect(y).toBeLessThanOrEqual(height - 41);
          if (k > 0) expect(y - (rows[k - 1] ?? 0)).toBeGreaterThanOrEqual(83.999);
        });
      }),
      { numRuns: runs(300) },
    );
  });

  test('rows with room stand straight beside their marks', () => {
    const { height, rows } = spread([5, 15, 25], 34.5);
    expect(rows.map((y) => Math.round(((y - 10) / (height - 10)) * 34.5))).toEqual([5, 15, 25]);
  });
});
