import type { Problem } from '../../trade/grooves/layout';
import { counted } from './counted';

/** More cuts than one layout takes, by how many, and what would fit. */
export const tooManyText = ({ grooves, copies, most }: Problem & { readonly code: 'too-many' }): string =>
  `${counted(copies, 'board', 'boards')} of ${grooves} grooves: ${grooves * copies - most} cuts over the ${most} of one layout. At most ${Math.floor(most / copies)} grooves each, or fewer boards.`;

export const notWorkedOut = 'The cuts of this job are not worked out.';

/** More operations than a job takes, by how many. */
export const operationsText = (operations: number, most: number): string =>
  `It comes to at least ${operations} operations, ${operations - most} over the ${most} that one job takes. Split it into several jobs.`;
