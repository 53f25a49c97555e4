import { absolute, isNegative, type Length, subtract } from '../../length/length';
import type { Tape } from '../../length/tape';
import { writeLength } from '../../length/write';
import type { CameOut, NoMatch } from '../../plan/match';
import type { Change } from '../../trade/setups/changes';
import { whatWords } from './cut-words';
import { exactly as w } from './exact-words';
import { workWord } from './part-words';

/** The two sizes of a piece as it was cut: as the chip has them, as a reader hears them, as the keys ask. */
export const trueSize = {
  length: { chip: 'long', says: 'true length', asks: 'True length' },
  width: { chip: 'wide', says: 'true width', asks: 'True width' },
} as const;

/** A true size that was given or taken away, as undo names it. */
export const measured = (piece: string, figure: string): string => `As cut: ${piece} ${figure}`.trim();

const wrong = {
  length: ['long', 'short'],
  width: ['wide', 'narrow'],
} as const;

/** @param by more than it was to be, inches, any sign but none. @example '1/32 short' */
export function offWords(way: CameOut['way'], by: Length): string {
  const [more, less] = wrong[way];
  return `${w(absolute(by))} ${isNegative(by) ? less : more}`;
}

export const cameOut = (piece: string, way: CameOut['way'], by: Length): string =>
  `${piece} came out ${offWords(way, by)}`;
export const matchOrRecut = 'Match its mates, or recut it';

export const ask = 'What is not cut yet can be made to match it. Or recut it to the mark.';
export const match = 'Make its mates match';
export const recut = 'Recut it';
export const changes = 'What matching changes';
export const matchAct = (piece: string): string => `Mates to match ${piece}`;

/** Why nothing can be made to match, and what can be done instead. */
export function noMatch(problem: NoMatch): string {
  if (problem.code === 'alone')
    return 'No other part is cut by this size. Recut it; if it still goes in, it can stay as it is.';
  return `That is ${w(problem.by)} off, and mates follow by at most ${w(problem.most)}. Recut it, or change the drawing.`;
}

/** What becomes of the outside. */
export const comesTo = { across: 'wide', up: 'high', deep: 'deep' } as const;
export const outside = (name: string, was: string, now: string, way: keyof typeof comesTo): string =>
  `${name || 'The case'} comes out ${now} ${comesTo[way]} instead of ${was}.`;

export const cutAlready = 'Cut already, and off by';

/** A piece cut already that would no longer be right. @example 'Top: 1/32 long' */
export function offBy({ op, was, now }: Change, tape: Tape): string {
  const by = subtract(was, now);
  if (op.what === 'length') return `${workWord(op.name)}: ${offWords('length', by)}`;
  if (op.what === 'rip') return `${workWord(op.name)}: ${offWords('width', by)}`;
  return `${workWord(op.name)}, ${whatWords(op, tape)}: ${writeLength(absolute(by), tape)}`;
}

export const moreOff = (n: number): string => (n === 1 ? 'and one more' : `and ${n} more`);
export const whichCameOut = 'Which one came out otherwise?';
export const otherSize = 'Came out another size';
