import { unwrap } from 'idb';
import type { Entry } from '../../job/entry';
import type { Aside } from '../../job/rows';
import type { Database } from '../db';
import { takeValues } from '../values';
import { sent, strict, whole } from '../whole';
import { keptOf, type Row, rowKey, valueRows } from './row';

export const stores = ['jobs', 'log', 'settings', 'shop', 'aside'] as const;

/**
 * Puts into the database what the journal has and it lacks, in one transaction; what the database has stands, but for
 * a setting or figure of which the journal has a later word. Entries set aside stay aside.
 *
 * @returns how many entries came back
 */
export async function restore(db: Database, rows: readonly Row[]): Promise<number> {
  const kept = keptOf(rows);
  const tx = db.transaction(stores, 'readwrite', strict);
  const [jobs, log, aside] = [tx.objectStore('jobs'), tx.objectStore('log'), tx.objectStore('aside')];
  return whole(tx, async () => {
    const keys = await log.getAllKeys();
    const made = await jobs.getAllKeys();
    const asides = await aside.getAll();
    const have = new Set(keys.map(([job, device, count]) => rowKey({ job, device, count })));
    const away = new Set(asides.map(({ row }) => JSON.stringify(row)));
    const isAway = (entry: Entry) => away.size > 0 && away.has(JSON.stringify(entry));
    const fresh = [...kept.log].flatMap(([key, entry]) => (have.has(key) || isAway(entry) ? [] : [entry]));
    // no promise for each of ten thousand requests: the end of the transaction tells whether they failed
    const plain = unwrap(log);
    for (const entry of fresh) plain.put(entry);
    const jobsMade = new Set(made);
    for (const [id, at] of firstMoments(fresh)) if (!jobsMade.has(id)) sent(jobs.put({ id, made: at }));
    for (const [text, one] of kept.aside) if (!away.has(text)) sent(aside.add(withoutId(one)));
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
