import { editOffcut } from '../job/edits';
import type { Change } from '../job/entry';
import type { Job, PlanSheet } from '../job/job';
import type { Folded } from '../job/log';
import type { CutStep } from '../trade/sheets/cut-steps';
import { placesOf } from '../trade/sheets/tree';
import { offcutId } from './offcut-id';
import { isBegun, layOp } from './progress';

/** An offcut that is begun is no longer in the rack. */
export const takenFrom = ({ left }: PlanSheet): readonly Change[] =>
  left ? editOffcut(left, { gone: true }) : [];

type NotCutAt = {
  readonly sheet: PlanSheet;
  /** Cuts of the sheet that are made. */
  readonly done: readonly CutStep[];
  readonly job: Job;
};

/** Ids of what may be kept of a cut and the cuts after it. */
const leftBelow = ({ path }: CutStep, sheet: PlanSheet): ReadonlySet<string> =>
  new Set(
    placesOf(sheet, sheet.kerf)
      .filter((place) => place.path.startsWith(path))
      .map((place) => offcutId(sheet.id, place.path)),
  );

/** A sheet of the plan that is begun on something a cut left: the cut cannot be taken back before it. */
export function begunBelow(
  step: CutStep,
  { sheet, job, folded }: Omit<NotCutAt, 'done'> & { readonly folded: Folded },
): PlanSheet | undefined {
  const ids = leftBelow(step, sheet);
  return job.sheets.find((other) => other.left && ids.has(other.left) && isBegun(other, folded));
}

/**
 * A cut taken back, and with it those of the pieces it made; an offcut nothing is cut of is in the rack again, and
 * those kept of what the cut left are not.
 */
export function notCut(step: CutStep, at: NotCutAt): readonly Change[] {
  const { sheet, done, job } = at;
  const ids = leftBelow(step, sheet);
  const below = done.filter((other) => other.path.startsWith(step.path));
  return [
    ...below.map((other): Change => ({ kind: 'untick', op: layOp(sheet.id, other.path) })),
    ...job.offcuts.flatMap(({ id }) => (ids.has(id) ? editOffcut(id, { gone: true }) : [])),
    ...(sheet.left && below.length === done.length ? editOffcut(sheet.left, { gone: undefined }) : []),
  ];
}
