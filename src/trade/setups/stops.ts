import { equals, type Length, zero } from '../../length/length';
import { toStored } from '../../length/stored';
import type { Operation } from './operation';
import type { Setup } from './setup';

/** What the mark of a setup leaves of the exact figure, inches. */
const restOf = ({ figure }: Pick<Setup, 'figure'>): Length => figure?.rest ?? zero;

/** Whether two setups are one stop: figures equal only after rounding are not equal. */
export const sameStop = (a: Pick<Setup, 'key' | 'figure'>, b: Pick<Setup, 'key' | 'figure'>): boolean =>
  a.key === b.key && equals(restOf(a), restOf(b));

/**
 * The stop each operation is cut at: the key of its setup, and where others under that key leave something else of
 * their mark, what it leaves itself.
 *
 * @returns one for each operation, in their order; those that come first under a key have the key alone
 * @example stopsOf(operations)[0] // 'crosscut~l1d1~wsquared0end'
 */
export function stopsOf(operations: readonly Operation[]): readonly string[] {
  const first = new Map<string, Length>();
  return operations.map(({ setup: { key, figure } }) => {
    const rest = figure?.rest ?? zero;
    const stands = first.get(key);
    if (stands === undefined) first.set(key, rest);
    else if (rest !== stands && !equals(rest, stands))
      return `${key}~r${toStored(rest).replace('/', 'd').replace('-', 'm')}`;
    return key;
  });
}
