import type { Change } from '../../src/job/entry';
import { checklistOf } from '../../src/plan/checklist';
import type { Route } from '../../src/screens/routes';
import { worked } from '../plan/job-of';

const still = (value: unknown) => ({ value });

/** A bench that keeps nothing: the job these changes make, what was asked of it, and where it was sent. */
export function benchOf(changes: readonly Change[]) {
  const { plan, folded, job } = worked(changes);
  const acts: (readonly Change[])[] = [];
  const went: Route[] = [];
  const bench = {
    job: still(job),
    plan: still(plan),
    folded: still(folded),
    shop: still({}),
    settings: still({}),
    saving: still(new Set()),
    undoLabel: still(undefined),
    go: (to: Route) => went.push(to),
    act: (_: string, made: readonly Change[]) => acts.push(made),
  } as never;
  return { bench, list: checklistOf(plan, folded), acts, went };
}
