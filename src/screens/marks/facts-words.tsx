import type { ComponentChildren } from 'preact';
import { absolute, inches, isNegative, isPositive, isZero, type Length } from '../../length/length';
import { figureIn } from '../../length/metric-figures';
import type { Tape } from '../../length/tape';
import { writeLength } from '../../length/write';
import type { Web } from '../../trade/grooves/lands';
import type { Layout } from '../../trade/grooves/lay-out';
import type { Dropped } from '../../trade/grooves/layout';
import { unitInHand } from '../../ui/unit-in-hand';
import { closely, exactly as w } from '../shared/exact-words';
import { callGroove } from '../shared/groove-name';
import '../../ui/mixed.css';

export const worthKnowing = 'Worth knowing';

/** A groove that gives way to a wide one, and why. */
export function droppedText({ groove, by, why, amount }: Dropped): string {
  const reason =
    why === 'overlap' ? `runs ${w(amount)} into` : `would leave only ${w(amount)} of wood beside`;
  return `No. ${groove.no} is left out: it ${reason} the wide ${by.no}. Leave the same number out of the facing board.`;
}

/** The thinnest wood a layout leaves. @example 'Behind the deepest groove 17/32 of 23/32 is left.' */
export function webText(
  found: Web,
  { layout, thickness }: { readonly layout: Layout; readonly thickness: Length },
): string {
  const left = `${w(found.web)} of ${w(thickness)} is left.`;
  if (found.b === undefined) return `Behind the deepest groove ${left}`;
  const [a, b] = [callGroove(layout, found.a), callGroove(layout, found.b)];
  return `Between ${a} and ${b} on the other face ${left}`;
}

/** One stop for a board and its facing part: it is set for one, and the other takes the spacer. */
export const oneStop = (set: string, spaced: string, spacer: ComponentChildren) => (
  <>
    One stop for both: set it for the {set}, and put a {spacer} spacer between the stop and the {spaced}.
  </>
);

export const partName = (name: string): string => name || 'board';

export const endForEnd = 'End-for-end safe: turned round, the same grooves fall in the same places.';
export const notEndForEnd = (start: Length): string =>
  `Not end-for-end safe. Start ${w(start)} from the end and it would be: one less mistake to make.`;

export const openBook =
  'Left and right side as an open book, fronts outward, both standing on the reference end';

/** What changes between left and right; more where the grooves are stopped. */
export const pair = (stopped: boolean): string =>
  `Same figures from the same end on both; the front edge leads on one and trails on the other.${
    stopped ? ' These grooves stop short of the front, so the stop for their length changes sides.' : ''
  }`;

/** How far off the last of some steps is, and which way. @example '0.094, past its place' */
export function offText(off: Length): string {
  const way = isZero(off) ? '' : isNegative(off) ? ', short of its place' : ', past its place';
  return `${closely(off)}${way}`;
}

type SteppingProps = {
  /** The most a mark from one end is off. */
  readonly within: Length;
  readonly step: Length;
  readonly tape: Tape;
  /** What each step is off by, and the last of them. */
  readonly each: Length;
  readonly off: Length;
  readonly tooMuch: boolean;
};

/** More than this adds up to a mark that is off. Common practice, no source. */
export const mostOff = (): Length => figureIn(unitInHand(), inches(1n, 64n));

/** What stepping would cost beside absolute marks. */
export const Stepping = ({ within, step, tape, each, off, tooMuch }: SteppingProps) => (
  <>
    <b>Marked off one end</b>, each groove is within {w(within)}. <b>Stepped</b> at {writeLength(step, tape)},
    each step off by {closely(each)}, the last is off by <b>{offText(off)}</b>
    {tooMuch && <span class="rem"> over {w(mostOff())}: lay out from one end</span>}.
  </>
);

export const stepTitle = 'Error of one step';
export const stepOff = (blank: ComponentChildren) => <>One step of a pin or block is off by {blank}</>;

/** What tapes of the three classes may be out by over a length. */
export const tapeText = (over: string, [one, two, three]: readonly [Length, Length, Length]): string =>
  `Over ${over} a class I tape may be out by ${closely(one)}, class II by ${closely(two)}, class III by ${closely(three)}, hook included. One tape for the whole job.`;

export const readTitle = 'Near edge of the last groove, as read';
export const asRead = (groove: string, blank: ComponentChildren) => (
  <>
    As found, {groove} reads {blank}
  </>
);

export const readTooLittle = (first: Length): string =>
  `The first groove starts at ${w(first)}: the last reads more than that.`;

export const realPitch = 'Real pitch';
export const lastIsOff = (off: Length): string =>
  `the last is ${closely(absolute(off))} ${isNegative(off) ? 'short' : 'past'}; cut the mate to this pitch`;

export const nextStackTitle = 'Width of the next stack';

/** Pencil marks for another stack: the blank takes its width, then it is said how the marks move. */
export const rebuilt = (now: Length, blank: ComponentChildren, moves: string) => (
  <>
    These pencil marks belong to a stack {closely(now)} wide. Rebuilt to {blank}
    {moves && ` ${moves}`}
  </>
);

/** How far all pencil marks move for the next stack, and which way; nothing until it is known. */
export function marksMove(shift: Length | undefined, end: string): string {
  if (!shift) return '';
  if (isZero(shift)) return 'they stay where they are.';
  const way = isPositive(shift) ? `away from the blade, toward the ${end} end` : 'back toward the blade';
  return `every mark moves ${closely(absolute(shift))} ${way}.`;
}
