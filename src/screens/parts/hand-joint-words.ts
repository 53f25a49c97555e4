import type { Length } from '../../length/length';
import { assertNever } from '../../length/result';
import type { Face } from '../../trade/grooves/layout';
import type { HandJoint, HandJointFault } from '../../trade/joints/by-hand';
import type { EdgeName } from '../../trade/joints/edges';
import { exactly as w } from '../shared/exact-words';

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
    '{kind} {width} wide and {depth} deep, {off} from the front edge: {count} of them, the first {near} from the {end}, {pitch} apart.',
  lap: '{kind}, its near shoulder {near} from the {end}, {width} long and {depth} deep, for {takes}.',
};

/** In a partition, which has two faces. */
export const inPartition: Readonly<Partial<Record<HandJoint['kind'], string>>> = {
  dado: '{kind} in {face}, its near wall {near} from the {end}, {width} wide and {depth} deep, for {takes}.',
  holes:
    '{kind} in {face}, {width} wide and {depth} deep, {off} from the front edge: {count} of them, the first {near} from the {end}, {pitch} apart.',
};

export const endWords = (end: string): string => `${end} end`;
export const edges = { back: 'back edge', front: 'front edge' } as const;

const titles = {
  kind: 'What is cut',
  at: 'Along which edge or end',
  takes: 'What lies in it',
  width: 'How wide',
  depth: 'How deep',
  near: 'How far from there',
  face: 'In which face',
  off: 'How far from the front edge',
  pitch: 'How far apart',
  count: 'How many',
} as const;

export type Blank = keyof typeof titles;

/** Several joints of a part ask alike: each blank says which it is of. */
export const ask = (blank: Blank, no: number): string => `Joint ${no}: ${titles[blank].toLowerCase()}`;

export const nothing = 'anything';

const offAt = {
  first: 'the first hole',
  last: 'the last hole',
  front: 'the row',
  back: 'the row',
} as const;

/** Why it is not cut, and what would fit. */
export function fault(found: HandJointFault): string {
  switch (found.code) {
    case 'nothing':
      return `It is not cut: ${found.field === 'width' ? 'a width' : 'a depth'} over 0 is wanted.`;
    case 'through':
      return `It is not cut: it comes out at the other side${found.by.n === 0n ? '' : `, by ${w(found.by)}`}. Less than ${w(found.thickness)} deep fits.`;
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
      return `It is not bored: ${offAt[found.over]} runs ${w(found.by)} off the part. Moved in by that much it fits.`;
    case 'hole-in-cut':
      return `It is not bored: hole ${found.no} runs into a groove or a hole that is there already. Moved off it by ${w(found.by)} or more it fits.`;
    default:
      return assertNever(found);
  }
}
