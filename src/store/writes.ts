import type { IDBPObjectStore, StoreNames } from 'idb';
import type { Change, Entry } from '../job/entry';
import { canonical } from '../job/file';
import { fold, keyOf, over } from '../job/log';
import type { Aside } from '../job/rows';
import { readEntry } from '../job/rows';
import { takesAway } from '../job/tombstones';
import { err, ok, type Result } from '../length/result';
import type { Database, SaveError } from './db';
import type { Schema } from './migrations';
import { byCount, byKey, readable } from './reads';
import { reading, sent, strict, whole } from './whole';

export type NewAct = {
  readonly job: string;
  readonly label: string;
  /** A change that does not say what it is over is over what stands on the phone when it is written. */
  readonly changes: readonly Change[];
  readonly undoes?: string;
};

type Writer = { readonly device: string; readonly now: () => string };

type Trying = {
  readonly act: NewAct;
  /** What was written of it before, when that broke off unheard: it may have been kept after all. */
  readonly tried: (readonly Entry[])[];
  /** Greatest count the page has seen of the job: an emptied database begins no count anew. */
  readonly after: number;
  /** Its entries, where the journal may have them already. */
  readonly made?: readonly Entry[] | undefined;
};

/**
 * Writes an act. Its counts are taken inside the transaction, and the database runs one such transaction at a time,
 * so two pages never take the same. A full disk shows only when the transaction ends: nothing counts before that.
 */
export async function writeAct(
  db: Database,
  writer: Writer,
  { act, tried, after, made: before }: Trying,
): Promise<Result<readonly Entry[], SaveError>> {
  const tx = db.transaction(['jobs', 'log'], 'readwrite', strict);
  const [jobs, log] = [tx.objectStore('jobs'), tx.objectStore('log')];
  return whole(tx, async () => {
    const known = await jobs.getKey(act.job);
    // only after the first answer is it this write's turn: what was tried before has ended by then
    for (const one of before ? [...tried, before] : tried) if (await isThere(log, one)) return ok(one);
    const last = await log.index('byCount').openKeyCursor(byCount(act.job), 'prev');
    const there = last ? Number((last.key as [string, number])[1]) : 0;
    const changes = await sayingOver(log, act);
    const made = before ? ok(before) : prepareAct(writer, { ...act, changes }, Math.max(there, after));
    if (!made.ok) return made;
    tried.push(made.value);
    if (known === undefined) sent(jobs.add({ id: act.job, made: made.value[0]?.at ?? writer.now() }));
    for (const entry of made.value) sent(log.add(entry));
    return made;
  });
}

/** What of several tries was kept after all; undefined when none was. */
export async function keptOfTries(
  db: Database,
  tried: readonly (readonly Entry[])[],
): Promise<readonly Entry[] | undefined> {
  const { store } = reading(db.transaction('log'));
  for (const entries of tried) if (await isThere(store, entries)) return entries;
  return undefined;
}

type Rows = { readonly get: (key: [string, string, number]) => Promise<unknown> };

/** An act is kept whole or not at all: its first entry tells. */
async function isThere(log: Rows, [first]: readonly Entry[]): Promise<boolean> {
  if (!first) return false;
  const found = await log.get([first.job, first.device, first.count]);
  return found !== undefined && canonical(found) === canonical(first);
}

/**
 * The entries of an act that follow a count, or why they would not read back: such are refused now, not set aside
 * later.
 */
export function prepareAct(
  { device, now }: Writer,
  act: NewAct,
  count: number,
): Result<readonly Entry[], SaveError> {
  const entries = stamped(act, { device, at: now(), count });
  const why = misfit(entries);
  return why === undefined ? ok(entries) : err({ code: 'failed', name: why });
}

type Log = IDBPObjectStore<Schema, StoreNames<Schema>[], 'log', 'readwrite'>;

const sayingOver = (log: Log, { job, changes }: NewAct): Promise<readonly Change[]> =>
  Promise.all(
    changes.map(async (change) => {
      if (change.over !== undefined) return change;
      const rows =
        change.kind === 'edit' && !takesAway(change)
          ? await log.index('byPath').getAll([job, change.path])
          : await log.getAll(byKey(job));
      return over(fold(readable(rows)), [change])[0] ?? change;
    }),
  );

type Place = { readonly device: string; readonly at: string; readonly count: number };

function stamped(act: NewAct, { device, at, count }: Place): readonly Entry[] {
  const { job, label } = act;
  const undoes = act.undoes === undefined ? {} : { undoes: act.undoes };
  const stamp = { job, device, at, act: `${device}.${count + 1}`, label, ...undoes };
  return act.changes.map((change, k) => ({ ...stamp, count: count + 1 + k, ...change }));
}

/** Why an entry would not read back. */
function misfit(entries: readonly Entry[]): string | undefined {
  for (const entry of entries) {
    const read = readEntry(entry);
    if ('why' in read) return read.why;
  }
  return undefined;
}

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
  const tx = db.transaction(['jobs', 'log', 'aside'], 'readwrite', strict);
  const [jobs, log, store] = [tx.objectStore('jobs'), tx.objectStore('log'), tx.objectStore('aside')];
  return whole(tx, async () => {
    if ((await jobs.getKey(job)) === undefined) sent(jobs.add({ id: job, made: now }));
    const keys = await log.getAllKeys(byKey(job));
    const have = new Set(keys.map(([, device, count]) => keyOf({ device, count })));
    const fresh = entries.filter((entry) => !have.has(keyOf(entry)));
    for (const entry of fresh) sent(log.add(entry));
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
