import { tickOf } from '../job/edits';
import type { Change } from '../job/entry';
import type { PlanSheet } from '../job/job';
import { toStored } from '../length/stored';
import type { CutStep } from '../trade/sheets/cut-steps';
import { type Breakdown, stepsOf } from './breakdown';
import { takenFrom } from './not-cut';
import type { Plan } from './plan';
import { layOp } from './progress';
import { letterAt, signsOf } from './setup-codes';

/** The cuts of a sheet in their order, and which of them are made. */
export type SheetCuts = {
  readonly steps: readonly CutStep[];
  readonly done: (step: Pick<CutStep, 'path'>) => boolean;
};

/** A sheet as it is found again on paper: two signs that change with what is cut of it, and the code of each cut. */
export type SheetCode = {
  readonly sheet: PlanSheet;
  readonly check: string;
  readonly steps: readonly CutStep[];
  /** By the path of the cut: what stands beside its box. */
  readonly codes: ReadonlyMap<string, string>;
};

/** Every sheet of the plan in the order of its stocks. */
export const sheetCodes = ({ job }: Pick<Plan, 'job'>, found: Breakdown): readonly SheetCode[] =>
  found.pools
    .flatMap(({ sheets }) => sheets)
    .map((sheet) => {
      const steps = stepsOf(sheet, job, found);
      return { sheet, steps, check: checkOf(sheet, steps), codes: cutCodes(steps) };
    });

const checkOf = ({ id }: PlanSheet, steps: readonly CutStep[]): string =>
  signsOf([
    id,
    ...steps.map(({ path, tool, keep, figure }) => `${path}${tool}${keep}${toStored(figure.value)}`),
  ]);

/** The number of a cut; cuts made at one setting have one number, and a letter each. */
function cutCodes(steps: readonly CutStep[]): ReadonlyMap<string, string> {
  const alike = (no: number) => steps.filter((step) => step.no === no);
  return new Map(
    steps.map((step) => {
      const same = alike(step.no);
      return [step.path, `${step.no}${same.length > 1 ? letterAt(same.indexOf(step)) : ''}`];
    }),
  );
}

/** The cut that this one is a part of, where it is not made yet. */
export const cutBefore = ({ steps, done }: SheetCuts, now: CutStep): CutStep | undefined =>
  done(now) ? undefined : steps.find((step) => step.path === now.path.slice(0, -1) && !done(step));

/** Ticks of cuts of a sheet; an offcut that is begun is out of the rack. */
export const cutsMade = (sheet: PlanSheet, steps: readonly CutStep[]): readonly Change[] => [
  ...steps.flatMap(({ path, figure }) => tickOf(layOp(sheet.id, path), figure.value)),
  ...takenFrom(sheet),
];
