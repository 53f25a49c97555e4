import { expect, test } from 'vitest';
import { workOn } from '../../src/plan/part-work';
import type { Plan } from '../../src/plan/plan';

test('each part has its own operations, in the order of the plan; one that has none has none', () => {
  const operations = ['side', 'top', 'side', 'side'].map((part, k) => ({ id: `${k}`, part }));
  const plan = { operations } as unknown as Plan;
  const ids = (part: string) => workOn(plan, part).map(({ id }) => id);
  expect([ids('side'), ids('top'), ids('back')]).toEqual([['0', '2', '3'], ['1'], []]);
});
