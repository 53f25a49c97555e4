import { describe, expect, test } from 'vitest';
import { inches } from '../../../src/length/length';
import { gridOf, stepsDown, stepsUp } from '../../../src/trade/sheets/grid';
import { eighth, n } from './pools';

describe('the common step', () => {
  test('is exact for fractions and a kerf in thousandths, and rounds pieces up and sheets down where it is not', () => {
    expect(gridOf([inches(191n, 12n), eighth, n(96)], n(96)).exact).toBe(true);
    expect(gridOf([inches(39n, 500n), n(17, 3, 4), n(96)], n(96)).exact).toBe(true);
    const rough = gridOf([inches(1n, 7919n), inches(1n, 7907n)], n(96));
    expect(rough.exact).toBe(false);
    const third = inches(1n, 3n);
    expect(stepsUp(third, rough)).toBe(stepsDown(third, rough) + 1);
  });
});
