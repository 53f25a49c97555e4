import type { ComponentChildren as Blank } from 'preact';
import type { Length } from '../../length/length';
import { assertNever } from '../../length/result';
import { markAt, type Tape } from '../../length/tape';
import type { FootAsk } from '../../plan/level-plan';
import type { FeetError, FootPlace } from '../../trade/room/feet';
import type { TravelError } from '../../trade/room/travel';
import type { WedgeError } from '../../trade/room/wedge';
import { counted } from '../shared/counted';
import { exactly as w } from '../shared/exact-words';

export const title = 'Level and feet';
export const back = 'Back';
export const aCase = 'Case';
export const noCase = 'This case is not in the job.';
export const when =
  'Strike one level line round the case, by laser or water. From it measure down to the floor under every foot, front to back and side to side from the same line.';

const rows = { front: 'Front', middle: 'Middle', back: 'Back' } as const;

/** @example footName({ row: 'front', number: 1 }, 2) // 'Front left' */
export function footName({ row, number }: FootPlace, across: number): string {
  if (across === 2) return `${rows[row]} ${number === 1 ? 'left' : 'right'}`;
  return `${rows[row]} ${number} from the left`;
}
const lower = (text: string): string => text.charAt(0).toLowerCase() + text.slice(1);

export const dropAsk = (name: string): string => `Down to the floor: ${lower(name)} foot`;
export const dropRead = (name: string): string => `Measured: ${lower(name)} foot`;

// How it stands.

export const acrossTitle = 'Feet in a row';
export const inRow = 'feet in a row';
export const middleTitle = 'A row between front and back';
export const howTitle = 'What is under the feet';
export const hows = { shims: 'shims', screw: 'feet that screw' } as const;
export const yesNo = { yes: 'and a row between', no: 'and no row between' } as const;
export const footTitles = {
  footShort: 'A foot at its shortest',
  footLong: 'A foot at its longest',
  footHigh: 'How long the foot on the high point stands',
  wedgeThin: 'A wedge, at its thin end',
  wedgeThick: 'A wedge, at its thick end',
  wedgeLong: 'How long a wedge is',
} as const;

export const standLine = (b: Readonly<Record<'across' | 'middle' | 'how', Blank>>) => (
  <>
    {b.across} feet in a row, {b.middle}. Under them: {b.how}.
  </>
);
export const plinthStandLine = (b: Readonly<Record<'across' | 'middle', Blank>>) => (
  <>
    {b.across} corners read in a row, {b.middle}.
  </>
);
export const screwLine = (b: Readonly<Record<'footShort' | 'footLong' | 'footHigh', Blank>>) => (
  <>
    A foot goes from {b.footShort} to {b.footLong}; the one on the high point stands at {b.footHigh}.
  </>
);
export const wedgeLine = (b: Readonly<Record<'wedgeThin' | 'wedgeThick' | 'wedgeLong', Blank>>) => (
  <>
    Wedges {b.wedgeThin} at the thin end, {b.wedgeThick} at the thick end, {b.wedgeLong} long. Drive them in
    pairs, one from either side, where the seat must stay flat.
  </>
);

// What follows.

export const missing = (n: number): string => `${counted(n, 'foot', 'feet')} still to be read.`;
const asks: Record<FootAsk, string> = {
  footShort: 'how long a foot is at its shortest',
  footLong: 'how long at its longest',
  footHigh: 'how long the one on the high point stands',
};
export const askText = (list: readonly FootAsk[]): string =>
  `Say ${list.map((ask) => asks[ask]).join(', ')}.`;
export const highPoint = 'high point: nothing under it';
export const shimOf = (name: string): string => `Shim: ${lower(name)} foot`;
export const plinthAt = (name: string): string => `Plinth so high: ${lower(name)} corner`;
export const plinthLine =
  'The plinth is scribed to the floor: at each corner it stands so high. Mark that from its upper edge, join the marks along the floor and cut to the line.';
export const setOf = (name: string): string => `Foot stands at: ${lower(name)}`;
/** How far a wedge goes in, to the mark of the tape. */
export const wedgeIn = (by: Length, tape: Tape): string => `wedge in about ${w(markAt(by, tape).value)}`;
export const over = (name: string, limit: Length, by: Length): string =>
  `${name}: ${w(by)} over the ${w(limit)} that shims are sound for. Scribe a base to the floor instead.`;
export const oneRow = 'All feet are in one row: a case shimmed so twists. Read front and back.';

export function feetErrorText(error: FeetError, across: number): string {
  switch (error.code) {
    case 'no-feet':
      return 'No foot is read yet.';
    case 'twice':
      return `${footName(error.foot, across)} is read twice.`;
    case 'not-positive':
      return `${footName(error.foot, across)}: down to the floor must be more than 0.`;
    case 'misread':
      return `${footName(error.greatest, across)} and ${lower(footName(error.least, across))} differ by ${w(error.by)} more than the ${w(error.most)} a floor may fall: one of them is misread.`;
    default:
      return assertNever(error);
  }
}

export function travelErrorText(error: TravelError): string {
  switch (error.code) {
    case 'negative':
      return `A foot at its shortest is ${w(error.by)} under 0: 0 or more fits.`;
    case 'turned-round':
      return `A foot at its shortest is ${w(error.by)} longer than at its longest: turn the two round.`;
    default:
      return assertNever(error);
  }
}

export const past = (name: string, by: Length): string =>
  by.s > 0n ? `${name}: ${w(by)} past its longest.` : `${name}: ${w(by.neg() as Length)} under its shortest.`;
export const between = (least: Length, most: Length): string =>
  least.equals(most)
    ? `With the one on the high point at ${w(least)} every foot is within its travel.`
    : `With the one on the high point from ${w(least)} to ${w(most)} every foot is within its travel.`;
export const fallsMore = (by: Length): string =>
  `The floor falls ${w(by)} more than the feet travel: shim the low ones as well, or scribe a base.`;

export function wedgeErrorText(error: WedgeError): string {
  switch (error.code) {
    case 'not-positive':
      return 'a wedge must be longer than 0';
    case 'negative-thin':
      return `its thin end is ${w(error.by)} under 0`;
    case 'no-taper':
      return error.by.n === 0n
        ? 'the wedge does not taper'
        : `its thin end is ${w(error.by)} thicker than the thick end`;
    case 'too-thin':
      return `the wedge is ${w(error.by)} too thin`;
    case 'too-thick':
      return `its thin end is ${w(error.by)} too thick`;
    default:
      return assertNever(error);
  }
}

// Foot by foot.

export const footByFoot = 'Foot by foot';
export const leave = 'Leave';
export const heading = (name: string): string => `Levelling ${name}`;
export const progress = (done: number, of: number): string => `${done} of ${of} done`;
export const sameLine = 'The next figure is from the same line.';
export const itStands = 'It stands';
export const whole = 'The case as a whole';
export const wholeSays =
  'Lay the level on front to back, side to side, and up both sides. Anchor it next, and look again once all is tight: tightening pulls a case out of level. Both stand in the cuts.';
export const level = 'It stands level';
export const seeFirst = 'See what comes first';
export const next = 'Next';
export const allDone = 'All done';
/** What undo names: a foot that was set, or the case that stands level. */
export const footAct = (foot: string): string => `Done: ${foot}`;
export const levelAct = (name: string): string => `Levelled: ${name}`;
export const nothing = 'Read every foot first, and say what is under it: then each has its figure here.';
export const seeFeet = 'To the feet';
export const front = 'front';
export const drawn = (n: number): string =>
  `The ${counted(n, 'foot', 'feet')} seen from above, the front below`;
