import { signal } from '@preact/signals';
import { expect, test } from 'vitest';
import { planInHand } from '../../src/app/plan-in-hand';
import type { Job } from '../../src/job/job';
import type { Plan } from '../../src/plan/plan';
import type { Shop } from '../../src/trade/machines/shop';

const job = { id: 'j1' } as Job;
const planOf = (of: Job, shop: Shop) => ({ job: of, shop }) as unknown as Plan;

test('there is no plan before what works it out is here, then one that follows job and shop', async () => {
  const inHand = signal<Job | undefined>(job);
  const shop = signal<Shop>({});
  const { plan, planned } = planInHand(inHand, shop, Promise.resolve({ planOf }));
  expect(plan.value).toBeUndefined();
  await planned;
  expect(plan.value?.job).toBe(job);
  const other = { id: 'j2' } as Job;
  inHand.value = other;
  expect(plan.value?.job).toBe(other);
  inHand.value = undefined;
  expect(plan.value).toBeUndefined();
});

test('where that file does not come a start goes on, without a plan', async () => {
  const { plan, planned } = planInHand(
    signal(job),
    signal({}),
    Promise.reject(new TypeError('no such file')),
  );
  await planned;
  expect(plan.value).toBeUndefined();
});
