import { assertNever } from '../../length/result';
import type { TooMuch } from '../../plan/plan';
import type { HandedError } from '../../store/handover/handed';
import type { CameBy } from '../bench';
import { counted, wordFor } from '../shared/counted';
import { operationsText, tooManyText } from '../shared/too-much-words';

export const title = 'Bring in';
export const back = 'Job';
export const choose = 'Choose a file';
export const another = 'Another file';
export const readCodes = 'Read codes off another phone';
export const whatComes =
  'A job shared out from Knifeline, or a copy of everything, as .json or .txt. All of it is checked before any of it is taken in.';
export const refused = (why: string): string => `${why} Nothing was changed.`;

export const nameless = 'A job without a name';
export const takeIn = 'Take it in';
export const merge = 'Merge into the one here';
export const keepBoth = 'Keep both';

type Holds = Readonly<Record<'boards' | 'stocks' | 'ticks' | 'entries', number>>;

/** What a job file holds. */
export const holds = ({ boards, stocks, ticks, entries }: Holds): string =>
  `${counted(boards, 'board', 'boards')}, ${counted(stocks, 'stock', 'stocks')}, ${counted(ticks, 'tick', 'ticks')}, in ${counted(entries, 'entry', 'entries')}.`;

/** What is new in a job that is here already, and how many entries would be set aside. */
export function hereAlready(fresh: number, differing: number): string {
  const aside = `; ${differing} ${wordFor(differing, 'differs', 'differ')} from the ones here, and would be set aside`;
  return `This job is here already. ${fresh} of these entries ${wordFor(fresh, 'is', 'are')} new${differing > 0 ? aside : ''}.`;
}

/** Why a file, or what came by codes, is not taken. */
export function fileText(error: HandedError | TooMuch): string {
  switch (error.code) {
    case 'too-big':
      return `The file is larger than a job can be (${Math.round(error.most / 1024 / 1024)} MB).`;
    case 'not-json':
      return 'This is not a job file, or it was cut short.';
    case 'not-a-job-file':
    case 'not-changes':
      return 'This is not a job file of Knifeline.';
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
      return `${error.board || 'A board'} of this job is too much to work out. ${tooManyText(error.problem)}`;
    case 'too-many-operations':
      return `The job would be too much to work out. ${operationsText(error.operations, error.most)}`;
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
