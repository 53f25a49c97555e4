import type { ComponentChildren } from 'preact';
import { inches, type Length } from '../../length/length';
import { assertNever } from '../../length/result';
import { writeDecimal, writeLength } from '../../length/write';
import type { FitError } from '../../trade/grooves/fit';

export const fitToSheet = 'Fit to a sheet';
export const back = 'Back';
export const whichSheet = 'Which sheet';
export const howTheyFit = 'How they fit';
export const kindsTitle = 'How the parts fit (common practice)';
export const clearanceTitle = 'Clearance over the thickest';
export const readHere = { label: 'readings given here', inSentence: 'readings here' };

export const kinds = [
  { value: 'gluedSnug', label: 'glued, snug', hint: '0.003 over the thickest' },
  { value: 'glued', label: 'glued', hint: '0.005 over' },
  { value: 'gluedEasy', label: 'glued, easy', hint: '0.008 over' },
  { value: 'slides', label: 'slides', hint: '1/32 over: trays' },
  { value: 'slidesEasy', label: 'slides easily', hint: '1/16 over; after finish add two films' },
] as const;

/** A reading by its number, counted from one; the next one when none is given yet. */
export const reading = (at: number, given: boolean): string =>
  given ? `Reading ${at + 1}` : 'Another reading';

type SlipProps = {
  readonly sheet: ComponentChildren;
  /** Given on this screen, where the sheet has none of its own. */
  readonly readings: ComponentChildren;
  readonly kind: ComponentChildren;
  readonly clearance: ComponentChildren;
};

export const Slip = ({ sheet, readings, kind, clearance }: SlipProps) => (
  <>
    The parts are from {sheet}
    {readings && <> reading {readings}</>}. They are {kind}, with {clearance} of clearance.
  </>
);

export const widthFromSheet = 'Groove width from the sheet';
export const useWidth = (width: Length | undefined): string =>
  width ? `Cut grooves ${writeDecimal(width)} wide` : 'Give a reading first';

export const grooveForStack = 'Groove, for the stack';
export const forMark = (nearest64: Length): string =>
  `For a mark, nearest 64th: ${writeLength(nearest64)}. Never set a stack from the 64th.`;
export const play = (thinnest: Length, loosest: Length): string =>
  `At the thinnest, ${writeDecimal(thinnest)}, the play is ${writeDecimal(loosest)}.`;
export const wideSpread = (spread: Length): string =>
  `The readings spread by ${writeDecimal(spread)}, more than ${writeLength(inches(1n, 64n))}: two lots, perhaps, or measured over fuzz.`;

type Groups = readonly [readonly Length[], readonly Length[]];

/** Too much play for glue; where two stacks would do better, which readings each is for. */
export function weakGlueLine(groups: Groups | undefined): string {
  const weak = 'Play over 0.015 makes a weak glue line';
  if (!groups) return `${weak}: take less clearance.`;
  const [one, two] = groups.map((readings) => readings.map((x) => writeDecimal(x)).join(', '));
  return `${weak}. Two stacks would do better: one for ${one}, one for ${two}.`;
}

/** What keeps a groove from being fitted to a sheet. */
export function errorText(error: FitError): string {
  switch (error.code) {
    case 'no-readings':
      return 'Put calipers on the sheet you will cut, near two corners and the middle, and give each reading.';
    case 'not-positive':
      return 'A thickness must be more than 0.';
    case 'clearance-negative':
      return `The groove would be ${writeLength(error.by)} narrower than the sheet. A clearance is 0 or more.`;
    default:
      return assertNever(error);
  }
}
