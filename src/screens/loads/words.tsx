import type { ComponentChildren as Blank } from 'preact';
import type { Length, Ratio } from '../../length/length';
import { type LoadedShelf, type Span, strip } from '../../plan/shelf-loads';
import type { Ends } from '../../trade/loads/reactions';
import type { Sag } from '../../trade/loads/sag';
import type { SagCure } from '../../trade/loads/sag-cures';
import type { Stuff } from '../../trade/loads/stuff';
import { inSentence } from '../../ui/pad-words';
import { counted } from '../shared/counted';
import { closely, reckoned, exactly as w } from '../shared/exact-words';
import { failed } from '../shared/last-notes-words';
import { unweighed } from '../shared/lot-words';
import { inUnit, measureUnit, weight } from '../shared/pounds';
import { feet, footOf, sags } from '../shared/sag-words';
import { stuffs } from '../shared/stuff-words';

export const title = 'Loads';
export const toCase = 'Case';
export const toJob = 'Job';
export const noJob = 'No job is open.';
export const thingsTitle = 'Things to go in';
export const thingsFirst =
  'What is to go in, before anything is drawn: fronts, shelves and trays follow it. A lot without a place is not placed yet.';
export const noCase = 'This case is not in the job.';
export const notWorked = 'The case does not work out yet: its page says what is missing.';
export const toLifting = 'Weight and lifting';
export const toSolid = 'Solid wood';
export const estimate =
  'Every figure here is an estimate. In a public place, ask who is responsible for what is loaded.';

// What failed last time.

export const failedLine = (blank: Blank) => (
  <>
    {failed}: {blank}
  </>
);

// A shelf.

/** What spans what, and how it is held and loaded. */
export const shelf = (
  { shelf: { span, deep, thick }, grain }: Pick<Span, 'shelf' | 'grain'>,
  at: {
    readonly stuff: Stuff;
    readonly strip: Blank;
    readonly tall: Blank | undefined;
    readonly back: Blank;
    readonly years: Blank;
  },
) => (
  <>
    Spans {reckoned(span)}, {reckoned(deep)} deep, {closely(thick)} {stuffs[at.stuff]} with its grain {grain}{' '}
    the span. On its front edge {at.strip}
    {at.tall && <> {at.tall} tall</>}; its back {at.back}; loaded {at.years}.
  </>
);

export const stiffTitle = (name: string): string => `${name}: how stiff its stock is`;
/** As it was entered. */
export const reckonedWith = (stiff: Blank) => (
  <>
    Reckoned with {stiff} {measureUnit('stiff')}, as entered.
  </>
);
/** Not entered: it is asked for, and what is reckoned with until then is said. */
export const stiffAsked = (ask: Blank) => (
  <>
    Enter how stiff its stock is: {ask} {measureUnit('stiff')}.
  </>
);
export const untilThen = (least: Ratio): string =>
  `Until then every figure here goes by ${inUnit('stiff', least.div(1_000_000n) as Ratio)}, the least of its kind.`;

export const stripTitle = (name: string): string => `${name}: strip on its front edge`;
export const tallTitle = (name: string): string => `${name}: how tall the strip is`;
export const backTitle = (name: string): string => `${name}: its back`;
export const yearsTitle = (name: string): string => `${name}: how long it is loaded`;
export const useTitle = (name: string): string => `${name}: where it stands`;
export const noStrip = 'no strip';
export const edgingAlone = 'its edging, not counted';
export const stripOf = (stock: string): string => `a strip of ${stock || 'a sheet without a name'}`;
export const backs = {
  loose: { label: 'stands free' },
  glued: { label: 'is glued into the back', hint: 'a rough bound: the front half carries half' },
} as const;
export const lengths = {
  while: { label: 'for a while' },
  years: { label: 'for years', hint: 'it creeps: twice as far' },
} as const;
const places = {
  other: 'another place',
  school: 'a school',
  library: 'a library',
  hospital: 'a hospital',
} as const;
/** Where it stands, and what a shelf is reckoned with there. */
export const useOf = (use: keyof typeof places) => ({ label: places[use], hint: footOf(feet[use]) });
export const standsIn = (blank: Blank) => <>It stands in {blank}.</>;

/** A shelf or a tray that is one of several. */
export const numbered = (name: string, no: number): string => `${name}, no. ${no}`;

/** Which of several, where there are several. */
export const piece = (no: number, of: number): string =>
  of > 1 ? `No. ${no}, from the bottom up` : 'With its load';

export const carries = ({ load, contents }: LoadedShelf, own: Ratio, not: number): string =>
  `Carries about ${weight(load)}: things ${weight(contents)}, itself ${weight(own)}.${unweighed(not)}`;

export const ends = ({ left, right }: Ends): string =>
  `Its left end carries about ${weight(left)}, its right ${weight(right)}. What a fixing in a wall holds is for its maker.`;

export const empty = (n: number, of: number): string =>
  of === 1
    ? 'Nothing is said to stand on it.'
    : `Nothing is said to stand on ${n === of ? 'any' : 'the others'} of the ${of}.`;

const unfits = {
  'too-long': 'too long for it',
  'too-wide': 'too wide for it',
  'too-tall': 'too tall under the tray above',
  'too-high': 'too tall for what is left over it',
  beyond: 'past its right end',
} as const;

export const unfit = (
  name: string,
  { code, by }: { readonly code: keyof typeof unfits; readonly by: Length },
) => `${name}: ${w(by)} ${unfits[code]}.`;

export const pitch = (x: Length): string => `The tallest thing here asks for trays ${w(x)} apart at least.`;

/** How many trays the things fill, of those there are. */
export const fill = (trays: number, of: number): string =>
  `Laid in rows, each kind on trays of its own, what is here fills ${counted(trays, 'tray', 'trays')}${
    trays > of ? `, ${trays - of} more than there are` : ` of ${of}`
  }.`;

/** Evenly loaded by the standard, nothing said to stand on it. */
export const underEven = (load: Ratio, sag: Sag): string =>
  `Under that even load, ${weight(load)}: ${inSentence(sags(sag))}`;

export const helps = 'What would help, each by itself';

export function cure(found: SagCure): string {
  switch (found.code) {
    case 'edging':
      return `A hardwood strip ${w(strip.thick)} thick and ${w(strip.tall)} tall along its front edge: ${closely(found.sag)}${found.goes ? '' : ', still too far'}.`;
    case 'upright':
      return `An upright in the middle, the shelf cut there: ${closely(found.sag)}${found.goes ? '' : ', still too far'}.`;
    case 'thicker':
      return `${w(found.thick)} thick of the same stuff.`;
    case 'shorter':
      return `A span of ${w(found.span)}.`;
    case 'lighter':
      return `Not over ${weight(found.load)}, itself among it.`;
  }
}

export const drawn = (name: string): string =>
  `${name} between its uprights, its sag drawn ten times as large`;
export const tenfold = 'sag drawn tenfold, broken line: as far as allowed';
export const unplaced = 'Not placed yet';
export const lost = 'What these things stood on is not in the job any more.';
