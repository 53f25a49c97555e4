import type { Job, PlanSheet } from '../job/job';
import type { Folded } from '../job/log';
import { placesOf } from '../trade/sheets/tree';

/** Id of the cut of a sheet at a path. */
export const layOp = (sheet: string, path: string): string => `lay/${sheet}/${path}`;

const cutsOf = (sheet: PlanSheet): readonly string[] =>
  placesOf(sheet, sheet.kerf)
    .filter(({ branch }) => branch.is === 'cut')
    .map(({ path }) => layOp(sheet.id, path));

/** Whether anything of a sheet has been cut. */
export const isBegun = (sheet: PlanSheet, { ticks }: Folded): boolean =>
  cutsOf(sheet).some((op) => ticks.has(op));

/** The sheets of the plan that stand: not those laid out anew, unless something of them was cut all the same. */
export const standingSheets = ({ sheets }: Pick<Job, 'sheets'>, folded: Folded): readonly PlanSheet[] =>
  sheets.filter((sheet) => !sheet.gone || isBegun(sheet, folded));

/** How many cuts of the plan are made. */
export function breakdownCount(
  job: Pick<Job, 'sheets' | 'stock'>,
  folded: Folded,
): { readonly cut: number; readonly of: number } {
  const all = standingSheets(job, folded)
    .filter((sheet) => job.stock.some((s) => s.id === sheet.stock))
    .flatMap(cutsOf);
  return { cut: all.filter((op) => folded.ticks.has(op)).length, of: all.length };
}
