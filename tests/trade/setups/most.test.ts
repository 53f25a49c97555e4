import { describe, expect, test } from 'vitest';
import { planOf } from '../../../src/plan/plan';
import { leastOperations } from '../../../src/trade/setups/most';
import { sample } from '../../plan/big-job';

describe('leastOperations', () => {
  test('counts no more than there are: the sample', () => {
    const { parts, operations } = planOf(sample(), {});
    const least = parts.reduce((n, part) => n + leastOperations(part), 0);
    expect(least).toBeGreaterThan(operations.length / 2);
    expect(least).toBeLessThanOrEqual(operations.length);
  });
});
