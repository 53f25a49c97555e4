import { editJob } from './edits';
import type { Entry } from './entry';
import { jobOf } from './job';
import { fold, over } from './log';

type CopyStamp = { readonly job: string; readonly device: string; readonly at: string };

/**
 * The same log under another job id, with one entry more that marks its name: both copies are kept by one write.
 *
 * @param entries in order, at least one
 */
export function secondCopy(entries: readonly Entry[], { job, device, at }: CopyStamp): readonly Entry[] {
  const count = (entries[entries.length - 1]?.count ?? 0) + 1;
  const folded = fold(entries);
  const name = jobOf(job, folded.values).name.slice(0, 116);
  const stamp = { job, device, count, at, act: `${device}.${count}`, label: 'Kept as a second copy' };
  return [
    ...entries.map((entry) => ({ ...entry, job })),
    ...over(folded, editJob({ name: `${name} (2)` })).map((change): Entry => ({ ...stamp, ...change })),
  ];
}
