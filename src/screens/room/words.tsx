import type { ComponentChildren as Blank } from 'preact';
import { absolute, isNegative, isZero, type Length } from '../../length/length';
import { grainOf, markAt } from '../../length/tape';
import { tapeInHand } from '../../ui/unit-in-hand';
import { exactly as w } from '../shared/exact-words';

export const title = 'Room';
export const back = 'Job';
export const noJob = 'No job is open.';
export const pagesLabel = 'Pages of the room';
export type Page = 'size' | 'way' | 'wall';
export const pages: Record<Page, string> = { size: 'Its size', way: 'The way in', wall: 'The wall' };
export const onward: Record<Page, string> = { size: 'The way in', way: 'The wall', wall: 'Job' };

// The figures on top.

export const widest = 'Widest case';
export const highest = 'Highest case';
export const notYet = 'not read yet';
export const start =
  'Measure where the case will stand: wide and high at the floor, the middle and the top. Two plumb lines and one level line say what a tape alone cannot.';

// How the tape was used.

export const tapeUsed = 'How the tape was used';
export const tapeSwitch = { burned: 'Started at a burned mark', inside: 'Tape body inside' } as const;
export const burnedTold = (at: Blank) => (
  <>The tape was started at {at}: so much comes off every width and height.</>
);
export const burnedAt = 'Where the tape was started';
export const bodyTold = (long: Blank) => (
  <>The body of the tape is {long} long: so much is added to every width and height.</>
);
export const bodyLong = 'How long the body of the tape is';
export const switched = (name: string, on: boolean): string => `${name}: ${on ? 'yes' : 'no'}`;
export const bothUsed =
  'Both are lit: a tape is seldom started at a burned mark and read with its body inside. Look at it again.';

// Widths.

export const widths = 'Between the walls';
export const addWidth = 'A place';
export const widthAdded = 'A place between the walls';
export const heightAdded = 'A place between floor and ceiling';
export const takeAway = 'Take it away';
export const takenAway = (name: string): string => `${name} taken away`;
export const place = (no: number): string => `Place ${no}`;
export const upright = (no: number): string => `Height ${no}`;
export const planes = { front: 'in front', back: 'at the back' } as const;
export const whichPlane = (name: string): string => `${name}: in front or at the back`;
export const overFloor = (name: string): string => `${name}: how high over the floor`;
export const wide = (name: string): string => `${name}: wall to wall`;
export const leftOf = (name: string): string => `${name}: from the left line to the left wall`;
export const rightOf = (name: string): string => `${name}: from the right line to the right wall`;

type AcrossBlanks = Readonly<Record<'at' | 'plane' | 'wide' | 'left' | 'right', Blank>>;

export const acrossLine = ({ at, plane, wide: across, left, right }: AcrossBlanks) => (
  <>
    {at} over the floor, {plane}: {across} wall to wall, {left} left of the left line, {right} right of the
    right line
  </>
);

export const apart = 'How far apart the two plumb lines hang';
export const linesTold = (far: Blank) => (
  <>
    Two plumb lines hang {far} apart. Measure from each to its wall; where the wall comes in over the line,
    less than 0.
  </>
);

// Heights.

export const heights = 'Floor to ceiling';
export const fromLeft = (name: string): string => `${name}: how far from the left wall`;
export const high = (name: string): string => `${name}: floor to ceiling`;
export const down = (name: string): string => `${name}: from the level line down to the floor`;
export const up = (name: string): string => `${name}: from the level line up to the ceiling`;

type UprightBlanks = Readonly<Record<'at' | 'plane' | 'high' | 'drop' | 'rise', Blank>>;

export const uprightLine = ({ at, plane, high: all, drop, rise }: UprightBlanks) => (
  <>
    {at} from the left wall, {plane}: {all} floor to ceiling; from the level line {drop} down, {rise} up
  </>
);

// What is left free.

export const free = 'Left free';
export const allowLeft = 'Left free at the left for the scribe';
export const allowRight = 'Left free at the right for the scribe';
export const ceilingGap = 'Left free under the ceiling';
export const standsUp = 'How the case comes to stand';
export const ways = {
  upright: 'comes in upright',
  lying: 'is stood up there from its back',
} as const;

type FreeBlanks = Readonly<Record<'left' | 'right' | 'gap' | 'how', Blank>>;

export const freeLine = ({ left, right, gap, how }: FreeBlanks) => (
  <>
    {left} at the left, {right} at the right, {gap} under the ceiling. The case {how}.
  </>
);

// A corner.

export const corner = { left: 'Left corner', right: 'Right corner' } as const;
export const cornerTitles = {
  back: (side: 'left' | 'right') => `${corner[side]}: mark along the back wall`,
  side: (side: 'left' | 'right') => `${corner[side]}: mark along the side wall`,
  across: (side: 'left' | 'right') => `${corner[side]}: across from mark to mark`,
} as const;

type CornerBlanks = Readonly<Record<'back' | 'side' | 'across', Blank>>;

export const cornerLine = ({ back: along, side, across }: CornerBlanks) => (
  <>
    {along} along the back wall, {side} along the side wall, {across} across. It is square where they are as
    4, 3 and 5, as 40, 30 and 50 are.
  </>
);

/** As a hand reads it off the tape: its nearest mark, and strong or scant where it is not on it. @example '1/8 strong' */
export function onTape(x: Length): string {
  const tape = tapeInHand.value;
  const mark = markAt(absolute(x), tape);
  if (isZero(mark.value)) return isZero(mark.rest) ? w(mark.value) : `less than ${w(grainOf(tape))}`;
  const beside = isZero(mark.rest) ? '' : isNegative(mark.rest) ? ' scant' : ' strong';
  return `${w(mark.value)}${beside}`;
}

export const cornerTold = (inAt: Length, side: Length): string => {
  if (isZero(inAt)) return 'The corner is square.';
  return isNegative(inAt)
    ? `The corner opens: over ${w(side)} the side wall goes away by ${onTape(inAt)}.`
    : `The corner closes: over ${w(side)} the side wall comes in by ${onTape(inAt)}.`;
};
export const overDepth = (over: Length, depth: Length, name: string): string =>
  `Over the ${w(depth)} of ${name} that is ${onTape(over)}.`;
export const misread = (grain: Length, by: Length): string =>
  `${w(grain)} misread across moves it by ${onTape(by)}.`;

// The cases of the job, and where it goes on.

export const aCase = 'Case';
export const toLevel = 'Level and feet';
export const toScribe = 'Scribe';
export const drawn = 'The room from the front, to scale; how far its walls are out of plumb is drawn tenfold';
export const drawnTenfold = 'From the front: how far the walls are out of plumb is drawn tenfold.';
export const drawnAbove =
  'The room from above, the case, its strips and the doors to scale; how far a corner is out of square is drawn tenfold';
export const planTold = (corner: boolean): string =>
  `From above, the back wall at the top${corner ? ': how far a corner is out of square is drawn tenfold' : ''}.`;
