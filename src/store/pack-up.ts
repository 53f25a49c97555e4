import { unwrap } from 'idb';
import { byJob } from '../job/by-job';
import { canonical } from '../job/canonical';
import type { Entry } from '../job/entry';
import { readEntry } from '../job/rows';
import type { Database } from './db';
import { oldestRows } from './log-keys';
import { byKey, isReadAlone, type Writing, writingLog } from './log-rows';
import { packOf } from './make-pack';
import { type Pack, rowsIn } from './pack';
import { whole } from './whole';

/** Most entries in one pack. */
const most = 1000;
/** Newest entries that stay single: the greatest count is always among them. */
const newest = 50;
/** Fewer are not worth packing. */
const fewest = 150;

const isPackable = (row: unknown): row is Entry => {
  const read = readEntry(row);
  return 'entry' in read && !(read.entry.kind === 'edit' && isReadAlone(read.entry.path));
};

/** Puts entries that are in no store yet into the logs, many of them packed at once. */
export async function putEntries(tx: Writing, entries: readonly Entry[]): Promise<void> {
  for (const [job, own] of byJob(entries)) {
    const old = own.length < newest + fewest ? [] : [...own].sort(byCountOf).slice(0, -newest);
    const packable = new Set(old.filter(isPackable));
    putSingle(
      tx,
      own.filter((entry) => !packable.has(entry)),
    );
    if (packable.size > 0) await putPacked(tx, job, [...packable]);
  }
}

const byCountOf = (a: Entry, b: Entry): number => a.count - b.count;

/** No promise for each of ten thousand requests: the end of the transaction tells whether they failed. */
function putSingle(tx: Writing, entries: readonly Entry[]): void {
  const plain = unwrap(tx.objectStore('entries'));
  for (const entry of entries) plain.put(entry);
}

async function putPacked(tx: Writing, job: string, entries: readonly Entry[]): Promise<void> {
  const last = await tx.objectStore('packs').openKeyCursor(byKey(job), 'prev');
  let no = (last?.primaryKey[1] ?? 0) + 1;
  const plain = unwrap(tx.objectStore('packs'));
  for (let k = 0; k < entries.length; k += most, no += 1)
    plain.put(packOf(job, no, entries.slice(k, k + most)));
}

/**
 * Packs the oldest single entries of a job, a thousand at most, in one transaction.
 *
 * @returns whether there may be more
 */
export async function packLog(db: Database, job: string): Promise<boolean> {
  const tx = writingLog(db);
  return whole(tx, async () => {
    const rows = await oldestRows(tx, job, most + newest);
    const old = rows.slice(0, -newest).filter(isPackable);
    if (old.length < fewest) return false;
    const last = (await tx.objectStore('packs').openCursor(byKey(job), 'prev'))?.value;
    const begun = last && last.size <= most - fewest ? rowsIn(last) : undefined;
    const fresh = old.slice(0, most - (begun?.length ?? 0));
    const entries = [...((begun ?? []) as readonly Entry[]), ...fresh];
    const pack = packOf(job, (last?.no ?? 0) + (begun ? 0 : 1), entries);
    if (!readsBack(pack, entries)) return false;
    const [packs, single] = [unwrap(tx.objectStore('packs')), unwrap(tx.objectStore('entries'))];
    if (begun && last) packs.delete([job, last.no, last.size]);
    packs.put(pack);
    for (const { device, count } of fresh) single.delete([job, device, count]);
    return true;
  });
}

/** A pack takes the place of its entries only where it says the same. */
function readsBack(pack: Pack, entries: readonly Entry[]): boolean {
  const rows = rowsIn(pack) ?? [];
  return (
    rows.length === entries.length && entries.every((entry, k) => canonical(entry) === canonical(rows[k]))
  );
}
