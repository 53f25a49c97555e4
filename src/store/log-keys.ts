import type { Entry } from '../job/entry';
import { rowKey } from './journal/row';
import { byCount, byKey, type Reading, unpacked, type Writing } from './log-rows';
import { sent } from './whole';

// What the first screen has no need to know of the logs.

/** Single rows of a job, the oldest first. */
export const oldestRows = (tx: Reading, job: string, most: number): Promise<readonly unknown[]> =>
  tx.objectStore('entries').index('byCount').getAll(byCount(job), most);

/** Keys of all entries, as `rowKey` spells them. */
export async function keysIn(tx: Reading, job?: string): Promise<ReadonlySet<string>> {
  const range = job === undefined ? undefined : byKey(job);
  const packs = await tx.objectStore('packs').getAll(range);
  const single = await tx.objectStore('entries').getAllKeys(range);
  const keys = new Set(single.map(([of, device, count]) => rowKey({ job: of, device, count })));
  for (const row of unpacked({ packs, single: [] })) keys.add(rowKey(row as Entry));
  return keys;
}

/** How many entries all logs have together. */
export async function countOf(tx: Reading): Promise<number> {
  const packs = await tx.objectStore('packs').getAllKeys();
  const single = await tx.objectStore('entries').count();
  return packs.reduce((sum, [, , size]) => sum + size, single);
}

/** Takes out everything of a job. */
export function removeLog(tx: Writing, job: string): void {
  for (const name of ['entries', 'packs'] as const) sent(tx.objectStore(name).delete(byKey(job)));
}
