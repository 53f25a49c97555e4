import type { Units } from '../../length/units';
import type { UpdateHeld } from '../bench';
import { counted } from '../shared/counted';

// The words of what comes to the job's page with the second file.

export const jobName = 'Name of the job';
export const jobNamed = 'Job named';
export const place = 'Where it goes';
export const placeGiven = 'Place given';
export const tapeTitle = 'Marks of this job, to the nearest';
export const inInches = (tape: string): string => `${tape} in`;
export const tapeChosen = (tape: string): string => `Marks to ${tape}`;

/** What choosing these marks leaves as it is. */
export const usualStay = (units: Units): string =>
  `usual figures stay those in ${units === 'mm' ? 'millimetres' : 'inches'}: something is cut by them`;

export const newVersion = 'Newer version saved. It starts next time you open it.';
export const startNow = 'Start it now';

/** Why a newer version does not start yet. */
export const held: Readonly<Record<UpdateHeld, string>> = {
  'at-the-saw': 'It starts once the setting that stands at the saw, on another page, is left.',
  'entry-open': 'It starts once the keys or the list open on another page are closed.',
  'not-secured': 'It starts once both copies kept here are complete.',
};

export const sinceCopy = (n: number): string => `${counted(n, 'change', 'changes')} since the last copy out.`;
export const later = 'Later';
