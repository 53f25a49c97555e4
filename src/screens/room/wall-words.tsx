import type { ComponentChildren as Blank } from 'preact';
import type { Length } from '../../length/length';
import { assertNever } from '../../length/result';
import type { StudAsk } from '../../plan/stud-plan';
import type { Refused, StudError } from '../../trade/room/studs';
import { upFrom } from '../shared/cleat-words';
import { counted } from '../shared/counted';
import { exactly as w } from '../shared/exact-words';

export const theWall = 'Where it can be fastened';
export const start =
  'All along the wall from its left end. Find one edge of one stud; the others follow from the spacing, and each is a guess until a thin nail behind the cleat has met wood.';
export const promise =
  'This is no promise that the wall holds: what holds in it is for the local code and for licensed people.';

export const titles = {
  found: 'Where an edge of a stud was found',
  foundEdge: 'Which edge of the stud',
  stud: 'How thick a stud is',
  spacing: 'Studs, centre to centre',
  cleatFrom: 'Where the cleat begins',
  cleatTo: 'Where the cleat ends',
  cleatEnd: 'No screw nearer to an end of the cleat than',
  keep: 'No screw nearer to such a place than',
} as const;
export const edges = { left: 'left', right: 'right' } as const;

type Blanks = Readonly<Record<keyof typeof titles, Blank>>;

export const studLine = (b: Blanks) => (
  <>
    The {b.foundEdge} edge of a stud is at {b.found}; studs are {b.stud} thick, {b.spacing} centre to centre.
  </>
);
export const cleatLine = (b: Blanks) => (
  <>
    The cleat goes from {b.cleatFrom} to {b.cleatTo}; no screw nearer than {b.cleatEnd} to its ends, or than{' '}
    {b.keep} to a place below.
  </>
);

/** What the screws go through, as the anchor card has it. */
export function through(name: string, thick: Length | undefined, wide: Length | undefined): string {
  const cleat = name ? `The cleat of ${name}` : 'The cleat';
  if (!thick && !wide)
    return `How thick and how wide ${cleat.charAt(0).toLowerCase() + cleat.slice(1)} is stands with its screws.`;
  const size = [...(thick ? [`${w(thick)} thick`] : []), ...(wide ? [`${w(wide)} wide`] : [])];
  return `${cleat} is ${size.join(' and ')}.`;
}
export const stands = (at: Blank) => (
  <>
    {' '}
    Its lower edge stands {at} {upFrom}.
  </>
);

/** The cleat of one case of several, along the wall. */
export const goesFrom = (b: Readonly<Record<'from' | 'to', Blank>>) => (
  <>
    {' '}
    It goes from {b.from} to {b.to} along the wall.
  </>
);
export const toAnchors = 'Screws and anchors';

export const zones = 'Not to be fastened into';
export const addZone = 'A place';
export const zoneAdded = 'A place not to be fastened into';
export const zoneWhat = (no: number): string => `Not here ${no}: what is in the wall`;
export const zoneFrom = (no: number): string => `Not here ${no}: where it begins`;
export const zoneTo = (no: number): string => `Not here ${no}: where it ends`;
export const zoneLow = (no: number): string => `Not here ${no}: how high its lower end is`;
export const zoneHigh = (no: number): string => `Not here ${no}: how high its upper end is`;
export const something = 'Pipe or wire';
export const takeAway = 'Take it away';
export const takenAway = (name: string): string => `${name} taken away`;
export const zoneLine = (b: Readonly<Record<'what' | 'from' | 'to' | 'low' | 'high', Blank>>) => (
  <>
    {b.what}: from {b.from} to {b.to} along the wall, from {b.low} to {b.high} up.
  </>
);
export const zonesTold =
  'Up, down and level from every box, switch, socket and valve there may be wires and tubes: enter each as a place. Heights are from the floor at its high point; where one of them is not said, the place is kept off from floor to ceiling.';

const asks: Record<StudAsk, string> = {
  found: 'where an edge of a stud was found',
  spacing: 'how far apart studs stand',
  cleatFrom: 'where the cleat begins',
  cleatTo: 'where it ends',
};
export const askText = (missing: readonly StudAsk[]): string =>
  `Say ${missing.map((ask) => asks[ask]).join(', ')}.`;

export function studErrorText(error: StudError): string {
  switch (error.code) {
    case 'not-positive':
      return 'A stud must be more than 0 thick.';
    case 'negative':
      return `${error.what === 'end' ? titles.cleatEnd : titles.keep} is ${w(error.by)} under 0: 0 or more fits.`;
    case 'spacing':
      return `Studs would touch: the spacing is ${by(error.by)} more than one is thick.`;
    case 'cleat':
      return error.by.n === 0n
        ? 'The cleat has no length.'
        : `The cleat is ${w(error.by)} too short, or its ends are turned round.`;
    case 'zone':
      return `A place not to be fastened into ends ${w(error.by)} before it begins.`;
    default:
      return assertNever(error);
  }
}

const by = (x: Length): string => (x.n === 0n ? 'no' : `${w(x)} short of being`);

export const fixAt = (n: number): string => (n === 1 ? 'One place to fasten' : `${n} places to fasten`);
export const tooFew = (n: number): string =>
  `${counted(n, 'stud', 'studs')} behind the cleat can be used: hold it at another height, make it longer, or put solid backing into the wall.`;

/** Why a stud is left out, and by how much. */
export function refusedText(refused: Refused): string {
  const at = `At ${w(refused.at.value)} not`;
  switch (refused.why) {
    case 'in-zone':
      return `${at}: it is in the place from ${w(refused.zone.from)} to ${w(refused.zone.to)}.`;
    case 'near-zone':
      return `${at}: ${w(refused.by)} too near to the place from ${w(refused.zone.from)} to ${w(refused.zone.to)}.`;
    case 'near-end':
      return `${at}: ${w(refused.by)} too near to an end of the cleat.`;
    default:
      return assertNever(refused);
  }
}
export const drawn = 'The wall with its studs, the cleat and where nothing may be fastened, to scale';

// One mark at a time.

export const marking = 'Marking the wall';
export const markLine = (name: string): string => `${name ? `${name}: t` : 'T'}he cleat’s lower edge`;
/** @param from where it stands from the level line, where one was read */
export const lineSays = (from: string): string => `Level on the wall, ${upFrom}${from && `: ${from}`}.`;
export const of = (name: string, what: string): string =>
  name ? `${name}: ${what.charAt(0).toLowerCase()}${what.slice(1)}` : what;
export const markEnd = (which: 'begins' | 'ends'): string => `The cleat ${which}`;
export const markScrew = (no: number, of: number): string => `Screw ${no} of ${of}: middle of the stud`;
export const fromLeft = 'From the left end of the wall, along the level line. Every mark from that one end.';
export const marked = 'It is marked';
