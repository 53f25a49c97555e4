import type { Job } from '../job/job';
import { type Length, less } from '../length/length';
import type { Stuff } from '../trade/carcass/case';
import type { Operation } from '../trade/setups/operation';
import { greatestOf } from './greatest';

/** A stuff that is reckoned with at less than its greatest reading. Inches. */
export type Thinner = {
  readonly stock: string;
  readonly name: string;
  readonly used: Length;
  readonly read: Length;
};

type Worked = { readonly stuff: readonly Stuff[]; readonly operations: readonly Operation[] };

/**
 * What stands on less than the thickest reading: operations that would be set otherwise if that were in use. A sheet
 * goes into no dado that was cut to a thinner place of it.
 *
 * @param work the job as it is reckoned
 * @param again the operations of the job as it would be
 * @returns by operation; nothing for most jobs, whose greatest readings are in use
 */
export function thinnerIn(
  job: Job,
  { stuff, operations }: Worked,
  again: (job: Job) => readonly Operation[],
): ReadonlyMap<string, readonly Thinner[]> {
  const found = new Map<string, readonly Thinner[]>();
  for (const thinner of job.stock.flatMap((stock) => thinnerOf(stock, stuff))) {
    const as = job.stock.map((s) => (s.id === thinner.stock ? { ...s, used: thinner.read } : s));
    const would = new Map(again({ ...job, stock: as }).map((op) => [op.id, op.setup.key]));
    for (const { id, setup, fits } of operations) {
      const now = would.get(id);
      if (fits === thinner.stock || (now !== undefined && now !== setup.key))
        found.set(id, [...(found.get(id) ?? []), thinner]);
    }
  }
  return found;
}

function thinnerOf(stock: Job['stock'][number], stuff: readonly Stuff[]): readonly Thinner[] {
  const read = greatestOf(stock);
  const own = stuff.find((s) => s.id === stock.id);
  return read && own && less(own.thickness, read)
    ? [{ stock: stock.id, name: own.name, used: own.thickness, read }]
    : [];
}
