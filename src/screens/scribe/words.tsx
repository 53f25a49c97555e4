import type { ComponentChildren as Blank } from 'preact';
import { absolute, type Length, less, subtract } from '../../length/length';
import { assertNever } from '../../length/result';
import type { ScribeSide } from '../../plan/scribe-plan';
import type { ScribeError } from '../../trade/room/scribe';
import { capital } from '../shared/capital';
import { exactly as w } from '../shared/exact-words';

export const title = 'Scribe';
export const back = 'Back';
export const aCase = 'Case';
export const noCase = 'This case is not in the job.';
export const when =
  'Case plumb, level and where it stays, its edge before the wall. Measure the gap down the edge: at the floor, at the top, and wherever the wall goes in or out.';

type Side = ScribeSide['side'];
export const sides: Record<Side, string> = { left: 'Left edge', right: 'Right edge' };
export const addGap = 'A gap';
export const gapAdded = (side: Side): string => `A gap at the ${side} edge`;
export const takeAway = 'Take it away';
export const takenAway = (side: Side): string => `A gap at the ${side} edge taken away`;
export const gapAt = (side: Side, no: number): string => `${sides[side]} ${no}: how high over the floor`;
export const gapWide = (side: Side, no: number): string => `${sides[side]} ${no}: from edge to wall`;
export const gapLine = (b: Readonly<Record<'at' | 'gap', Blank>>) => (
  <>
    {b.at} over the floor: {b.gap} from edge to wall
  </>
);
export const hang = (side: Side): string => `How far the ${side} edge hangs over`;
export const hangLine = (over: Blank) => <>The edge hangs over by {over}: so much may come off.</>;
export const asFrame = 'as drawn';

export const compass = 'Set the compass to';
export const offHere = (at: Length, off: Length): string =>
  off.n === 0n
    ? `At ${w(at)} over the floor nothing comes off: here the pencil just touches.`
    : `At ${w(at)} over the floor ${w(off)} comes off.`;
export const needs = (need: Length): string => `It takes ${w(need)} of overhang.`;
export const short = (need: Length, by: Length): string =>
  `It takes ${w(need)} of overhang, ${w(by)} more than there is: the line would run into the case. A filler strip, or a wider stile.`;
export const how =
  'Run the compass down the wall, its point on the wall and level, the pencil on the edge. Cut to the line a little under square, so that the front edge closes first.';
export const read = 'Read at least two gaps: the compass is set to the widest.';

export function errorText(error: ScribeError): string {
  switch (error.code) {
    case 'no-readings':
      return read;
    case 'negative-gap':
      return `At ${w(error.spot.at)} the gap is ${w(error.by)} under 0: nothing stands inside the wall. Read it again.`;
    case 'negative-overhang':
      return `What hangs over is ${w(error.by)} under 0: 0 or more fits.`;
    case 'overhang':
      return short(error.need, error.by);
    default:
      return assertNever(error);
  }
}

// Filler strips to the readings of the room.

export const fillers = 'Filler strips';
/** @param free what is left free at the left by what was said of the room */
export const fillersTold = (free: Length): string =>
  `Scribe the edge or fit a strip, not both at one side. By the plumb lines of the room, the case ${w(free)} from the left wall at its nearest; where an edge is scribed, as near as that brings it. Then read the gaps at the other edge before its strip is scribed.`;
export const byEdge = (side: Side): string =>
  `${capital(side)}: its edge is scribed, so no strip goes there.`;
export const differsText = (at: Length, read: Length, byLines: Length): string =>
  `At ${w(at)} over the floor ${w(read)} was read; by the plumb lines of the room it should be ${w(byLines)}, ${w(absolute(subtract(read, byLines)))} ${less(read, byLines) ? 'more' : 'less'}. The case is not plumb, or one of them is misread.`;
export const stripsOf = 'What the filler strips are of';
export const ofLine = (of: Blank) => <>Strips of {of}</>;
const likeWords = { frame: 'the same as the face frame', sides: 'the same as the sides' };
export const asThat = (isFrame: boolean, named: string | undefined): string =>
  `${isFrame ? likeWords.frame : likeWords.sides}${named ? `: ${named}` : ''}`;
export const aSheet = 'Sheet';
export const measureStick = 'Measure a stick';
export const measureIt = 'Measure it';
export const noThickness = (named: string): string =>
  `${named || 'What they are of'} has no thickness yet. Measure it, and the strips are cut with the other parts; until then they stand in the buying list by themselves.`;
export const toPart = (side: Side): string => `${capital(side)} filler strip`;
export const strip = (side: Side, wide: Length): string =>
  `${side === 'left' ? 'Left' : 'Right'}: rip a strip of ${w(wide)}.`;
export const ripped = (side: Side, was: Length): string =>
  `${side === 'left' ? 'Left' : 'Right'}: the strip is ripped to ${w(was)}.`;
export const tooNarrow = (wanted: Length, by: Length, covers: boolean): string =>
  `${w(wanted)} is wanted now: the strip is ${w(by)} too narrow. ${covers ? 'It still covers the gap; less is left to scribe off.' : 'It does not cover the gap: say that it is spoiled, and rip another.'}`;
export const stripOff = (at: Length, off: Length): string =>
  `At ${w(at)} over the floor ${off.n === 0n ? 'nothing' : w(off)} comes off.`;
export const noLines = 'Hang two plumb lines in the room: then each strip has its line here.';
export const drawn = (side: Side): string =>
  `The ${side} edge with its line: what comes off is drawn larger than to scale`;
export const drawnLarger = 'Heights to scale; what comes off is drawn larger.';

// One figure at a time.

export const heading = (name: string): string => `Scribing ${name}`;
export const compassOf = (side: Side): string => `${sides[side]}: compass`;
export const offOf = (side: Side, at: Length): string => `${sides[side]}, ${w(at)} up: off`;
export const offSays = (off: Length): string =>
  off.n === 0n ? 'Here the pencil just touches.' : 'From the edge to the line. Try it against the compass.';
export const does = 'It is so';
