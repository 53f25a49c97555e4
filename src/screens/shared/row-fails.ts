import { assertNever } from '../../length/result';
import type { ScheduleError } from '../../trade/install/schedule';
import { exactly as w } from './exact-words';

const blankWords = { run: 'the run', end: 'the end', most: 'the spacing' } as const;

/** Why what stands in a row cannot be set out. */
export function rowFails(error: ScheduleError): string {
  switch (error.code) {
    case 'not-positive':
      return `Make ${blankWords[error.what]} more than 0.`;
    case 'rows-not-whole':
      return 'Say at least one row.';
    case 'too-many':
      return `That is more than ${error.most} in a row: ${w(error.spacing)} apart is the least that would do.`;
    default:
      return assertNever(error);
  }
}
