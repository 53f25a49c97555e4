import type { CaseLines } from './case-lines';
import type { CopyLine } from './copy-line';
import type { JobDocks } from './job-docks';
import type { NewVersion } from './new-version';
import type { PutUp } from './put-up';

/** What the job's page shows once the second file of the app is there. */
export type JobLater = {
  readonly CaseLines: typeof CaseLines;
  readonly CopyLine: typeof CopyLine;
  readonly JobDocks: typeof JobDocks;
  readonly NewVersion: typeof NewVersion;
  readonly PutUp: typeof PutUp;
};
