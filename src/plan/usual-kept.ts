import { editJob } from '../job/edits';
import type { Change } from '../job/entry';
import { usualIn } from '../job/in-units';
import type { Job } from '../job/job';
import type { Folded } from '../job/log';
import { type Tape, unitsOf } from '../length/tape';
import type { Units } from '../length/units';
import type { Shop } from '../trade/machines/shop';
import { checklistOf, misfits } from './checklist';
import { jobWith } from './job-with';
import { planOf } from './plan';

/**
 * What choosing other marks changes. Where something is cut, the usual figures stay those it was cut by: a depth of
 * 1/4 does not become 6 mm by itself.
 */
export const marksChosen = (job: Job, tape: Tape, cut: boolean): readonly Change[] => {
  const usual = cut ? usualIn(job) : undefined;
  return editJob({ tape, usual: usual === unitsOf(tape) ? undefined : usual });
};

/**
 * The other unit system, where more of what is cut fits its usual figures than fits those in use: the job was begun by
 * them, before jobs in millimetres had usual figures of their own.
 */
export function begunBy(job: Job, folded: Folded, shop: Shop): Units | undefined {
  if (job.usual || unitsOf(job.tape) === 'in') return undefined;
  const off = (of: Job) => misfits(checklistOf(planOf(of, shop), folded)).length;
  const now = off(job);
  return now > 0 && off(jobWith(folded, job.id, editJob({ usual: 'in' }))) < now ? 'in' : undefined;
}
