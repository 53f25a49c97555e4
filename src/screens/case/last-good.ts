import type { Entry } from '../../job/entry';
import { jobOf } from '../../job/job';
import { fold } from '../../job/log';
import { partsOfJob } from '../../plan/plan';
import type { Worked } from '../../trade/carcass/parts';
import type { Shop } from '../../trade/machines/shop';

const farthestBack = 40;

/**
 * The case as it last could be cut: what is typed wrong never takes the good figures away.
 *
 * @param entries the log of the job, oldest first
 * @param at the case
 * @returns undefined where it could not be cut at any of the last forty edits
 */
export function lastGoodCase(
  entries: readonly Entry[],
  at: { readonly job: string; readonly id: string; readonly shop: Shop },
): Worked | undefined {
  const edits = entries.filter((e) => e.kind === 'edit');
  for (let back = 1; back <= Math.min(farthestBack, edits.length - 1); back += 1) {
    const job = jobOf(at.job, fold(edits.slice(0, edits.length - back)).values);
    const found = partsOfJob(job, at.shop).worked.get(at.id);
    if (found?.ok) return found.value;
  }
  return undefined;
}
