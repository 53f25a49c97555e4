import { absolute, isNegative, type Length } from '../../length/length';
import type { CaseInRoom } from '../../plan/case-in-room';
import type { FillerWarning } from '../../trade/room/fillers';
import type { TiltError, TiltUp } from '../../trade/room/tilt';
import { exactly as w } from './exact-words';

export const room = 'Room';
export const toRoom = 'To the room';
export const inRoom = 'In the room';
export const notMeasured = 'The room is not measured yet.';

/** Whether it goes in by what was read so far. */
export const goesIn = (yes: boolean): string => (yes ? 'It goes in.' : 'It does not go in.');

const spare = (by: Length, more: string, less: string): string =>
  isNegative(by) ? `${w(absolute(by))} ${less}` : `${w(by)} ${more}`;

export const spareWide = (by: Length): string =>
  `Across: ${spare(by, 'to spare beside the scribe', 'too wide')}.`;
export const spareHigh = (by: Length): string => `Up: ${spare(by, 'to spare under the gap', 'too high')}.`;

/** Whether it can be stood up from its back in the room. */
export function tiltText(tilt: TiltUp): string {
  const { passes, diagonal, spare: by, close } = tilt;
  if (!passes) return `Stood up from its back it asks ${w(diagonal)} of height: ${w(absolute(by))} too much.`;
  const near = close ? `, ${w(close.by)} less than the ${w(close.want)} that is safe` : '';
  return `Stood up from its back it asks ${w(diagonal)} of height: ${w(by)} to spare${near}.`;
}

export const tiltErrorText = (error: TiltError): string =>
  error.code === 'ceiling-below'
    ? `The case is ${w(error.by)} higher than the room.`
    : `Its ${error.what === 'ceiling' ? 'room' : error.what} must be more than 0 to stand it up.`;

const planes = { front: 'in front', back: 'at the back' } as const;

/** What is wrong with the gap at one side of a case, and what would help. */
export function fillerWarning(side: 'left' | 'right', warning: FillerWarning): string {
  switch (warning.code) {
    case 'binds':
      return `At the ${side} it binds by ${w(warning.by)}, ${w(warning.spot.at)} over the floor ${planes[warning.spot.plane]}.`;
    case 'narrow':
      return `The filler at the ${side} comes down to ${w(warning.gap)}, ${w(warning.by)} under ${w(warning.least)}: it breaks off. Leave more free there.`;
    case 'wide':
      return `The filler at the ${side} comes to ${w(warning.gap)}, ${w(warning.by)} over ${w(warning.most)}: shift the case, or make a wider stile.`;
  }
}

export const stripText = (side: 'left' | 'right', strip: Length): string =>
  `Filler at the ${side}: rip a strip of ${w(strip)} and scribe it.`;

/** In one line, for the page of the case. */
export function briefly({ goesIn: goes, spareWide: wide, spareHigh: high }: CaseInRoom): string {
  if (goes === undefined) return notMeasured;
  const by = [
    ...(wide ? [spare(wide, 'to spare across', 'too wide')] : []),
    ...(high ? [spare(high, 'to spare in height', 'too high')] : []),
  ];
  return [goesIn(goes).slice(0, -1), ...by].join(', ').concat('.');
}
