import type { Change, Json } from '../job/entry';
import { type Job, jobOf } from '../job/job';
import type { Folded } from '../job/log';

/**
 * The job as it would be with some edits: what a drawing shows while a blank is filled, what a reading would change.
 */
export function jobWith(folded: Folded, id: string, changes: readonly Change[]): Job {
  const values = new Map<string, Json>(folded.values);
  for (const change of changes) {
    if (change.kind !== 'edit') continue;
    if (change.value === null) values.delete(change.path);
    else values.set(change.path, change.value);
  }
  return jobOf(id, values);
}
