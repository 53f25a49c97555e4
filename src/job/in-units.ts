import { type Tape, unitsOf } from '../length/tape';
import type { Units } from '../length/units';

type Marked = { readonly tape: Tape; readonly usual?: Units | undefined };

/** The unit system whose usual figures stand in: that of the marks, unless the job keeps the one it was begun with. */
export const usualIn = ({ tape, usual }: Marked): Units => usual ?? unitsOf(tape);

/** Whose usual figures a thing is made of, where that is said of it: not of inches in a job in inches. */
export function saidUnits(job: Marked): Units | undefined {
  const units = usualIn(job);
  return units === 'mm' || unitsOf(job.tape) === 'mm' ? units : undefined;
}
