import type { Length } from '../../length/length';
import { assertNever } from '../../length/result';
import { markAt } from '../../length/tape';
import type { Face } from '../../trade/grooves/layout';
import type { HandJoint, HandJointFault } from '../../trade/joints/by-hand';
import type { Crossing } from '../../trade/joints/crosses';
import type { EdgeName } from '../../trade/joints/edges';
import type { HoleMeets, InCut } from '../../trade/joints/holes-clear';
import { shownOn } from '../../ui/unit-in-hand';
import { counted, wordFor } from '../shared/counted';
import { exactly as w } from '../shared/exact-words';
import { sideWords } from '../shared/placing-words';
import { numbersOf, rowName } from '../shared/row-words';

export const another = 'A joint or a row of holes';
export const added = 'A joint added by hand';
export const remove = 'Take it out';
export const holes = 'holes';

type Dado = { readonly near: Length; readonly width: Length; readonly depth: Length };

/** What is cut; a notch in which edge of its part. */
export const kinds = (edge: EdgeName): Readonly<Record<HandJoint['kind'], string>> => ({
  rabbet: 'A rabbet',
  groove: 'A groove',
  dado: 'A dado across it',
  notch: `A notch in the ${edge} edge`,
  lap: 'A lap across the face',
  mitre: 'A mitre',
  holes: 'A row of holes',
});

export const removed = (kind: string): string => `${kind} taken out`;

/** A dado that another is set like. */
export const like = 'Set like another dado';
export const likeOne = (name: string, end: string, { near, width, depth }: Dado): string =>
  `${name}: ${w(near)} from the ${end} end, ${w(width)} wide, ${w(depth)} deep`;

export const faces: Readonly<Record<Face, string>> = { A: 'face A (left)', B: 'face B (right)' };

/** Each name in braces a blank. */
export const slips: Readonly<Record<HandJoint['kind'], string>> = {
  rabbet: '{kind} along the {at}, {width} wide and {depth} deep, for {takes}.',
  groove: '{kind} along the {at}, its near wall {near} from it, {width} wide and {depth} deep, for {takes}.',
  dado: '{kind}, its near wall {near} from the {end}, {width} wide and {depth} deep, for {takes}.',
  notch: '{kind}, its near shoulder {near} from the {end}, {width} long and {depth} deep, for {takes}.',
  mitre: '{kind} at the {at}, 45°, the long point outside.',
  holes:
    '{kind} in {bored}, {width} wide and {depth} deep, {off} from the {edge}: {count} of them, the first {near} from the {end}, {pitch} apart.',
  lap: '{kind}, its near shoulder {near} from the {end}, {width} long and {depth} deep, for {takes}.',
};

/** In a partition, which has two faces. */
export const inPartition: Readonly<Partial<Record<HandJoint['kind'], string>>> = {
  dado: '{kind} in {face}, its near wall {near} from the {end}, {width} wide and {depth} deep, for {takes}.',
  holes:
    '{kind} in {face}, {width} wide and {depth} deep, {off} from the {edge}: {count} of them, the first {near} from the {end}, {pitch} apart.',
};

export const endWords = (end: string): string => `${end} end`;
export const edgeWords = (edge: string): string => `${edge} edge`;

const titles = {
  kind: 'What is cut',
  at: 'Along which edge or end',
  takes: 'What lies in it',
  width: 'How wide',
  depth: 'How deep',
  near: 'How far from the {side}',
  first: 'How far the first is from the {side}',
  face: 'In which face',
  off: 'How far from the {side}',
  pitch: 'How far apart',
  count: 'How many',
} as const;

export type Blank = Exclude<keyof typeof titles, 'first'>;

/** Several joints of a part ask alike: each blank says which it is of, and from which end or edge it is measured. */
export const ask = (blank: keyof typeof titles, no: number, side = ''): string =>
  `Joint ${no}: ${titles[blank].toLowerCase().replace('{side}', side)}`;

export const nothing = 'anything';

const offAt = {
  first: 'the first hole',
  last: 'the last hole',
  near: 'the row',
  far: 'the row',
} as const;

/** What a hole runs into. */
const meets: Readonly<Record<HoleMeets, string>> = {
  groove: 'a groove or a dado',
  rabbet: 'a rabbet',
  notch: 'a notch',
  lap: 'a lap',
  'pin-hole': 'a hole of another row',
  fastener: 'a hole for what holds a joint',
  'end-joint': 'the joint at the end',
  tongue: 'the tongue',
  mitre: 'the mitred end',
  corner: 'the notch for the toe board',
};

/** What of a row that runs off its part stays on it. */
function onPartWords({ fits }: Extract<HandJointFault, { readonly code: 'hole-off' }>): string {
  if (fits === 'moved') return 'Moved in by that much it fits.';
  if ('wide' in fits) return `A hole fits that is ${w(fits.wide)} wide at most.`;
  const first = fits.first === 'there' ? 'With the first there' : 'With the first moved in to the end';
  return `${first}, ${counted(fits.holes, 'hole stays', 'holes stay')} on it.`;
}

/** Where a row fits that runs into something. */
function fitsWords(fits: InCut['fits']): string {
  if (!fits) return 'No room is left for it beside that, moved either way: fewer holes may fit.';
  if ('lessThan' in fits) return `Less than ${w(fits.lessThan)} deep it fits.`;
  return `${moved(fits)} it fits.`;
}

/** So far that it is clear, on a mark: to be keyed as it is read. */
const moved = ({ by, toward }: NonNullable<Crossing['fits']>): string =>
  `Moved ${w(markAt(by, shownOn('1/64'), 'ceil').value)} toward the ${sideWords(toward)}`;

/** A cut that goes through holes of the case: it is cut. */
export function crosses(found: readonly Crossing[]): string {
  const rows = found.map(
    ({ bore, numbers }) =>
      `${wordFor(numbers.length, 'hole', 'holes')} ${numbersOf(numbers)} of the ${rowName(bore)}${found.some((other) => other.bore.face !== bore.face) ? `, face ${bore.face}` : ''}`,
  );
  const fits = found[0]?.fits;
  const clear = fits ? ` ${moved(fits)} it is clear of them.` : '';
  return `It cuts into ${rows.join(' and ')}: no pin holds there.${clear}`;
}

/** A cut that rows by hand run into, by their numbers: they are left out, also where one is bored already. */
export const keepsOff = (rows: readonly number[]): string =>
  `${rows.length === 1 ? 'The row of joint' : 'The rows of joints'} ${numbersOf(rows)} would run into it and ${rows.length === 1 ? 'is' : 'are'} no longer among the cuts.`;

/** Why it is not cut, and what would fit. */
export function fault(found: HandJointFault, done: 'cut' | 'bored' = 'cut'): string {
  switch (found.code) {
    case 'nothing':
      return `It is not ${done}: ${found.field === 'width' ? 'a width' : 'a depth'} over 0 is wanted.`;
    case 'through':
      return `It is not ${done}: it comes out at the other side${found.by.n === 0n ? '' : `, by ${w(found.by)}`}. Less than ${w(found.thickness)} deep fits.`;
    case 'off':
      return `It is not cut: it runs ${w(found.by)} off the part, which has ${w(found.has)} there.`;
    case 'taken':
      return `It is not cut: its ${found.end} end has a joint of its own. Its other end, or another part, takes a mitre.`;
    case 'in-marks':
      return 'It is not cut: the grooves of this board are laid out in Marks. Add it there.';
    case 'before':
      return `It is not cut: it begins ${w(found.by)} before the end. From 0 it fits.`;
    case 'meets':
      return `It is not cut: it runs ${w(found.by)} into a groove that is there already. Moved off it by that much or more, it fits.`;
    case 'land':
      return `It is not cut: ${w(found.land)} would stay between it and the next groove, which would break out. Move it farther off.`;
    case 'other-face':
      return `It is not cut: it comes out in a groove of the other face${found.by.n === 0n ? '' : `, by ${w(found.by)}`}. ${found.by.n === 0n ? 'Less deep' : 'Shallower by more than that'} it fits.`;
    case 'holes-meet':
      return `It is not bored: the holes run into each other. More than ${w(found.dia)} apart they do not.`;
    case 'hole-off':
      return `It is not bored: ${offAt[found.over]} runs ${w(found.by)} off the part. ${onPartWords(found)}`;
    case 'hole-in-cut':
      return `It is not bored: hole ${found.no} runs into ${meets[found.cut]} that is there already. ${fitsWords(found.fits)}`;
    default:
      return assertNever(found);
  }
}
