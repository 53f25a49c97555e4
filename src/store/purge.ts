import type { Database } from './db';
import { countOf, removeLog } from './log-keys';
import { keptRows, unpacked, writingLog } from './log-rows';
import { watchKey } from './own-keys';
import { readWatch, watched } from './purge-rule';
import { readable, textAt } from './reads';
import { sent, whole } from './whole';

const day = 24 * 3600 * 1000;

/**
 * Removes for good the jobs deleted long enough ago, and says which. What this start sees is noted, and whether a job
 * still is deleted is read in the same transaction: another page may have brought it back.
 *
 * @param now reading of the clock, ISO 8601
 */
export async function purge(db: Database, now: string): Promise<readonly string[]> {
  const tx = writingLog(db, 'jobs', 'settings');
  const [jobs, settings] = [tx.objectStore('jobs'), tx.objectStore('settings')];
  const before = new Date(Date.parse(now) - 30 * day).toISOString();
  return whole(tx, async () => {
    const names = new Map<string, string>();
    const recent = new Set<string>();
    for (const job of await jobs.getAllKeys()) {
      const deleted = await textAt(tx, job, 'deleted');
      if (deleted === '') continue;
      const rows = readable(unpacked(await keptRows(tx, job)));
      // worked on since, here or on another phone, it is another deletion: its days count anew
      const name = `${job} ${deleted} ${rows.length}`;
      names.set(name, job);
      if (deleted >= before || rows.some(({ at }) => at >= before)) recent.add(name);
    }
    const mark = [Math.floor(Date.parse(now) / day), await countOf(tx)] as const;
    const { watch, due } = watched(readWatch(await settings.get(watchKey)), mark, [...names.keys()]);
    sent(names.size > 0 ? settings.put(watch, watchKey) : settings.delete(watchKey));
    const gone = due.flatMap((name) => (recent.has(name) ? [] : [names.get(name) ?? '']));
    for (const job of gone) {
      removeLog(tx, job);
      sent(jobs.delete(job));
    }
    return gone;
  });
}
