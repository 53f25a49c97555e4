import type { Entry } from '../../job/entry';
import { jobOf } from '../../job/job';
import { fold } from '../../job/log';
import { partsOfJob } from '../../plan/parts-of-job';
import type { Shop } from '../../trade/machines/shop';

const farthestBack = 40;

/**
 * A thing of a job as it last could be cut: what is typed wrong never takes the good figures away.
 *
 * @param entries the log of the job, oldest first
 * @param good the thing among the parts of a job; undefined where it could not be cut
 * @returns undefined where it could not be cut at any of the last forty edits
 */
export function lastGood<T>(
  entries: readonly Entry[],
  at: { readonly job: string; readonly shop: Shop },
  good: (parts: ReturnType<typeof partsOfJob>) => T | undefined,
): T | undefined {
  const edits = entries.filter((e) => e.kind === 'edit');
  for (let back = 1; back <= Math.min(farthestBack, edits.length - 1); back += 1) {
    const job = jobOf(at.job, fold(edits.slice(0, edits.length - back)).values);
    const found = good(partsOfJob(job, at.shop));
    if (found) return found;
  }
  return undefined;
}
