import { absolute, isNegative, type Length } from '../../length/length';
import type { CaseInRoom } from '../../plan/case-in-room';
import { mustTilt, type Standing, type Unread, type Verdict } from '../../plan/room-verdict';
import type { FillerWarning } from '../../trade/room/fillers';
import type { TiltError, TiltUp } from '../../trade/room/tilt';
import { doorText } from './door-words';
import { exactly as w } from './exact-words';
import { wayName, wayText } from './way-words';

export const room = 'Room';
export const toRoom = 'To the room';
export const inRoom = 'In the room';
export const notMeasured = 'Nothing is read yet that says whether it goes in.';

/** Whether it goes in and can stand there; that rests on less than all where something was not read. */
export function goesIn({
  goesIn: yes,
  inDoor,
  unread,
}: Omit<Verdict, 'goesIn'> & { goesIn: boolean }): string {
  if (!yes) return 'It does not go in.';
  if (inDoor) return 'It cannot stand there: a door is in its way.';
  return unread.length > 0 ? 'So far as read it goes in.' : 'It goes in.';
}

const notRead = (unread: Unread): string => {
  if (typeof unread === 'object') return wayName(unread.way);
  return unread === 'way' ? 'the way in' : `the ${unread} of the room`;
};

/** What the verdict cannot rest on. */
export const unreadText = (unread: readonly Unread[]): string | undefined =>
  unread.length > 0 ? `Not read, or it does not work out: ${unread.map(notRead).join(', ')}.` : undefined;

const spare = (by: Length, more: string, less: string): string =>
  isNegative(by) ? `${w(absolute(by))} ${less}` : `${w(by)} ${more}`;

export const spareWide = (by: Length): string =>
  `Across: ${spare(by, 'to spare beside the scribe', 'too wide')}.`;
export const spareHigh = (by: Length): string => `Up: ${spare(by, 'to spare under the gap', 'too high')}.`;

/** Whether it can be stood up from its back in the room. */
function tiltText(tilt: TiltUp): string {
  const { passes, diagonal, spare: by, close } = tilt;
  if (!passes) return `Stood up from its back it asks ${w(diagonal)} of height: ${w(absolute(by))} too much.`;
  const near = close ? `, ${w(close.by)} less than the ${w(close.want)} that is wanted` : '';
  return `Stood up from its back it asks ${w(diagonal)} of height: ${w(by)} to spare${near}.`;
}

const tiltErrorText = (error: TiltError): string =>
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

export const edgeText = (side: 'left' | 'right'): string => `At the ${side} the edge is scribed.`;
export const stripText = (side: 'left' | 'right', strip: Length): string =>
  `Filler at the ${side}: rip a strip of ${w(strip)} and scribe it.`;

type Tilted = Pick<CaseInRoom, 'tilt' | 'tiltsAt' | 'standing'>;

/** How it comes to stand, as far as it says whether it must be stood up there. */
function standingText(standing: Standing, stands: boolean): string {
  switch (standing.how) {
    case 'only-lying':
      return `${wayName(standing.way)}: it comes through only lying, and is stood up in the room.`;
    case 'not-said':
      return stands ? '' : 'Say how it comes to stand: if lying, it does not go up.';
    case 'upright':
      return stands ? '' : 'It comes in upright: keep it on its feet.';
    case 'lying':
      return '';
  }
}

/** Whether it can be stood up where it is to be, whether it must, and how high one that can may be. */
export function standUpText({ tilt, tiltsAt, standing }: Tilted): string | undefined {
  const stands = tilt?.ok === true && tilt.value.passes;
  const how = standing.how === 'only-lying' || tilt ? standingText(standing, stands) : '';
  if (!tilt) return how && `${how} Measure the height of the room for that.`;
  const most = tiltsAt ? `So deep, one of ${w(tiltsAt)} goes up.` : '';
  const found = tilt.ok ? tiltText(tilt.value) : tiltErrorText(tilt.error);
  return [how, found, most].filter(Boolean).join(' ');
}

/** All that stops a case, each by how much; none where nothing does. */
function stopped(found: CaseInRoom): readonly string[] {
  const { spareWide: wide, spareHigh: high, tilt, standing, ways, doors } = found;
  const up = tilt && mustTilt(standing) && !(tilt.ok && tilt.value.passes) ? standUpText(found) : undefined;
  return [
    ...(wide && isNegative(wide) ? [spareWide(wide)] : []),
    ...(high && isNegative(high) ? [spareHigh(high)] : []),
    ...(up ? [up] : []),
    ...ways.flatMap((way) => (way.found?.ok && !way.found.value.passes ? [wayText(way).says] : [])),
    ...doors.flatMap((door) => {
      const told = doorText(door);
      return told?.wrong ? [told.says] : [];
    }),
  ];
}

/** In one line, for the page of the job: what stops it, or what is to spare and what was not read. */
export function briefly(found: CaseInRoom): string {
  const { goesIn: goes, inDoor, spareWide: wide, spareHigh: high, unread, standing, tilt } = found;
  if (goes === undefined) return notMeasured;
  const verdict = goesIn({ goesIn: goes, inDoor, unread });
  if (!goes || inDoor) return [verdict, ...stopped(found)].join(' ');
  const by = [
    ...(wide ? [spare(wide, 'to spare across', 'too wide')] : []),
    ...(high ? [spare(high, 'to spare in height', 'too high')] : []),
  ];
  const asks = standing.how === 'not-said' && tilt && !(tilt.ok && tilt.value.passes);
  return [
    `${[verdict.slice(0, -1), ...by].join(', ')}.`,
    ...(asks ? [standUpText(found)] : []),
    ...(unread.length > 0 ? [unreadText(unread)] : []),
  ].join(' ');
}
