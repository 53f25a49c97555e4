import type { Entry } from '../job/entry';
import type { Database } from './db';
import { byKey, type Writing, writingLog } from './log-rows';
import { packOf } from './make-pack';
import { behindKey } from './own-keys';
import { type Bad, readPack } from './read-rows';
import { sent, whole } from './whole';

/**
 * Moves rows that cannot be read out of the log, whole, in one transaction (D13).
 *
 * @param single rows that stand single; what cannot be read in packs is looked for anew
 */
export async function setAside(db: Database, job: string, single: readonly Bad[]): Promise<void> {
  const tx = writingLog(db, 'aside', 'settings');
  await whole(tx, async () => {
    // the journal may have them whole
    sent(tx.objectStore('settings').put(true, behindKey));
    const out = [...(await outOfEntries(tx, job, single)), ...(await outOfPacks(tx, job))];
    for (const { row, why } of out) sent(tx.objectStore('aside').add({ from: job, why, row }));
  });
}

async function outOfEntries(tx: Writing, job: string, bad: readonly Bad[]): Promise<readonly Bad[]> {
  const entries = tx.objectStore('entries');
  const out: Bad[] = [];
  for (const one of bad) {
    const { device, count } = one.row as Entry;
    const key: [string, string, number] = [job, device, count];
    // another page that loads the same job may have moved it already
    if ((await entries.getKey(key)) === undefined) continue;
    sent(entries.delete(key));
    out.push(one);
  }
  return out;
}

/** A pack with rows that cannot be read is packed anew without them. */
async function outOfPacks(tx: Writing, job: string): Promise<readonly Bad[]> {
  const packs = tx.objectStore('packs');
  const out: Bad[] = [];
  for (const pack of await packs.getAll(byKey(job))) {
    const { good, bad } = readPack(pack);
    if (bad.length === 0) continue;
    out.push(...bad);
    sent(packs.delete([job, pack.no, pack.size]));
    if (good.length > 0) sent(packs.put(packOf(job, pack.no, good)));
  }
  return out;
}
