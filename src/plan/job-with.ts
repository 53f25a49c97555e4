import type { Change } from '../job/entry';
import { type Job, jobOf } from '../job/job';
import { type Folded, withChanges } from '../job/log';

/**
 * The job as it would be with some edits: what a drawing shows while a blank is filled, what a reading would change.
 */
export const jobWith = (folded: Folded, id: string, changes: readonly Change[]): Job =>
  jobOf(id, withChanges(folded, changes).values);
