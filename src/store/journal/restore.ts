import { canonical } from '../../job/canonical';
import type { Entry } from '../../job/entry';
import type { Aside } from '../../job/rows';
import type { Database } from '../db';
import { keysIn } from '../log-keys';
import { writingLog } from '../log-rows';
import { putEntries } from '../pack-up';
import { takeValues } from '../values';
import { sent, whole } from '../whole';
import { keptOf, valueRows } from './kept-rows';
import type { Row } from './row';

/**
 * Puts into the database what the journal has and it lacks, in one transaction; what the database has stands, but for
 * a setting or figure of which the journal has a later word. Entries set aside stay aside.
 *
 * @returns how many entries came back
 */
export async function restore(db: Database, rows: readonly Row[]): Promise<number> {
  const kept = keptOf(rows);
  const tx = writingLog(db, 'jobs', 'settings', 'shop', 'aside');
  const [jobs, aside] = [tx.objectStore('jobs'), tx.objectStore('aside')];
  return whole(tx, async () => {
    const have = await keysIn(tx);
    const made = await jobs.getAllKeys();
    const asides = await aside.getAll();
    const away = new Set(asides.map(({ row }) => canonical(row)));
    const isAway = (entry: Entry) => away.size > 0 && away.has(canonical(entry));
    const fresh = [...kept.log].flatMap(([key, entry]) => (have.has(key) || isAway(entry) ? [] : [entry]));
    await putEntries(tx, fresh);
    const jobsMade = new Set(made);
    for (const [id, at] of firstMoments(fresh)) if (!jobsMade.has(id)) sent(jobs.put({ id, made: at }));
    for (const one of kept.aside.values()) if (!away.has(canonical(one.row))) sent(aside.add(withoutId(one)));
    await takeValues(tx, [...valueRows('settings', kept.settings), ...valueRows('shop', kept.shop)]);
    return fresh.length;
  });
}

export const withoutId = ({ from, why, row }: Aside): Aside => ({ from, why, row });

function firstMoments(entries: readonly Entry[]): ReadonlyMap<string, string> {
  const first = new Map<string, string>();
  for (const { job, at } of entries) {
    const known = first.get(job);
    if (known === undefined || at < known) first.set(job, at);
  }
  return first;
}
