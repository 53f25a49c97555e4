import type { CopyLine } from './copy-line';
import type { JobDocks } from './job-docks';
import type { NewVersion } from './new-version';
import type { PutUp } from './put-up';
import type { RoomLine } from './room-line';

/** What the job's page shows once the second file of the app is there. */
export type JobLater = {
  readonly CopyLine: typeof CopyLine;
  readonly JobDocks: typeof JobDocks;
  readonly NewVersion: typeof NewVersion;
  readonly PutUp: typeof PutUp;
  readonly RoomLine: typeof RoomLine;
};
