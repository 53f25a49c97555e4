import type { Length } from '../../length/length';
import type { Learned } from '../../plan/look-back';
import { exactly as w } from '../shared/exact-words';

export const title = 'Look back';
export const toJob = 'Job';
export const nextTime = 'Next time';
export const nothing =
  'What would you do otherwise? It stands here, and on the page of the next job when that begins.';
export const add = 'A note for next time';
export const ask = (no: number): string => `Note ${no} for next time`;
export const remove = 'Take it out';
export const removed = 'Note taken out';
export const shopFigures = 'Shop figures this job knows otherwise';
export const noneLearned = 'Shop figures say what this job worked with.';
export const keep = 'Keep in Shop figures';

const fields: Readonly<Record<Learned['field'], string>> = {
  slideLength: 'Slides are',
  slideHeight: 'Slides are',
  slideThickness: 'Slides need',
};
const ends: Readonly<Record<Learned['field'], string>> = {
  slideLength: 'long',
  slideHeight: 'high',
  slideThickness: 'at each side',
};

const shopSays = (now: Length | undefined): string =>
  now ? `Shop figures say ${w(now)}` : 'Shop figures say nothing';

/** @example learned({ field: 'slideLength', learned: inches(16n), now: undefined, from: 'Drawers' }) */
export const learned = ({ field, now, learned: own, from }: Learned): string =>
  `${fields[field]} ${w(own)} ${ends[field]} in ${from || 'Drawers'}. ${shopSays(now)}.`;
