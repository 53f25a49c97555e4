import type { ComponentChildren as Blank } from 'preact';
import { isNegative, type Length, negate } from '../../length/length';
import type { Bank } from '../../trade/fronts/bank';
import { counted } from '../shared/counted';
import { exactly as w } from '../shared/exact-words';
import { edgeRead, endFrom } from './edge-words';

export const asBuilt = 'As built';
export const frontAsBuilt = (no: number): string => `Front ${no}, as built`;

// Before the first front, and after the last.

export const notMeasured = 'Opening not measured yet';
export const measureHow =
  'Measure its height at both uprights and its width at front and back, once the case stands.';
export const measure = 'Measure the opening';
export const allOn = (count: number): string =>
  count === 1 ? 'The front is on' : `All ${count} fronts are on`;
export const lastGap = (gap: string): string => `The last gap: ${gap}.`;
export const toPulls = 'On to the pulls';

// The calipers round the front in hand.

const where = (order: Bank['order']): string => `${edgeRead[order]} edge from the ${endFrom[order]}`;

export const heading = (no: number, order: Bank['order']): string => `Front ${no}, ${where(order)}`;
export const keysTitle = (no: number, side: 'left' | 'right', order: Bank['order']): string =>
  `Front ${no}, ${side}: ${where(order)}`;
export const sides = { left: 'Left', right: 'Right' } as const;
export const readAct = (no: number, side: 'left' | 'right'): string => `Front ${no} measured, ${side}`;

/** Where its edge is planned; at both sides where they differ. */
export const planned = (at: { readonly left: Blank; readonly right?: Blank; readonly state: Blank }) =>
  at.right ? (
    <>
      planned {at.left} left, {at.right} right{at.state}
    </>
  ) : (
    <>
      planned {at.left}
      {at.state}
    </>
  );
export const inUse = ', in use';
export const shimsBefore = (piles: string): string => `. Shims before it: ${piles}`;

export const takeOff = 'Take it off again';
export const takenOff = (no: number): string => `Front ${no} taken off`;
export const oneAtATime = 'Fit one at a time';

// What the front just read leaves for the others.

/** What is left for the gaps of the fronts to go; with none to go, for the last gap. */
export const gapsLeft = (at: {
  readonly toGo: number;
  readonly gaps: number;
  readonly each: string;
}): string => (at.toGo > 0 ? `${counted(at.gaps, 'gap', 'gaps')} to go: ${at.each}.` : lastGap(at.each));

/** What a front gives up; one that may be higher grows. */
export const gives = (no: number, off: Length): string =>
  isNegative(off) ? `Front ${no} may be ${w(negate(off))} taller` : `Take ${w(off)} off front ${no}`;

export const heightChange = (before: Blank, after: Blank) => (
  <>
    {before} → {after}
  </>
);

/** What would keep the gaps as wanted; negative: the fronts may be so much higher. */
export const trimInAll = (trim: Length): string =>
  isNegative(trim)
    ? `The fronts still to go may be ${w(negate(trim))} taller in all.`
    : `To keep the gaps as planned, take ${w(trim)} in all off the fronts still to go.`;

export const goes = 'Where the difference goes';
export const goesTo = (what: Blank) => (
  <>
    Difference goes to <b>{what}</b>
  </>
);

export const refusals = {
  'past-the-end': 'That is past the opening: measure it again.',
  behind: 'That is before the front already on: measure it again.',
  'no-front':
    'That much cannot come off: nothing of a front would be left. Measure it again, or let the gaps take it.',
} as const;

/** `says` why it is held back, in the words of the machine's screen. */
export const notTicked = (says: string): string => `It is not ticked as on. ${says}`;
export const use = (toGo: number): string => (toGo > 0 ? 'Use it, next front' : 'Use it, all are on');
export const fittedAct = (bank: string): string => `Front fitted, ${bank || 'drawers'}`;
