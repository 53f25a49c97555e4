import type { ComponentChildren } from 'preact';
import type { Stock } from '../../job/job';

export const sheet = 'Sheet';
export const back = 'Job';
export const toCase = 'Case';
export const toDrawers = 'Drawers';
export const backTo = (form: string): string => `Back to ${form.toLowerCase()}`;
export const under = 'by calipers';
export const name = 'Name';
export const nameOfSheet = 'Name of the sheet';
export const named = 'Sheet named';

// Readings.

export const how =
  'Put calipers on the sheet you will cut, near two corners and the middle: four places at least.';
export const reading = (no: number): string => `Reading ${no}`;
export const readOnce = (readings: number): string => (readings === 0 ? 'First reading' : 'Another reading');
export const thickest = 'Thickest: parts and stacks go by this';
export const thickestNotInUse = 'Thickest: not in use yet';
export const changed = 'What the reading changed';
export const nowInUse = (now: string, before: string): string =>
  `${now} is in use; it was ${before}. Changed with it:`;
export const cutAlready = (pieces: number): string =>
  pieces === 1
    ? 'One cut made already no longer fits: Cuts says which.'
    : `${pieces} cuts made already no longer fit: Cuts says which.`;
export const thinnest = (thin: string, spread: string): string => `Thinnest ${thin}, spread ${spread}.`;
export const twoLots = (over: string): string =>
  `A spread over ${over} is two lots, perhaps, or measured over fuzz.`;

// What kind of stock it is.

export const whatItIs = 'What it is';
export const kinds: Readonly<Record<Stock['kind'], string>> = { sheet: 'A sheet', stick: 'A stick or board' };
export const kindChosen = (stock: string, kind: Stock['kind']): string => `${stock} is a ${kind}`;

// The thickness parts are reckoned with.

export const inUse = 'In use';
export const planned = 'Planned, until it is measured';
export const notSaid = 'not said';
export const plannedThickness = 'Planned thickness, until it is measured';
export const plannedGiven = 'Planned thickness';
export const reckonedAt = (thickness: ComponentChildren, measured: boolean) => (
  <>
    Parts of it are reckoned at {thickness}
    {measured ? ', as measured.' : ', as planned.'}
  </>
);
export const waits = 'Something of it is cut, so a reading changes nothing until you use it.';
export const wouldChange = (thickness: ComponentChildren) => <>See what {thickness} would change</>;
export const takenUp = (stock: string, thickness: string): string => `Taken up: ${stock} ${thickness}`;

// Offcuts.

export const offcuts = 'Offcuts';
export const offcutsOfIt = 'Offcuts of it';
export const anOffcut = 'An offcut';
export const gone = 'Gone';
export const offcutGone = 'Offcut taken off the list';
export const offcutMeasured = 'Offcut measured';
export const sizes = { length: 'long', width: 'wide' } as const;
export const sizeAsked = {
  length: 'How long it is, along the face grain',
  width: 'How wide it is, across the grain',
} as const;

// Taking it off the list.

export const remove = 'Remove this sheet';
export const removed = (stock: string): string => `${stock || 'Sheet'} removed`;
export const staysListed = 'Sheets of it are being cut: it stays on the list.';
