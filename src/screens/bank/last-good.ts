import { jobOf } from '../../job/job';
import { fold } from '../../job/log';
import { partsOfJob } from '../../plan/plan';
import type { WorkedFronts } from '../../trade/fronts/worked';
import type { Bench } from '../bench';

const farthestBack = 40;

/** The fronts as they last could be cut: what is said wrong never takes the good figures away. */
export function lastGood(bench: Bench, id: string): WorkedFronts | undefined {
  const entries = bench.entries.value.filter((e) => e.kind === 'edit');
  for (let back = 1; back <= Math.min(farthestBack, entries.length - 1); back += 1) {
    const job = jobOf(bench.job.value?.id ?? '', fold(entries.slice(0, entries.length - back)).values);
    const found = partsOfJob(job, bench.shop.value).banks.get(id)?.fronts;
    if (found?.ok) return found.value;
  }
  return undefined;
}
