import type { Length } from '../length/length';
import { err, ok, type Result } from '../length/result';
import { fromStored, toStored } from '../length/stored';
import type { Shop } from '../trade/grooves/board';
import { type Connection, connect, type Database, type OpenError, type SaveError, saveError } from './db';
import type { Change, Entry, Json } from './entry';
import { inOrder, keyOf } from './log';
import type { Aside } from './migrations';
import { readEntry } from './rows';

export type JobLine = {
  readonly id: string;
  readonly name: string;
  readonly place: string;
  readonly deleted?: string;
  /** When it was last written to, ISO 8601. */
  readonly last: string;
};

export type Loaded = { readonly entries: readonly Entry[]; readonly setAside: number };

export type NewAct = {
  readonly job: string;
  readonly label: string;
  readonly changes: readonly Change[];
  readonly undoes?: string;
};

export type Store = {
  readonly device: string;
  /** Makes a job, empty but for its first act. */
  readonly makeJob: (act: NewAct) => Promise<Result<readonly Entry[], SaveError>>;
  /** Adds an act. Resolves with its entries once they are on the phone's storage, not before. */
  readonly append: (act: NewAct) => Promise<Result<readonly Entry[], SaveError>>;
  /** The whole log of a job, in order. Rows that cannot be read are set aside, whole, and counted. */
  readonly load: (job: string) => Promise<Loaded>;
  /** Entries of a job from a count on: what another page added. */
  readonly since: (job: string, count: number) => Promise<readonly Entry[]>;
  readonly jobs: () => Promise<readonly JobLine[]>;
  /** Takes in another copy's entries; ours stand where both have one. */
  readonly addEntries: (
    job: string,
    entries: readonly Entry[],
    aside?: readonly Aside[],
  ) => Promise<Result<number, SaveError>>;
  /** Removes for good what was deleted before a date (ISO 8601). */
  readonly purge: (before: string) => Promise<void>;
  readonly aside: () => Promise<readonly Aside[]>;
  readonly setting: (key: string) => Promise<Json | undefined>;
  readonly settings: () => Promise<Readonly<Record<string, Json>>>;
  readonly keep: (key: string, value: Json) => Promise<Result<null, SaveError>>;
  readonly shop: () => Promise<Shop>;
  readonly keepShop: (key: keyof Shop, value: Length | undefined) => Promise<Result<null, SaveError>>;
  /** Calls back when another page has written: a job's id, `reload` and the id after an import, or `settings`. */
  readonly onChange: (heard: (what: string) => void) => void;
  readonly close: () => void;
};

export type StoreOptions = {
  readonly name?: string;
  readonly randomId: () => string;
  readonly now: () => string;
  /** Another page upgraded the database: this one can no longer write. */
  readonly onGone?: () => void;
};

const strict = { durability: 'strict' } as const;

/** Opens everything kept on this phone. */
export async function openStore(options: StoreOptions): Promise<Result<Store, OpenError>> {
  const connection = await connect(options.name ?? 'knifeline', options.onGone ?? (() => undefined));
  if (!connection.ok) return connection;
  const use = connection.value.use;
  const device = await use((db) => deviceOf(db, options.randomId));
  const channel =
    'BroadcastChannel' in globalThis ? new BroadcastChannel(options.name ?? 'knifeline') : undefined;
  const tell = (what: string) => channel?.postMessage(what);
  return ok(storeOn({ connection: connection.value, device, tell, now: options.now }, channel));
}

async function deviceOf(db: Database, randomId: () => string): Promise<string> {
  const tx = db.transaction('settings', 'readwrite', strict);
  const found = await tx.store.get('device');
  const device = typeof found === 'string' ? found : randomId();
  if (found !== device) await tx.store.put(device, 'device');
  await tx.done;
  return device;
}

type Here = {
  readonly connection: Connection;
  readonly device: string;
  readonly tell: (what: string) => void;
  readonly now: () => string;
};

function storeOn(here: Here, channel: BroadcastChannel | undefined): Store {
  const { use, close } = here.connection;
  const guarded = <T>(what: string, work: (db: Database) => Promise<T>) => saved(here, what, work);
  return {
    device: here.device,
    makeJob: (act) => guarded(act.job, (db) => write(db, here, act, true)),
    append: (act) => guarded(act.job, (db) => write(db, here, act, false)),
    load: (job) => use((db) => load(db, job)),
    since: (job, count) => use((db) => since(db, job, count)),
    jobs: () => use(listJobs),
    addEntries: (job, entries, aside = []) =>
      guarded(`reload ${job}`, (db) => addEntries(db, { job, entries, aside, now: here.now() })),
    purge: (before) => use((db) => purge(db, before)),
    aside: () => use((db) => db.getAll('aside')),
    setting: (key) => use((db) => db.get('settings', key)),
    settings: () => use(allSettings),
    keep: (key, value) => guarded('settings', (db) => put(db, 'settings', key, value)),
    shop: () => use(readShop),
    keepShop: (key, value) =>
      guarded('settings', (db) => put(db, 'shop', key, value === undefined ? undefined : toStored(value))),
    onChange: (heard) => channel?.addEventListener('message', (event) => heard(String(event.data))),
    close: () => {
      channel?.close();
      close();
    },
  };
}

async function saved<T>(
  here: Here,
  what: string,
  work: (db: Database) => Promise<T>,
): Promise<Result<T, SaveError>> {
  try {
    const value = await here.connection.use(work);
    here.tell(what);
    return ok(value);
  } catch (error) {
    return err(saveError(error));
  }
}

/**
 * Writes an act. Its counts are taken inside the transaction, and the database runs one such transaction at a time,
 * so two pages never take the same. A full disk shows only when the transaction ends: nothing counts before that.
 */
async function write(db: Database, here: Here, act: NewAct, isNew: boolean): Promise<readonly Entry[]> {
  const tx = db.transaction(['jobs', 'log'], 'readwrite', strict);
  const finished = tx.done;
  finished.catch(() => undefined); // awaited below: a failed request must not leave it unheard
  const log = tx.objectStore('log');
  const at = here.now();
  if (isNew) await tx.objectStore('jobs').put({ id: act.job, made: at });
  const last = await log.index('byCount').openKeyCursor(jobRange(act.job), 'prev');
  let count = last ? Number((last.key as [string, number])[1]) : 0;
  const first = `${here.device}.${count + 1}`;
  const entries = act.changes.map((change): Entry => {
    count += 1;
    const undoes = act.undoes === undefined ? {} : { undoes: act.undoes };
    return {
      job: act.job,
      device: here.device,
      count,
      at,
      act: first,
      label: act.label,
      ...undoes,
      ...change,
    };
  });
  for (const entry of entries) log.put(entry).catch(() => undefined);
  await finished;
  return entries;
}

const jobRange = (job: string, from = 0) => IDBKeyRange.bound([job, from], [job, Number.POSITIVE_INFINITY]);

async function load(db: Database, job: string): Promise<Loaded> {
  const rows: unknown[] = await db.getAllFromIndex('log', 'byCount', jobRange(job));
  const entries: Entry[] = [];
  const bad: { readonly row: unknown; readonly why: string }[] = [];
  for (const row of rows) {
    const read = readEntry(row);
    if ('entry' in read) entries.push(read.entry);
    else bad.push({ row, why: read.why });
  }
  if (bad.length > 0) await setAside(db, job, bad);
  return { entries: entries.sort(inOrder), setAside: bad.length };
}

/** Moves unreadable rows, whole, out of the log in one transaction: kept, counted, never in the way. */
async function setAside(
  db: Database,
  job: string,
  bad: readonly { row: unknown; why: string }[],
): Promise<void> {
  const tx = db.transaction(['log', 'aside'], 'readwrite', strict);
  for (const { row, why } of bad) {
    await tx.objectStore('aside').add({ from: job, why, row });
    const { device, count } = row as { device: string; count: number };
    await tx.objectStore('log').delete([job, device, count]);
  }
  await tx.done;
}

async function since(db: Database, job: string, count: number): Promise<readonly Entry[]> {
  const rows: unknown[] = await db.getAllFromIndex('log', 'byCount', jobRange(job, count));
  return rows.flatMap((row) => {
    const read = readEntry(row);
    return 'entry' in read ? [read.entry] : [];
  });
}

async function listJobs(db: Database): Promise<readonly JobLine[]> {
  const tx = db.transaction(['jobs', 'log']);
  const all = await tx.objectStore('jobs').getAll();
  const log = tx.objectStore('log');
  const textAt = async (job: string, path: string): Promise<string> => {
    const rows = (await log.index('byPath').getAll([job, path])).sort(inOrder);
    const last = rows[rows.length - 1];
    return last?.kind === 'edit' && typeof last.value === 'string' ? last.value : '';
  };
  const lines = await Promise.all(
    all.map(async ({ id, made }): Promise<JobLine> => {
      const newest = await log.index('byCount').openCursor(jobRange(id), 'prev');
      const deleted = await textAt(id, 'deleted');
      const [name, place] = [await textAt(id, 'name'), await textAt(id, 'place')];
      return { id, name, place, last: newest?.value.at ?? made, ...(deleted ? { deleted } : {}) };
    }),
  );
  return lines.sort((a, b) => (a.last < b.last ? 1 : -1));
}

type Incoming = {
  readonly job: string;
  readonly entries: readonly Entry[];
  readonly aside: readonly Aside[];
  readonly now: string;
};

/** Adds entries we do not have. `add` cannot overwrite; one we have stays as it is. Resolves with how many were new. */
async function addEntries(db: Database, { job, entries, aside, now }: Incoming): Promise<number> {
  const tx = db.transaction(['jobs', 'log', 'aside'], 'readwrite', strict);
  const finished = tx.done;
  finished.catch(() => undefined);
  const jobs = tx.objectStore('jobs');
  if (!(await jobs.get(job))) await jobs.put({ id: job, made: now });
  const log = tx.objectStore('log');
  const range = IDBKeyRange.bound([job], [job, []]);
  const have = new Set((await log.getAllKeys(range)).map(([, device, count]) => `${count}.${device}`));
  const fresh = entries.filter((entry) => !have.has(keyOf(entry)));
  for (const entry of fresh) log.add(entry).catch(() => undefined);
  for (const row of aside)
    tx.objectStore('aside')
      .add(row)
      .catch(() => undefined);
  await finished;
  return fresh.length;
}

async function purge(db: Database, before: string): Promise<void> {
  for (const line of await listJobs(db)) {
    if (!line.deleted || line.deleted >= before) continue;
    const tx = db.transaction(['jobs', 'log'], 'readwrite', strict);
    await tx.objectStore('log').delete(IDBKeyRange.bound([line.id], [line.id, []]));
    await tx.objectStore('jobs').delete(line.id);
    await tx.done;
  }
}

async function allSettings(db: Database): Promise<Readonly<Record<string, Json>>> {
  const tx = db.transaction('settings');
  const [keys, values] = await Promise.all([tx.store.getAllKeys(), tx.store.getAll()]);
  return Object.fromEntries(keys.map((key, k) => [key, values[k] ?? null]));
}

async function put(
  db: Database,
  store: 'settings' | 'shop',
  key: string,
  value: Json | string | undefined,
): Promise<null> {
  const tx = db.transaction(store, 'readwrite', strict);
  const finished = tx.done;
  finished.catch(() => undefined);
  if (value === undefined) tx.store.delete(key).catch(() => undefined);
  else tx.store.put(value as string, key).catch(() => undefined);
  await finished;
  return null;
}

async function readShop(db: Database): Promise<Shop> {
  const tx = db.transaction('shop');
  const [keys, values] = await Promise.all([tx.store.getAllKeys(), tx.store.getAll()]);
  const read = keys.flatMap((key, k) => {
    const found = fromStored(String(values[k]));
    return found.ok ? [[key, found.value] as const] : [];
  });
  return Object.fromEntries(read) as Shop;
}
