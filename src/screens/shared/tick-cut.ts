import type { PlanSheet } from '../../job/job';
import { begunBelow, notCut } from '../../plan/not-cut';
import type { Plan } from '../../plan/plan';
import { cutsMade, type SheetCuts } from '../../plan/sheet-codes';
import type { CutStep } from '../../trade/sheets/cut-steps';
import type { SheetStock } from '../../trade/sheets/stock';
import type { Bench } from '../bench';
import * as words from './tick-cut-words';

type TickOn = {
  readonly bench: Pick<Bench, 'act' | 'folded'>;
  readonly plan: Plan;
  readonly sheet: PlanSheet;
  readonly stock: SheetStock | undefined;
  readonly cuts: SheetCuts;
};

/** A cut was made, or why its tick was not taken back. */
type Ticked = { readonly made?: boolean; readonly refused?: string };

/** Ticks a cut; where it is ticked already takes that back, unless a sheet that came out of it is begun. */
export async function tickCut(on: TickOn, step: CutStep): Promise<Ticked> {
  const { bench, plan, sheet, stock, cuts } = on;
  const { job } = plan;
  const title = (of: PlanSheet) => words.sheetTitle(of, stock, job.tape);
  const which = words.cutOf(title(sheet), step.no);
  if (!cuts.done(step)) return { made: await bench.act(words.cut(which), cutsMade(sheet, [step])) };
  const begun = begunBelow(step, { sheet, job, folded: bench.folded.value });
  if (begun) return { refused: words.begun(title(begun)) };
  await bench.act(words.notCut(which), notCut(step, { sheet, done: cuts.steps.filter(cuts.done), job }));
  return {};
}
