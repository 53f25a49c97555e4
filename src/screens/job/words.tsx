import type { ComponentChildren } from 'preact';
import type { KeptIn } from '../bench';
import { counted, wordFor } from '../shared/counted';

// The page before any job.

export const app = 'Knifeline';
export const purpose =
  'Measuring and marking in the shop. Figures are exact, every mark says from which end, and nothing needs a signal.';
export const usedInBrowser = 'Used in the browser before? On an iPhone nothing of it is here yet.';
export const bringCopyIn = 'Bring the copy in';
export const sum = 'Do a sum';
export const workOutCase = 'Work out a case';
export const layOutBoard = 'Lay out a board';
export const openSample = 'Open the sample job';
export const bringJobIn = 'Bring a job file in';
export const allJobs = 'All jobs';
export const thisPhone = 'This phone';
export const notUp = 'Your screen did not come up last time.';
export const tryAgain = 'Try it again';

// The job in hand: its head, and what can be done with it.

export const bright = 'Screen: bright';
export const dim = 'Screen: dim';
export const nameJob = 'Name this job';
export const whereItGoes = 'Where it goes';
export const shareName = 'Job';
export const shopFigures = 'Shop figures';
export const shareOut = 'Share out';
export const shareMissing = 'Not shared: a part of the app is missing.';
export const handOver = 'Hand over';
export const marksTo = (tape: ComponentChildren) => <>Marks to {tape}</>;

export const double = (n: number): string =>
  n === 1 ? 'Phones disagree in one place' : `Phones disagree in ${n} places`;

// The next thing to do.

export const nextThing = 'Next thing to do';
export const aBoard = 'board';
export const nextGroove = (groove: string, board: string): string => `Next: ${groove}, ${board}`;

/** The next setup with its first piece, and how many more it takes. */
export const nextSetup = (setup: string, piece: string, more: number): string =>
  `Next: ${setup}, ${piece}${more > 0 ? ` and ${more} more` : ''}`;

export const pickUp = 'Pick up where I was';

// What the job holds.

export const stock = 'Stock, as measured';
export const measure = 'Measure';
export const noStock =
  'No stock measured. Put calipers on the sheet you will cut, near two corners and the middle.';
export const sheet = 'Sheet';
export const planned = 'planned, not measured yet';
export const noReading = 'no reading yet';

export const cases = 'Case';
export const newCase = 'New case';
export const noCase =
  'No case yet. Say how wide, high and deep: every part follows from the sheets as measured.';
export const workedOut = (worked: boolean): string => (worked ? 'worked out' : 'not worked out yet');
export const caseMade = 'A new case';
export const firstJob = 'New job';

/** Name of the n-th case of a job. */
export const caseName = (n: number): string => (n === 1 ? 'Case' : `Case ${n}`);

export const drawers = 'Drawers';
export const newDrawers = 'New drawers';
export const noDrawers = 'No drawers yet. From an opening to the last pull hole: fronts, boxes, slides.';

/** How many fronts of a bank are on. */
export function frontsOn(on: number, all: number): string {
  const fronts = counted(all, 'front', 'fronts');
  return on === 0 ? fronts : `${on} of ${fronts} on`;
}

export const cuts = 'Cuts';
export const cutOf = (cut: number, all: number): string => `${cut} of ${all} cut`;
export const settingsDone = 'Settings done';
export const cutOtherwise = (n: number): string =>
  `${n === 1 ? 'One piece is cut already, and its size has' : `${n} pieces are cut already, and their sizes have`} changed since: see Cuts.`;
export const parts = 'Parts';
export const pieces = (n: number): string => counted(n, 'piece', 'pieces');

export const boards = 'Boards by hand';
export const layOut = 'Lay out';
export const noBoard = 'No board laid out yet. Measure one end to end, then say where its grooves go.';

// What is kept of it.

/** In how many places the last change is kept. */
export const kept = (where: KeptIn, servedHere: boolean): string =>
  `Kept on this phone, ${where === 'both' ? 'in two copies' : 'in a single copy'}.${servedHere ? ' Works with no signal.' : ''}`;
export const mayBeCleared =
  'The browser may clear it when space runs short. Put the app on the home screen, and share the job out now and then.';
export const unread = (n: number): string =>
  n === 1
    ? 'One value could not be read and stands at its usual figure.'
    : `${n} values could not be read and stand at their usual figures.`;
export const setAside = (n: number): string =>
  n === 1
    ? 'One entry could not be read. It is set aside, unchanged.'
    : `${n} entries could not be read. They are set aside, unchanged.`;
export const shareAside = (n: number): string => `Share ${wordFor(n, 'it', 'them')} out`;
export const asideName = 'Set aside';
