import { isNegative, type Length, negate } from '../../length/length';
import type { Rounded } from '../../length/round';
import type { Tape } from '../../length/tape';
import { writeLength, writeMark } from '../../length/write';
import type { Bank } from '../../trade/fronts/bank';
import { exactly as w } from '../shared/exact-words';
import { edgeRead, endFrom, farEnd } from './edge-words';
import { sidesText } from './gap-words';

type Order = Bank['order'];

// The story stick.

/** `past`: the edge lies outside the opening, beyond the end the stick is read from. */
export const edgeTitle = (
  at: { readonly front: number; readonly edge: string },
  order: Order,
  past: boolean,
): string => `Front ${at.front}, ${at.edge} edge${past ? `, past the ${endFrom[order]} of the opening` : ''}`;

/** `higher`: by how much one side of the opening is higher than the other, if it is. */
export function edgeSays(order: Order, higher: Length | undefined): string {
  const says = `On the story stick, from its ${endFrom[order]} end. Mark once, carry to both uprights.`;
  return higher
    ? `${says} One side is ${w(higher)} higher: the stick keeps the gaps as planned and leaves that at the ${farEnd[order]}. For gaps that taper, mark each upright from the fronts as drawn.`
    : says;
}

export const marked = 'Marked';

// Fitting the fronts.

/** The column is named where there are several. */
export const frontTitle = (no: number, column: number | undefined, order: Order): string =>
  `Front ${no}${column === undefined ? '' : `, column ${column}`}, ${edgeRead[order]} edge`;

/** `right`: the mark at the right, where it is another than at the left. */
export const frontSays = (
  order: Order,
  at: { readonly right: string | undefined; readonly gap: string; readonly shims: string },
): string =>
  at.right
    ? `From the ${endFrom[order]} of the opening at the left, ${at.right} at the right. ${at.gap}${at.shims}.`
    : `From the ${endFrom[order]} of the opening. ${at.gap}${at.shims}.`;

/** The gap before a front; where the first one covers the case, by how much it does. */
export const gapSays = ({ left, right }: Readonly<Record<'left' | 'right', Length>>, tape: Tape): string =>
  isNegative(left) && isNegative(right)
    ? `It stands ${w(negate(left))} past that`
    : `Gap before it ${sidesText(left, right, tape)}`;

export const shims = (piles: string): string => `: shims ${piles}`;
export const isOn = (no: number): string => `Front ${no} is on`;

// One stick for all slides.

export const stickTitle = (drawer: number): string => `Drawer ${drawer}, stick`;
export const kickerTitle = (drawer: number): string => `Drawer ${drawer}, stick for its kickers`;

const rests = { slide: 'slide', runner: 'runner', hangstrip: 'strip', kicker: 'kicker' } as const;
export const restWord = (on: keyof typeof rests | undefined): string => rests[on ?? 'slide'];

export const longestFirst = (stand: string, on: keyof typeof rests): string =>
  `The longest first. Stand it on the ${stand}, rest the ${rests[on]} on it, one at each side.`;

/** The column is named where there are several. */
export const slide = (hand: 'left' | 'right', column: number | undefined): string =>
  column === undefined ? hand : `Column ${column}, ${hand}`;

export const noKerf = (drawer: number): string =>
  `Cut the stick of drawer ${drawer} down. Enter the kerf in Shop figures to see how much comes off. Then measure what stays.`;
export const tooShort = (drawer: number, by: Length): string =>
  `The stick of drawer ${drawer} is ${w(by)} too short for it: cut a new one.`;
export const justAsLong = 'The stick before is just as long: use it as it is.';
export const lessThanKerf = (off: Length): string =>
  `Only ${w(off)} has to come off the stick before, less than a kerf: plane or sand it. Measure what stays.`;

/** `from`: what the stick before was measured to be, where that is not what it should be. */
export const comesOff = (off: Rounded, from: Length | undefined, tape: Tape): string =>
  `${writeMark(off, tape)} and the kerf come off the stick before${from ? `, which measures ${writeLength(from, tape)}` : ''}. Measure what stays, not what fell.`;
