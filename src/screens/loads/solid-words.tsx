import type { ComponentChildren as Blank } from 'preact';
import { absolute, atMost, isNegative, type Length, type Ratio } from '../../length/length';
import { assertNever } from '../../length/result';
import type { FixedTo } from '../../plan/solid-fixed';
import type { Year, YearError } from '../../plan/solid-plan';
import type { Cross } from '../../trade/movement/cross';
import type { FrontError, FrontGaps, frontLimits } from '../../trade/movement/front';
import type { Panel, PanelError } from '../../trade/movement/panel';
import type { Slot } from '../../trade/movement/slot';
import { unitInHand } from '../../ui/unit-in-hand';
import { capital } from '../shared/capital';
import { closely, exactly as w } from '../shared/exact-words';
import { tenths } from '../shared/pounds';

export const title = 'Solid wood';
export const why =
  'Solid wood grows and shrinks across its grain with the moisture of the year; along it, and in sheets, next to nothing. Estimates: width is probably over-told.';

// The year.

export const year = 'Moisture through the year';
export const titles = {
  woodNow: 'Moisture of the wood now, by a meter',
  woodLow: 'Least moisture of the year, by a meter',
  woodHigh: 'Greatest moisture of the year, by a meter',
  airLow: 'Driest air of the room, relative humidity',
  airHigh: 'Dampest air of the room, relative humidity',
} as const;
export const percent = '%';
export const tooWet = (by: Ratio): string =>
  `That is ${tenths(by)} % over the 30 % at which wood begins to move: 0 to 30 fits. Let it dry first.`;

export const yearLine = (at: Readonly<Record<keyof typeof titles, Blank>>) => (
  <>
    The wood is at {at.woodNow} % now, {at.woodLow} % at its driest and {at.woodHigh} % at its dampest. No
    meter through the year? The air of the room goes from {at.airLow} to {at.airHigh} %.
  </>
);

const froms = (from: Year['lowFrom']): string => {
  if (from === 'meter') return 'by the meter';
  if (from === 'usual') return 'of a heated room that nobody knows';
  return `by the air at ${unitInHand() === 'mm' ? '21 °C' : '70 °F'}`;
};

export const reckoned = ({ low, high, lowFrom, highFrom }: Year): string =>
  `Reckoned from ${tenths(low)} %, ${froms(lowFrom)}, to ${tenths(high)} %, ${froms(highFrom)}.`;

export function yearErrorText(error: YearError): string {
  switch (error.code) {
    case 'now-missing':
      return 'Enter first: moisture of the wood now, by a meter.';
    case 'below-low':
      return `The wood now is ${tenths(error.by)} % drier than its driest of the year: read again.`;
    case 'above-high':
      return `The wood now is ${tenths(error.by)} % damper than its dampest of the year: read again.`;
    case 'too-dry':
      return `That air is ${tenths(error.by)} % drier than the ${tenths(error.limit)} % the table begins at: use a meter.`;
    case 'too-damp':
      return `That air is ${tenths(error.by)} % damper than the ${tenths(error.limit)} % the table ends at: use a meter.`;
    default:
      return assertNever(error);
  }
}

// A part.

export const none = 'No part of this case is of solid wood. What a sheet or stick is of stands on its page.';
export const asksSpecies = (stock: string): string =>
  `Say on the page of ${stock || 'its stock'} which species it is.`;
export const toStock = (stock: string): string => stock || 'Its stock';

export const moves = (across: Length, shrinks: Length, grows: Length, beyond: boolean): string =>
  `${w(across)} across its grain: shrinks ${closely(absolute(shrinks))} at the driest, grows ${closely(grows)} at the dampest.${
    beyond ? ' Outside 6 to 14 %, beyond the table.' : ''
  }`;

export const reachTitle = 'From the line it is held on to the screw, across the grain';
export const backOfTop = 'the back of the top';
export const shankTitle = 'Shank of the screw';
export const slotLine = (reach: Blank, shank: Blank) => (
  <>
    Held along its front; a screw {reach} behind that, its shank {shank}.
  </>
);

export const slot = ({ long, set, out, in: back }: Slot): string =>
  `Slot ${w(long.value)} long across the grain, the screw set ${closely(set)} from its end nearer the held line: it goes ${closely(out)} out and ${closely(back)} in.`;

export const slotWrong =
  'The screw must stand behind the line the top is held on, and its shank must be more than nothing.';

/** What a part is fixed to across its grain, and what helps where it is too much. */
const fixed: Readonly<Record<FixedTo, readonly [head: string, cure: string]>> = {
  'front-and-back': ['Fixed front and back', 'Slot it, or hold it on one line'],
  edging: ['Edging glued all along its ends', 'Glue that at the front alone, a screw in a slot behind'],
  sides: ['Glued to sides of sheet from front to back', 'Glue it in at the front alone, or make it of sheet'],
  rabbets: [
    'Fixed in both its rabbets',
    'Hold it along its middle, with room at both edges, or make it of sheet',
  ],
  'back-edges': [
    'Screwed to the back edges all round',
    'Screw it at one edge, in slots at the other, and glue nothing',
  ],
  base: ['Screwed to cross members front and back', 'Screw it in front, behind through slots'],
  'box-front': [
    'Screwed to a box front of sheet, top and bottom',
    'One row of screws through slots, or a front of sheet',
  ],
};

export const cross = (to: FixedTo, { difference, over, longest }: Cross): string => {
  const [head, cure] = fixed[to];
  if (!over) return `${head} it has ${closely(difference)} to take: it bears that.`;
  const most = longest ? `${w(longest)} could be fixed.` : 'nothing of it could be fixed.';
  return `${head} ${closely(difference)} has to go somewhere: it splits or lets go. ${cure}; ${most}`;
};

/** @param deepest no groove is cut deeper; @param now as deep as it is planned, front to back */
export const bottom = (found: Panel, deepest: Length, now: Length): string => {
  const cut = `Cut it ${w(found.cut.value)} front to back, where ${w(now)} is planned.`;
  const { pushed } = found;
  if (!found.pushedShort)
    return `${cut} Pushed over to one groove at the driest ${closely(pushed)} stays in the other.`;
  const out = isNegative(pushed)
    ? `it is out of the other by ${closely(absolute(pushed))}`
    : `only ${closely(pushed)} stays in the other`;
  return `${cut} Pushed over to one groove at the driest ${out}. ${bottomCure(found, deepest)}`;
};

const bottomCure = ({ pinned, pinnedShort, deeper }: Panel, deepest: Length): string => {
  const pin = pinnedShort ? [] : [`pinned at its middle ${closely(pinned)} stays in each`];
  const groove = deeper && atMost(deeper, deepest) ? [`grooves ${w(deeper)} deep keep it`] : [];
  const ways = [...pin, ...groove, 'a bottom of sheet next to never moves'].join('; ');
  return `${capital(ways)}.`;
};

export const bottomErrorText = (error: PanelError): string =>
  error.code === 'tip-over-groove'
    ? `What is left free at the floor of each groove is ${w(error.by)} over how deep the groove is.`
    : 'The bottom is not reckoned.';

type Limits = ReturnType<typeof frontLimits>;

/** @param limits of its gaps, in the unit system of the job */
export const front = (found: FrontGaps, now: Length, limits: Limits): string => {
  const cut = `Cut it ${w(found.high.value)} high, where ${w(now)} is planned: gaps ${closely(found.now)} now, ${closely(found.summer)} at the dampest, ${closely(found.winter)} at the driest.`;
  const tight = found.tight ? ` ${closely(found.tight)} under the ${w(limits.least)} that never binds.` : '';
  const wide = found.wide
    ? ` ${closely(found.wide)} over the ${w(limits.most)} that is not seen: ${narrower(found)}.`
    : '';
  return `${cut}${tight}${wide}`;
};

const narrower = ({ openingMost }: FrontGaps): string =>
  openingMost ? `an opening of ${w(openingMost)} keeps it, or a front of sheet` : 'a front of sheet keeps it';

export const frontErrorText = (error: FrontError): string =>
  error.code === 'no-front'
    ? `The gaps are ${w(error.by)} over the opening: no front is left.`
    : 'The front is not reckoned.';
