import type { Job } from '../../job/job';
import { scribeSides } from '../../plan/scribe-plan';
import * as words from './words';

/** All that is wrong with the scribe of a case, by how much. */
export const wrongsOf = (job: Job, id: string): readonly string[] =>
  scribeSides(job, id).flatMap(({ side, found }) => {
    if (!found) return [];
    const says = found.ok
      ? found.value.short && words.short(found.value.short.need, found.value.short.by)
      : words.errorText(found.error);
    return says ? [`${words.sides[side]}: ${says}`] : [];
  });
