import type { Tape } from '../../length/tape';
import { writeDecimals } from '../../length/write';
import type { Plan } from '../../plan/plan';
import type { Thinner } from '../../plan/thinner';
import type { Operation } from '../../trade/setups/operation';

const says = ({ name, used, read }: Thinner, tape: Tape): string =>
  `Goes by ${name} at ${writeDecimals(used, tape)}. Its thickest reading is ${writeDecimals(read, tape)}.`;

/** What of some cuts stands on less than the thickest reading: a sentence for each stuff, none for most. */
export const thinnerSays = (
  { thinner, job }: Pick<Plan, 'thinner' | 'job'>,
  operations: readonly Operation[],
): readonly string[] => [
  ...new Set(operations.flatMap(({ id }) => thinner.get(id) ?? []).map((one) => says(one, job.tape))),
];
