import { useEffect } from 'preact/hooks';
import type { PlanSheet } from '../../job/job';
import { type Breakdown, stepsOf } from '../../plan/breakdown';
import type { Plan } from '../../plan/plan';
import { layOp } from '../../plan/progress';
import type { CutStep } from '../../trade/sheets/cut-steps';
import type { Bench } from '../bench';

type SheetAt = {
  readonly bench: Pick<Bench, 'folded'>;
  readonly plan: Plan;
  readonly found: Breakdown;
  readonly sheet: PlanSheet;
  /** The cut asked for, by its path in the tree. */
  readonly path: string | undefined;
};

/** The cuts of a sheet in order, and the one in hand: the one asked for, else the next to be made. */
export function useCuts({ bench, plan, found, sheet, path }: SheetAt) {
  const steps = stepsOf(sheet, plan.job, found);
  const { ticks } = bench.folded.value;
  const done = ({ path }: Pick<CutStep, 'path'>) => ticks.has(layOp(sheet.id, path));
  const next = steps.find((step) => !done(step));
  const now = steps.find((step) => step.path === path) ?? next;
  // the cut to be made is in sight, above the panel that says it
  useEffect(() => document.querySelector('.cutno.now')?.scrollIntoView({ block: 'nearest' }), [now?.path]);
  return { steps, done, next, now };
}

export type Cuts = ReturnType<typeof useCuts>;
