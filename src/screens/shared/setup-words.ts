import { absolute, isNegative, type Length } from '../../length/length';
import type { SecondMark } from '../../trade/grooves/second-mark';
import { exactly } from './exact-words';

// What is said of a setup, at the machine and on paper.

export const forStocks = (stocks: readonly string[]): string => `For ${stocks.join(' and ')}`;
export const onArbor = (pieces: readonly string[]): string =>
  pieces.length === 0 ? 'The two outers alone.' : `Outer, ${pieces.join(' + ')}, outer; flange first.`;
export const testOn = (stocks: readonly string[]): string =>
  stocks.length > 0 ? `Test on scrap of ${stocks.join(' and ')}.` : 'Test on scrap of the same stuff.';

export const nearTeeth = 'near teeth';
export const farTeeth = 'far teeth';
export const otherEnd = 'from the other end';
/** How the second wall of a groove is set best, and what its mark alone would make of the groove. */
export const secondWall = ({ spacer, off }: SecondMark): string =>
  `Second wall: put ${exactly(spacer)} between. By the mark alone the groove is ${exactly(absolute(off))} too ${isNegative(off) ? 'narrow' : 'wide'}.`;
export const pressShort = (by: Length): string =>
  `The drill press is ${exactly(by)} short of this row: it is bored in a template.`;
export const stopBlock =
  'With a stop block on the fence, bottom end on it: each mark is how far the block stands from the middle of the bit.';

export const recipeFields = {
  scale: 'What the scale read',
  height: 'Height it was set to',
  got: 'What the test cut measured',
} as const;
export const stackBetween = 'Stack between the outers';
