import type { BackupError } from '../../job/backup';
import type { News, Place } from '../../job/backup-news';
import type { PicturedError } from '../../job/pictured-file';
import { assertNever } from '../../length/result';
import { counted } from '../shared/counted';
import { shopFields } from '../shared/shop-field-words';
import { fileText } from './import-words';

export const title = 'A copy of everything';
export const picturedTitle = 'A copy with pictures';
export const picturesIn = (count: number): string =>
  `${counted(count, 'picture', 'pictures')} ${count === 1 ? 'is' : 'are'} in it.`;
export const picturesDone = (done: number, of: number): string =>
  `${done} of ${counted(of, 'picture', 'pictures')} kept`;
/** What came in before a picture was not taken. */
export const picturesShort = (done: number, of: number): string =>
  `All entries came in, and ${done} of ${counted(of, 'picture', 'pictures')}; then the phone took no more. Make room on the phone and take it in again: what is here is not taken twice.`;
export const toJob = 'Go to the job';
export const takeIn = 'Take it in';
export const keepOurs = 'Take it in, keep this phone’s';
export const takeTheirs = 'Take it in, with the file’s';

/** What came in before the phone was full. */
export const cameShort = (came: number, all: number): string =>
  `${came} of ${counted(all, 'job', 'jobs')} came in, then the phone took no more.`;

/** Where this phone and a copy have it otherwise. */
export const differIn = (places: readonly Place[]): string =>
  `Shop figures and settings of this phone differ in ${places.length === 1 ? 'one place' : `${places.length} places`}: ${places.map(placeText).join(', ')}.`;

const jobs = (n: number): string => (n === 1 ? 'one job' : `${n} jobs`);
const entries = (n: number): string => (n === 1 ? 'One entry' : `${n} entries`);

/** What a copy would bring, before any of it is taken. */
export function newsText({ jobs: all, entries: fresh, touched, differing, lacking }: News): string {
  const figures = lacking.length === 0 ? '' : ` Not here yet: ${lacking.map(placeText).join(', ')}.`;
  if (all.length === 0) return `No job is in it.${figures}`;
  const brought =
    fresh === 0
      ? `${all.length === 1 ? 'Its one job is' : `Its ${all.length} jobs are`} already here, complete.`
      : `${entries(fresh)} new to this phone, in ${jobs(touched)} of ${all.length}.`;
  const aside = differing === 0 ? '' : ` ${entries(differing)} would be set aside: this phone has others.`;
  return `${brought}${aside}${figures}`;
}

const likingText = {
  theme: 'finish',
  hand: 'hand',
  text: 'size of text',
  tape: 'marks of the tape',
  calipers: 'what calipers type',
  lists: 'what lies in the drawers',
  figure: 'the strip of Figure',
} as const;

const isLiking = (place: Place): place is keyof typeof likingText => place in likingText;
/** A figure of the shop or a liking, by its name. */
const placeText = (place: Place): string =>
  isLiking(place) ? likingText[place] : shopFields[place].toLowerCase();

/** Why a copy of everything is not taken. */
export function backupText(error: BackupError | PicturedError): string {
  switch (error.code) {
    case 'too-big':
      return `The file is larger than a copy can be (${Math.round(error.most / 1024 / 1024)} MB).`;
    case 'not-a-copy':
      return 'This is not a copy of everything.';
    case 'newer-copy':
      return `The copy was written by a newer Knifeline (version ${error.version}). Bring this one up to date first.`;
    case 'torn':
      return 'The copy was cut short or changed on its way. Fetch it again.';
    case 'bad-picture':
      return `Picture ${error.no} of the copy was damaged on its way, or is none of this app. Fetch the file again.`;
    case 'no-check':
      return 'This page did not come over https, so a copy cannot be checked.';
    case 'bad-job':
      return `Job ${error.at + 1} of the copy: ${fileText(error.error)}`;
    case 'job-twice':
      return `Job ${error.at + 1} is in the copy twice.`;
    case 'bad-figure':
      return `“${error.field}” in the copy cannot be read.`;
    default:
      return assertNever(error);
  }
}
