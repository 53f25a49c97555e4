import type { Length } from '../../length/length';
import type { BitFound, Lacked, Learned } from '../../plan/look-back';
import type { Operation } from '../../trade/setups/operation';
import { exactly as w } from '../shared/exact-words';
import { machineName } from '../shared/machines/machine-names';
import { partWord } from '../shared/part-words';
import { setupTitle } from '../shared/setup-title';
import { pieceWords } from '../shared/stack-words';

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

export const shopSays = (now: Length | undefined): string =>
  now ? `Shop figures say ${w(now)}` : 'Shop figures say nothing';

/** @example learned({ field: 'slideLength', learned: inches(16n), now: undefined, from: 'Drawers' }) */
export const learned = ({ field, now, learned: own, from }: Learned): string =>
  `${fields[field]} ${w(own)} ${ends[field]} in ${from || 'Drawers'}. ${shopSays(now)}.`;

/** The part a cut is in, and what is set for it: `Left side, Guide edge at 13 1/4`. */
const where = (op: Operation): string => {
  const { figure } = op.setup;
  return `${partWord(op.name.of)}, ${setupTitle(op)}${figure ? ` ${w(figure.value)}` : ''}`;
};

/** @example bit({ now: inches(1n, 2n), learned: inches(494n, 1000n), at: groove }) */
export const bit = ({ now, learned: own, at }: BitFound): string =>
  `The bit cuts ${w(own)} wide by a test cut in one pass (${where(at)}). ${shopSays(now)}.`;

/** Where a stack stood: the machine, and how wide it cut. */
const stackAt = ({ setup }: Operation): string =>
  `${machineName(setup)}${setup.cutter ? `, ${w(setup.cutter)} wide` : ''}`;

/** @example lacked({ piece: { size: inches(1n, 8n), count: 2, kind: 'chipper' }, has: 1, at: groove }) */
export const lacked = ({ piece, has, at }: Lacked): string =>
  `A stack was made with ${pieceWords(piece)} (${stackAt(at)}). The box in Shop figures has ${has === 0 ? 'none' : has}.`;
