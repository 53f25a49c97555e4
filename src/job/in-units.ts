import { type Tape, unitsOf } from '../length/tape';
import type { Units } from '../length/units';

type Marked = { readonly tape: Tape; readonly usual?: Units | undefined };

/** The unit system whose usual figures stand in: that of the marks, unless the job keeps the one it was begun with. */
export const usualIn = ({ tape, usual }: Marked): Units => usual ?? unitsOf(tape);

/** What is made of usual figures says whose, where that is not inches in a job in inches. */
export const inUnitsOf =
  (job: Marked) =>
  <T extends { readonly units?: Units | undefined }>(things: readonly T[]): readonly T[] => {
    const units = usualIn(job);
    return units === 'mm' || unitsOf(job.tape) === 'mm'
      ? things.map((thing) => ({ ...thing, units }))
      : things;
  };
