import { assertNever } from '../../length/result';
import type { FileError } from '../../store/file';

/** Why a file is not taken. */
export function fileText(error: FileError): string {
  switch (error.code) {
    case 'too-big':
      return `The file is larger than a job can be (${Math.round(error.most / 1024 / 1024)} MB).`;
    case 'not-json':
      return 'This is no job file: it cannot be read as one, or it was cut short.';
    case 'not-a-job-file':
      return 'This is no job file of Knifeline.';
    case 'newer-file':
      return `The file was written by a newer Knifeline (file version ${error.version}). Bring this one up to date first.`;
    case 'too-many-entries':
      return `The file has more than ${error.most} entries.`;
    case 'bad-entry':
      return `Entry ${error.at + 1} of the file is damaged (${error.why}).`;
    case 'empty':
      return 'The file holds no entries.';
    default:
      return assertNever(error);
  }
}
