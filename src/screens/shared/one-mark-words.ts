import type { Shares } from '../../trade/carcass/part';

/** @param names of a question, no two alike. @example 'Back and Top' */
const listed = (names: readonly string[]): string =>
  names.length < 2 ? names.join('') : `${names.slice(0, -1).join(', ')} and ${names[names.length - 1]}`;

type Asks = {
  readonly names: readonly string[];
  readonly mates: readonly string[];
  readonly way: 'length' | 'width';
};

/** Equals of unlike stock or grain: do they share a mark? */
export const question = ({ names, mates, way }: Asks, shares: Shares | 'asked'): string => {
  const equal = `${listed(names)}: as ${way === 'length' ? 'long' : 'wide'} as ${listed(mates)}, but of other stock or grain.`;
  if (shares === 'asked') return `${equal} One mark for all, or each its own? Until you say, they share one.`;
  return `${equal} ${shares === 'together' ? 'They share one mark.' : 'Each has its own mark.'}`;
};

export const answers: Record<Shares, string> = { together: 'One mark for all', apart: 'Each its own' };
export const act = (names: readonly string[], shares: Shares): string =>
  `${answers[shares]}: ${listed(names)}`;
