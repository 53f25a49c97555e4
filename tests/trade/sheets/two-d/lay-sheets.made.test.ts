import path from 'node:path';
import { describe, expect, test } from 'vitest';
import { instancesOf, laid, problemOf } from './instances';
import { faultsOf } from './verify';

// All invented: full sheets cut up, with kerf, trim and grain, so that the fewest sheets are known.
const made = instancesOf(path.join(import.meta.dirname, 'data/2d-made-workshop.json'));

describe('workshop sheets cut up', () => {
  const found = made.map((instance) => {
    const problem = problemOf(instance);
    return { ...instance, problem, plan: laid(problem, instance.best_known) };
  });

  test('there are twenty', () => expect(found).toHaveLength(20));

  test('every plan can be cut, and none is below the fewest or proved above it', () => {
    for (const { name, bound, best_known, problem, plan } of found) {
      expect(faultsOf(problem, plan), name).toEqual([]);
      expect(plan.cost, name).toBeGreaterThanOrEqual(bound);
      expect(plan.bound, name).toBeLessThanOrEqual(best_known);
    }
  });

  test('no plan takes more than one sheet above the fewest', () => {
    for (const { name, best_known, plan } of found)
      expect(plan.cost, name).toBeLessThanOrEqual(best_known + 1);
  });

  test('nine or more take the fewest with little effort', () => {
    expect(found.filter((i) => i.plan.cost <= i.best_known).length).toBeGreaterThanOrEqual(9);
  });
});

test('instances that use less than 95 % of their sheets are all laid on the fewest', () => {
  const easy = made.filter((i) => Number(/_u([\d.]+)_/.exec(i.name)?.[1]) < 0.95);
  expect(easy).toHaveLength(15);
  for (const instance of easy)
    expect(laid(problemOf(instance), instance.best_known, 2000).cost, instance.name).toBe(
      instance.best_known,
    );
});
