import type { ComponentChildren } from 'preact';
import type { Length } from '../../length/length';
import { figureIn } from '../../length/metric-figures';
import { assertNever } from '../../length/result';
import type { FitError } from '../../trade/grooves/fit';
import { leastSpreadToWarn, loosestGlueLine } from '../../trade/grooves/fit';
import { unitInHand } from '../../ui/unit-in-hand';
import { closely, exactly } from '../shared/exact-words';

export const fitToSheet = 'Fit to a sheet';
export const back = 'Back';
export const whichSheet = 'Which sheet';
export const howTheyFit = 'How they fit';
export const kindsTitle = 'How the parts fit (common practice)';
export const clearanceTitle = 'Clearance over the thickest';
export const readHere = { label: 'readings given here', inSentence: 'readings here' };

export const kinds = [
  { value: 'gluedSnug', label: 'glued, snug' },
  { value: 'glued', label: 'glued' },
  { value: 'gluedEasy', label: 'glued, easy' },
  { value: 'slides', label: 'slides' },
  { value: 'slidesEasy', label: 'slides easily' },
] as const;

type Kind = (typeof kinds)[number]['value'];

const kindHints: Record<Kind, (over: string) => string> = {
  gluedSnug: (over) => `${over} over the thickest`,
  glued: (over) => `${over} over`,
  gluedEasy: (over) => `${over} over`,
  slides: (over) => `${over} over: trays`,
  slidesEasy: (over) => `${over} over; after finish add two films`,
};

/** How much a kind of fit is over the thickest. */
export const kindHint = (kind: Kind, clearance: Length): string => kindHints[kind](exactly(clearance));

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
  width ? `Cut grooves ${closely(width)} wide` : 'Give a reading first';

export const grooveForStack = 'Groove, for the stack';
export const forMark = (nearest64: Length): string =>
  unitInHand() === 'mm'
    ? `Set the stack to this, not to a mark.`
    : `For a mark, nearest 64th: ${exactly(nearest64)}. Never set a stack from the 64th.`;
export const play = (thinnest: Length, loosest: Length): string =>
  `At the thinnest, ${closely(thinnest)}, the play is ${closely(loosest)}.`;
export const wideSpread = (spread: Length): string =>
  `The readings spread by ${closely(spread)}, more than ${exactly(figureIn(unitInHand(), leastSpreadToWarn))}: two lots, perhaps, or measured over fuzz.`;

type Groups = readonly [readonly Length[], readonly Length[]];

/** Too much play for glue; where two stacks would do better, which readings each is for. */
export function weakGlueLine(groups: Groups | undefined): string {
  const weak = `Play over ${closely(figureIn(unitInHand(), loosestGlueLine))} makes a weak glue line`;
  if (!groups) return `${weak}: take less clearance.`;
  const [one, two] = groups.map((readings) => readings.map((x) => closely(x)).join(', '));
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
      return `The groove would be ${exactly(error.by)} narrower than the sheet. A clearance is 0 or more.`;
    default:
      return assertNever(error);
  }
}
