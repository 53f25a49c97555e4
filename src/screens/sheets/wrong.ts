import { editSheet, tickOf } from '../../job/edits';
import type { PlanSheet } from '../../job/job';
import { type Length, longest, subtract, zero } from '../../length/length';
import type { Breakdown } from '../../plan/breakdown';
import { takenFrom } from '../../plan/not-cut';
import type { Plan } from '../../plan/plan';
import { layOp } from '../../plan/progress';
import { readyBranch } from '../../plan/take-plan';
import type { CutStep } from '../../trade/sheets/cut-steps';
import { placesOf, withBranch } from '../../trade/sheets/tree';
import {
  afterWrongCut,
  leanPieces,
  stillGood,
  type WrongCut,
  wrongCutError,
  wrongCutProblem,
} from '../../trade/sheets/wrong-cut';
import type { Bench } from '../bench';
import * as words from './words';

type WrongOn = {
  readonly bench: Bench;
  readonly plan: Plan;
  readonly found: Breakdown;
  readonly sheet: PlanSheet;
};

/** A cut that came out elsewhere: kept as it is where that does no harm, else both halves are laid out anew. */
export async function cutWrong(on: WrongOn, step: CutStep, came: Length): Promise<string | undefined> {
  const { bench, plan, found, sheet } = on;
  const place = placesOf(sheet, sheet.kerf).find(({ path }) => path === step.path);
  const stock = found.stocks.get(sheet.stock);
  if (place?.branch.is !== 'cut' || !stock) return undefined;
  const { branch: cut, size, from } = place;
  // a trim narrower than its kerf takes the kerf
  const line = step.keep === 'far' ? longest(zero, subtract(came, sheet.kerf)) : came;
  const wrong: WrongCut = { cut, size, from, at: line };
  const error = wrongCutError(wrong);
  const { tape } = plan.job;
  if (error?.code === 'not-a-cut') return words.noCut;
  if (error) return words.beyondSheet(error.by, error.most, tape);
  const { kerf } = sheet;
  const at = { stock, whole: sheet.size, kerf, wanted: found.pieces, offcut: sheet.left !== undefined };
  const good = stillGood(wrong, at);
  const again = good ? { branch: good, lost: 0 } : await replanned(bench, wrong, at).catch(() => undefined);
  if (!again) return words.nothingChanged;
  const branch = readyBranch(again.branch, {
    size,
    kerf,
    stock,
    job: plan.job,
    asItStands: good !== undefined,
  });
  await bench.act(words.cutWrongFor(came, step.figure.value, tape), [
    ...editSheet(sheet.id, { tree: withBranch(sheet.tree, step.path, branch) }),
    ...tickOf(layOp(sheet.id, step.path), came),
    ...takenFrom(sheet),
  ]);
  if (good) return words.nearEnough;
  return again.lost === 0 ? words.allStillFit : undefined;
}

type WrongAt = Parameters<typeof wrongCutProblem>[1];

/** Laid out anew at full rough size; where that loses a piece, with no more over than a final cut needs. */
async function replanned(bench: Bench, wrong: WrongCut, at: WrongAt) {
  const lay = async (wanted: WrongAt['wanted']) => {
    const problem = wrongCutProblem(wrong, { ...at, wanted });
    const { laid, dropped } = await bench.laying.refit(problem);
    const branch = afterWrongCut(wrong, { problem, sheets: laid?.sheets }, at);
    return { branch, lost: dropped.reduce((n, k) => n + k, 0) };
  };
  const full = await lay(at.wanted);
  if (full.lost === 0) return full;
  const lean = await lay(leanPieces(at.wanted));
  return lean.lost < full.lost ? lean : full;
}
