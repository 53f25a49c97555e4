import type { Settings } from '../../job/settings';
import type { Kept, KeptIn } from '../bench';

export const title = 'This phone';
export const back = 'Job';

export const allPictured = 'Knifeline with pictures';
export const copyPictured = 'Copy everything out, with pictures';

export const joblessTitle = 'Pictures of no job';
export const joblessSays = (count: number): string =>
  count === 1
    ? 'One picture is kept of a job that is no longer on this phone.'
    : `${count} pictures are kept of jobs that are no longer on this phone.`;
export const deleteThem = (count: number): string =>
  count === 1 ? 'Delete it for good' : `Delete all ${count} for good`;
export const deleteTitle = 'Delete for good?';
export const deleteSays = 'Both copies on this phone are deleted, and nothing brings them back.';
export const notDeleted =
  'A copy on this phone did not take the deletion. Try it again once storage answers.';

export const finish = 'Finish';
export const finishes: Readonly<Record<Settings['theme'], string>> = {
  phone: 'As the phone',
  satin: 'Satin',
  blued: 'Blued',
};
export const finishNote = 'Satin for daylight and glare, Blued for a dim shop.';

export const hand = 'Hand';
export const hands: Readonly<Record<Settings['hand'], string>> = { left: 'Left', right: 'Right' };

export const text = 'Text';
export const texts: Readonly<Record<Settings['text'], string>> = {
  phone: 'As the phone',
  large: 'Twice the size',
};

export const rule = 'Rule on the screen';
export const aloud = 'Read figures aloud';
export const aloudWhen: Readonly<Record<Settings['aloud'], string>> = {
  tap: 'On a tap',
  each: 'Every step',
};
export const aloudNote =
  'With the phone’s own voice, with no signal too, where the phone has one that speaks English.';

export const calipers = 'Calipers type';
export const caliperUnits: Readonly<Record<Settings['calipers'], string>> = {
  tape: 'As the tape',
  in: 'Inches',
  mm: 'mm',
};
export const calipersNote =
  'Calipers that act as a keyboard send figures without a unit: set here what their own button is set to.';

export const cautions = 'Cautions';
export const beforeYouCut = 'Before you cut';

export const copy = 'A copy of everything';
export const bringIn = 'Bring a copy in';

/** When everything was last copied out, and how many changes there have been since; undefined: never. */
export function lastCopied(at: Date | undefined, since: number): string {
  const changes = since === 1 ? 'One change' : `${since} changes`;
  if (at === undefined) return `Not copied out yet. ${changes} made here.`;
  return `Last copied out on ${at.toLocaleDateString()}. ${since === 0 ? 'Nothing has changed since.' : `${changes} since.`}`;
}

export const homeScreen = 'On the home screen';
export const opensLikeAnApp = (servedHere: boolean): string =>
  `It opens like any app${servedHere ? ', and works with no signal' : ''}.`;
export const putThere = 'Put it on the home screen';
export const startsEmpty =
  'On an iPhone the app on the home screen starts empty: what is kept here stays here.';
export const iphoneSteps = [
  'Copy everything out, above.',
  'Share, then Add to Home Screen.',
  'Open it there and bring the copy in.',
] as const;

export const whatIsKept = 'What is kept';
export const kept: Readonly<Record<Kept, string>> = {
  kept: 'The browser has promised not to clear what is kept here.',
  'may-be-cleared':
    'The browser may clear what is kept here when space runs short. Putting the app on the home screen helps; so does a copy of everything.',
  unknown: 'The browser has not said whether it keeps this when space runs short.',
};
export const keptIn: Readonly<Record<KeptIn, string>> = {
  both: 'Every change is kept twice: in the browser’s database and in a journal beside it.',
  database: 'Kept in a single copy: this browser has no place for the journal, or it does not answer.',
  journal: 'The database does not answer: changes are kept in the journal alone.',
};
export const staysHere =
  'Jobs, figures and settings stay on this phone and go nowhere by themselves. A copy of everything is one file; keep it somewhere else than on this phone.';
export const typeface =
  'The typeface is Encode Sans, under the SIL Open Font License: fonts-OFL.txt beside this page.';
export const licences = 'Licences of the libraries used';
