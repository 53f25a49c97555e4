import { expect, test } from 'vitest';
import { cutBefore } from '../../../src/screens/sheets/cut-bar';
import type { CutStep } from '../../../src/trade/sheets/cut-steps';

test('cutBefore: a cut inside another waits for it, until that one is made', () => {
  const [outer, inner] = [{ path: 'r' }, { path: 'rn' }] as unknown as readonly [CutStep, CutStep];
  const steps = [outer, inner];
  expect(cutBefore({ steps, done: () => false }, inner)).toBe(outer);
  expect(cutBefore({ steps, done: ({ path }) => path === 'r' }, inner)).toBeUndefined();
  expect(cutBefore({ steps, done: () => false }, outer)).toBeUndefined();
});
