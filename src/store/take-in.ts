import { canonical } from '../job/canonical';
import type { Entry } from '../job/entry';
import type { Aside } from '../job/rows';
import { ok, type Result } from '../length/result';
import type { Database, SaveError } from './db';
import { rowKey } from './journal/row';
import { keysIn } from './log-keys';
import { writingLog } from './log-rows';
import { putEntries } from './pack-up';
import { sent, whole } from './whole';

export type Incoming = {
  readonly job: string;
  readonly entries: readonly Entry[];
  readonly aside: readonly Aside[];
};

/** What was new; of all tries together, as one that ended unheard may have been kept. */
export type Added = { readonly entries: readonly Entry[]; readonly aside: readonly Aside[] };

/** Adds entries we do not have; one we have stays as it is. Taken in twice, nothing changes. Returns what was new. */
export async function addEntries(
  db: Database,
  { job, entries, aside, now }: Incoming & { readonly now: string },
  tried: Added[],
): Promise<Result<Added, SaveError>> {
  const tx = writingLog(db, 'jobs', 'aside');
  const [jobs, store] = [tx.objectStore('jobs'), tx.objectStore('aside')];
  return whole(tx, async () => {
    if ((await jobs.getKey(job)) === undefined) sent(jobs.add({ id: job, made: now }));
    const have = await keysIn(tx, job);
    const fresh = entries.filter((entry) => !have.has(rowKey(entry)));
    await putEntries(tx, fresh);
    const kept = aside.length === 0 ? [] : await store.getAll();
    const known = new Set(kept.map(({ row }) => canonical(row)));
    const away = aside.filter((item) => !known.has(canonical(item.row)));
    for (const item of away) sent(store.add(item));
    tried.push({ entries: fresh, aside: away });
    return ok({
      entries: [...new Set(tried.flatMap((added) => added.entries))],
      aside: [...new Set(tried.flatMap((added) => added.aside))],
    });
  });
}
