import { edits, type Patch } from './edits';
import type { Job } from './job';
import { timerFields } from './timer-fields';
import { children, pick } from './tree';

export type Timer = Omit<ReturnType<typeof pick<typeof timerFields>>, 'gone'> & { readonly id: string };

/** The timers of a job, in the order they were made. */
export const timersOf = ({ tree }: Pick<Job, 'tree'>): readonly Timer[] =>
  children(tree, 'timers').flatMap(([id, own]) => {
    const { gone, ...timer } = pick(timerFields, own);
    return gone ? [] : [{ id, ...timer }];
  });

export const editTimer = (id: string, patch: Patch<typeof timerFields>) =>
  edits(`timers/${id}/`, timerFields, patch);
