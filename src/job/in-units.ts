import { type Tape, unitsOf } from '../length/tape';
import type { Units } from '../length/units';

/** In a job in millimetres, what is made of usual figures says so; inches go without saying. */
export const inUnitsOf =
  (tape: Tape) =>
  <T extends { readonly units?: Units | undefined }>(things: readonly T[]): readonly T[] =>
    unitsOf(tape) === 'mm' ? things.map((thing) => ({ ...thing, units: 'mm' })) : things;
