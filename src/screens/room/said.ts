import { absolute, isNegative, type Length } from '../../length/length';
import { assertNever } from '../../length/result';
import type { RoomAsk } from '../../plan/room-plan';
import type { CornerError } from '../../trade/room/corner';
import type { WidthError } from '../../trade/room/greatest-width';
import type { Level, LevelError } from '../../trade/room/level-line';
import type { Plumb, PlumbError } from '../../trade/room/plumb';
import type { Row, RowError } from '../../trade/room/row';
import type { AtSpot, Spot } from '../../trade/room/spot';
import type { HeightError } from '../../trade/room/tilt';
import { exactly as w } from '../shared/exact-words';
import { planes } from './words';

/** Where a width was read. */
export const spotAcross = ({ at, plane }: Spot): string => `${w(at)} over the floor ${planes[plane]}`;
/** Where a height was read. */
export const spotUpright = ({ at, plane }: Spot): string => `${w(at)} from the left wall ${planes[plane]}`;

export const askText: Record<RoomAsk, string> = {
  apart: 'Say how far apart the plumb lines hang: until then only the least width counts.',
  body: 'Say how long the body of the tape is: until then no width or height read straight across or up counts.',
  'at-across': 'A place without its height over the floor does not count yet.',
  'at-upright': 'A place without its distance from the left wall does not count yet.',
};

/** What is wrong with widths or heights read straight across. */
export function rowErrorText(error: RowError, said: (spot: Spot) => string): string {
  switch (error.code) {
    case 'no-readings':
      return 'Nothing is read yet.';
    case 'twice':
      return `${said(error.spot)} stands twice: change one of them, or take it away.`;
    case 'less-than-burned':
      return `${said(error.spot)} reads ${w(error.by)} less than the tape was started at: read it again, or the burned mark is not lit.`;
    case 'not-positive':
      return `${said(error.spot)} must be more than 0.`;
    default:
      return assertNever(error);
  }
}

/** Least, greatest and how far apart: what the row comes to with the tape's start and body taken into it. */
export const rowText = ({ least, spread }: Row, said: (spot: Spot) => string): string =>
  spread.n === 0n
    ? `Least ${w(least.value)}.`
    : `Least ${w(least.value)}, ${said(least)}; they differ by ${w(spread)}.`;

const walls = { left: 'left', right: 'right' } as const;

export function plumbErrorText(error: PlumbError): string {
  switch (error.code) {
    case 'no-readings':
      return 'Nothing is read from the lines yet.';
    case 'not-positive':
      return 'The plumb lines must hang more than 0 apart.';
    case 'twice':
      return `${spotAcross(error.spot)} stands twice at the ${walls[error.side]} line: change one of them, or take it away.`;
    case 'spots-differ':
      return `${spotAcross(error.spot)}: read the ${walls[error.missing]} line there too.`;
    case 'no-room':
      return `By these readings the walls meet: ${w(error.by)} too little. Read the lines again.`;
    default:
      return assertNever(error);
  }
}

/** What the lines show that widths hide. */
export function plumbText({ width, less, outLeft, outRight }: Plumb): string {
  const out = [
    ...(outLeft.n === 0n ? [] : [`left wall out by ${w(outLeft)}`]),
    ...(outRight.n === 0n ? [] : [`right wall out by ${w(outRight)}`]),
  ];
  const walls = out.length > 0 ? ` (${out.join(', ')})` : '';
  return less.n === 0n
    ? `A plumb case has ${w(width)}${walls}.`
    : `A plumb case has ${w(width)}, ${w(less)} less than the least width${walls}.`;
}

export const differsText = (differs: readonly AtSpot[]): string | undefined => {
  const [first] = differs;
  return (
    first &&
    `${spotAcross(first)} the tape reads ${w(absolute(first.value))} ${isNegative(first.value) ? 'less' : 'more'} than the lines add up to: read it again.`
  );
};

export const leastOnlyWide = 'The least width only: less by any lean of the walls. Hang two plumb lines.';
export const leastOnlyHigh = 'The least height only: less by any fall of the floor. Strike a level line.';

export function widthErrorText(error: WidthError): string {
  switch (error.code) {
    case 'negative-allowance':
      return `What is left free at the ${error.side} is ${w(error.by)} under 0: 0 or more fits.`;
    case 'no-room':
      return error.by.n === 0n
        ? 'What is left free for the scribe takes all there is.'
        : `What is left free for the scribe is ${w(error.by)} more than there is.`;
    default:
      return assertNever(error);
  }
}

const ways = { drop: 'down to the floor', rise: 'up to the ceiling' } as const;

export function levelErrorText(error: LevelError): string {
  switch (error.code) {
    case 'no-readings':
      return 'Nothing is read from the level line yet.';
    case 'not-positive':
      return `${spotUpright(error.spot)}, ${ways[error.side]}: must be more than 0.`;
    case 'twice':
      return `${spotUpright(error.spot)} stands twice: change one of them, or take it away.`;
    case 'spots-differ':
      return `${spotUpright(error.spot)}: read ${ways[error.missing]} there too.`;
    case 'misread':
      return `${w(error.least.value)} and ${w(error.greatest.value)} down to the floor differ by ${w(error.by)} more than the ${w(error.most)} a floor may fall: one of them is misread.`;
    default:
      return assertNever(error);
  }
}

export function levelText({ height, less, floorOut, ceilingOut }: Level): string {
  const falls = [
    ...(floorOut.n === 0n ? [] : [`floor out by ${w(floorOut)}`]),
    ...(ceilingOut.n === 0n ? [] : [`ceiling out by ${w(ceilingOut)}`]),
  ];
  const out = falls.length > 0 ? ` (${falls.join(', ')})` : '';
  return less.n === 0n
    ? `A level case has ${w(height)}${out}.`
    : `A level case has ${w(height)}, ${w(less)} less than the least height${out}.`;
}

export function heightErrorText(error: HeightError): string {
  switch (error.code) {
    case 'negative-gap':
      return `What is left free under the ceiling is ${w(error.by)} under 0: 0 or more fits.`;
    case 'not-positive':
      return 'There is no height to stand in.';
    case 'no-room':
      return error.limit === 'tilt'
        ? `It is ${w(error.by)} deeper than the room is high: it cannot be stood up there.`
        : `What is left free under the ceiling is ${w(error.by)} more than there is.`;
    default:
      return assertNever(error);
  }
}

const legs = { back: 'along the back wall', side: 'along the side wall', across: 'across' } as const;

export function cornerErrorText(error: CornerError): string {
  switch (error.code) {
    case 'not-positive':
      return `The reading ${legs[error.what]} must be more than 0.`;
    case 'cannot-be':
      return `These three make no corner: across must lie between ${w(error.least)} and ${w(error.most)}, and is ${beyond(error)}. Read them again.`;
    default:
      return assertNever(error);
  }
}

const beyond = ({ by }: { readonly by: Length }): string =>
  by.n === 0n ? 'just at the end of that' : `${w(by)} outside`;
