import type { Job } from '../job/job';
import { onAll, onLists, printOf } from '../job/prints';
import { fromMillimetres, isPositive, type Length, over, subtract } from '../length/length';
import { err, ok, type Result } from '../length/result';
import { unitsOf } from '../length/tape';
import { between, type Paper, type Sheet, sheetOf, usualOn } from '../trade/paper/sheet';

/** What lists are printed on: a sheet, and its white all round. Inches. */
type ListPaper = { readonly on: Paper; readonly margin: Length };

/** So much a list needs between its margins. Common practice, no source. */
const least = fromMillimetres(150n);

/** What was chosen for lists, else for sticks on sheets, else what is usual where the job's unit is. */
export function listPaperOf(job: Job): ListPaper {
  const units = unitsOf(job.tape);
  const all = printOf(job, onAll);
  const said = printOf(job, onLists);
  const [on] = [said.paper, all.paper].flatMap((one) => (one && one !== 'roll' ? [one] : []));
  return {
    on: on ?? (units === 'mm' ? 'a4' : 'letter'),
    margin: said.margin ?? all.margin ?? usualOn[units].margin,
  };
}

/** The white at both sides leaves too little: so much less of it on each fits. Inches. */
export type ListProblem = { readonly code: 'little-room'; readonly by: Length; readonly most: Length };

/** The sheet of a list, where its margins leave it room. */
export function listSheet({ on, margin }: ListPaper): Result<Sheet, ListProblem> {
  const sheet = sheetOf[on];
  const short = subtract(least, between(sheet.across, margin));
  if (!isPositive(short)) return ok(sheet);
  const by = over(short, 2n);
  return err({ code: 'little-room', by, most: subtract(margin, by) });
}
