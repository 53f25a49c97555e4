import { assertNever } from '../../length/result';
import type { TooMuch } from '../../plan/plan';
import type { HandedError } from '../../store/handover/handed';
import type { CameBy } from '../bench';
import { operationsText, tooManyText } from '../shared/too-much-words';

/** Why a file, or what came by codes, is not taken. */
export function fileText(error: HandedError | TooMuch): string {
  switch (error.code) {
    case 'too-big':
      return `The file is larger than a job can be (${Math.round(error.most / 1024 / 1024)} MB).`;
    case 'not-json':
      return 'This is no job file: it cannot be read as one, or it was cut short.';
    case 'not-a-job-file':
    case 'not-changes':
      return 'This is no job file of Knifeline.';
    case 'newer-file':
    case 'newer-changes':
      return `The file was written by a newer Knifeline (file version ${error.version}). Bring this one up to date first.`;
    case 'too-many-entries':
      return `The file has more than ${error.most} entries.`;
    case 'bad-entry':
      return `Entry ${error.at + 1} of the file is damaged (${error.why}).`;
    case 'empty':
      return 'The file holds no entries.';
    case 'job-missing':
      return 'These are only the changes to a job, and the job itself is not on this phone. On the other phone, hand over the whole job.';
    case 'earlier-missing':
      return `These changes follow ${error.entries} earlier ${error.entries === 1 ? 'entry' : 'entries'} that never reached this phone. On the other phone, hand over the whole job.`;
    case 'too-many-cuts':
      return `${error.board || 'A board'} of this job is too much to be worked out. ${tooManyText(error.problem)}`;
    case 'too-many-operations':
      return `The job would be too much to be worked out. ${operationsText(error.operations, error.most)}`;
    default:
      return assertNever(error);
  }
}

/** What is said above a file that was not chosen in the app. */
export function cameText(by: CameBy): string | undefined {
  switch (by) {
    case 'chosen':
      return undefined;
    case 'opened':
      return 'This file was opened with Knifeline, not chosen here.';
    case 'shared':
      return 'Another app shared this. Take it in only if you sent it here yourself.';
    default:
      return assertNever(by);
  }
}
