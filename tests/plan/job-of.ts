import type { Change, Entry } from '../../src/job/entry';
import { jobOf } from '../../src/job/job';
import { fold } from '../../src/job/log';
import { breakdownOf } from '../../src/plan/breakdown';
import { planOf } from '../../src/plan/plan';
import type { Shop } from '../../src/trade/machines/shop';

/** The log of one phone that made these changes, one after the other. */
export const logOf = (changes: readonly Change[]): readonly Entry[] =>
  changes.map((change, k) => ({
    ...change,
    job: 'j',
    device: 'anna',
    count: k + 1,
    at: '2026-11-02T08:30:00.000Z',
    act: `anna.${k + 1}`,
    label: 'made',
  }));

/** A job made of these changes, worked out. */
export function worked(changes: readonly Change[], shop: Shop = {}) {
  const folded = fold(logOf(changes));
  const job = jobOf('j', folded.values);
  const plan = planOf(job, shop);
  return { folded, job, plan, found: breakdownOf(plan, shop, folded) };
}
