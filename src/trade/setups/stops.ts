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
 * @returns by id of the operation; those that come first under a key have the key alone
 * @example stopsOf(operations).get('cut/c1~left/len/1') // 'crosscut~l1d1~wsquared0end'
 */
export function stopsOf(operations: readonly Operation[]): ReadonlyMap<string, string> {
  const first = new Map<string, Length>();
  for (const { setup } of operations) if (!first.has(setup.key)) first.set(setup.key, restOf(setup));
  return new Map(
    operations.map(({ id, setup }) => {
      const rest = restOf(setup);
      const stands = first.get(setup.key) ?? rest;
      const own = rest === stands || equals(rest, stands);
      return [id, own ? setup.key : `${setup.key}~r${toStored(rest).replace('/', 'd').replace('-', 'm')}`];
    }),
  );
}
