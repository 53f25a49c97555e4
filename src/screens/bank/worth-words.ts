import { inches, type Length } from '../../length/length';
import type { BanksMeet } from '../../trade/boxes/banks-meet';
import type { ShelfAcross } from '../../trade/fronts/opening';
import { exactly as w } from '../shared/exact-words';
import { nameOf } from './words';

/** Fronts so low, by their numbers. */
export const low = (fronts: readonly number[]): string =>
  `${fronts.length === 1 ? 'Front' : 'Fronts'} ${fronts.join(', ')} under ${w(inches(5n, 2n))}: hardly room for a box and a pull.`;

/** An edge at a side is so wide, one over or under the fronts so high. */
export const hangsPast = (at: 'left' | 'right' | 'top' | 'bottom', over: Length, edge: Length): string =>
  `At the ${at} the front covers ${w(over)} of an edge ${w(edge)} ${at === 'left' || at === 'right' ? 'wide' : 'high'}: it hangs past.`;

export const taper = (by: Length, seen: boolean): string =>
  `Each gap tapers ${w(by)} from side to side${seen ? ', which shows' : ': not seen'}.`;
export const closes = (side: string, gap: Length): string => `At the ${side} a gap closes to ${w(gap)}.`;

export const bind = (side: string, by: Length): string =>
  `At the ${side} the fronts still to go bind by ${w(by)}.`;
export const gapsLeft = (side: string, each: Length, how: string): string =>
  `At the ${side} the gaps still to go are ${w(each)}: ${how}.`;

export const tooHigh = (by: Length): string =>
  `The heights are ${w(by)} over what the opening leaves: the last gap closes by that.`;
export const cutAlike = (left: Length): string =>
  `Cut alike, ${w(left)} is left over: it goes into the gaps.`;

/** What is left over comes last: at the bottom where fronts go on from the top. */
export function leftOver(left: Length, order: 'down' | 'up', underOneMark: boolean): string {
  const where = `in the gap at the ${order === 'down' ? 'bottom' : 'top'}`;
  return underOneMark
    ? `Less than one mark is left over: ${w(left)}, ${where}.`
    : `The heights given leave ${w(left)} over, ${where}.`;
}

type Errors = {
  readonly frontTol: Length;
  readonly worst: Length;
  readonly likely: Length;
  readonly binds: boolean;
};

export const stackUp = ({ frontTol, worst, likely, binds }: Errors): string =>
  `If every front is off by ${w(frontTol)} the same way, the last gap is off by ${w(worst)}${binds ? ', and could bind' : ''}; likely ${w(likely)}. Fit and measure as you go.`;

export const ofDrawer = (no: number, what: string): string => `Drawer ${no}: ${what}`;
export const shortStick = (drawer: number, length: Length): string =>
  `The stick of drawer ${drawer}, ${w(length)}, is too short to hold at a saw: cut it from a long strip.`;
const sits = { runners: 'runner', strips: 'strip' } as const;

export const slideBelow = (
  at: { readonly drawer: number; readonly by: Length },
  stands: string,
  hung?: keyof typeof sits,
): string =>
  ofDrawer(
    at.drawer,
    hung
      ? `its ${sits[hung]} would sit ${w(at.by)} below the ${stands}: start the box so much higher over the lower edge of its front.`
      : `its slide would sit ${w(at.by)} below the ${stands}.`,
  );
export const weakPin = (least: Length): string => `a half pin under ${w(least)} is weak.`;
export const thinTails = (tail: Length): string =>
  `tails ${w(tail)} at the baseline are narrower than the cutter.`;

export const hungSkew = (off: Length): string =>
  `The opening is ${w(off)} higher at one side. Hung with their boxes, the fronts stand level: all of it is in the gap at the top.`;

/** A fixed shelf in the way of drawers, and how it would not be. */
export function shelfAcross({ from, to, behind }: ShelfAcross): string {
  if (!behind)
    return `A fixed shelf stands across the opening, ${w(from)} to ${w(to)} over its lower edge: no drawer passes it. A middle rail in front of it makes two openings, one under the shelf and one over it.`;
  return behind.edge === 'lower'
    ? `A fixed shelf stands ${w(behind.by)} up into the opening, behind its lower edge: so much lower it is out of the way.`
    : `A fixed shelf hangs ${w(behind.by)} down into the opening, behind its upper edge: so much higher it is out of the way.`;
}

/** A drawer that stands in one of the bank over or under its rail. */
export function meets({ drawer, over, other, no, by, fits }: BanksMeet): string {
  const [carried, place] = over ? ['what carries it', 'under it'] : ['what lies over it', 'over it'];
  const would = over
    ? `its box at least ${w(fits)} over the lower edge of its front`
    : `its box at most ${w(fits)} high`;
  return `Drawer ${drawer} and ${carried} stand ${w(by)} in drawer ${no} of ${nameOf(other)}, ${place}: ${would}.`;
}
