import type { Length } from '../length/length';
import { err, ok, type Result } from '../length/result';
import { fromStored, toStored } from '../length/stored';
import type { Shop } from '../trade/grooves/board';
import {
  type Connection,
  connect,
  type Database,
  nameOf,
  type OpenError,
  type SaveError,
  saveError,
} from './db';
import type { Entry, Json } from './entry';
import { isId } from './fields';
import type { Aside } from './migrations';
import { type Pages, pagesOn } from './pages';
import { type JobLine, type Loaded, listJobs, load, since } from './reads';
import { strict, whole } from './whole';
import { addEntries, type NewAct, purge, put, writeAct } from './writes';

export type { JobLine, NewAct };

export type Store = {
  readonly device: string;
  /** Makes a job, empty but for its first act. */
  readonly makeJob: (act: NewAct) => Promise<Result<readonly Entry[], SaveError>>;
  /** Adds an act. Resolves with its entries once they are on the phone's storage, not before. */
  readonly append: (act: NewAct) => Promise<Result<readonly Entry[], SaveError>>;
  /**
   * The whole log of a job, in order. Rows that cannot be read are set aside, whole, and counted; on a full disk
   * they stay in place, left out and counted.
   */
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

/** Opens everything kept on this phone. */
export async function openStore(options: StoreOptions): Promise<Result<Store, OpenError>> {
  const name = options.name ?? 'knifeline';
  const opened = await connect(name, options.onGone ?? (() => undefined));
  if (!opened.ok) return opened;
  const connection = opened.value;
  try {
    const device = await connection.use((db) => deviceOf(db, options.randomId));
    return ok(storeOn({ connection, device, now: options.now, pages: pagesOn(name) }));
  } catch (error) {
    connection.close();
    return err({ code: 'no-storage', name: nameOf(error) });
  }
}

async function deviceOf(db: Database, randomId: () => string): Promise<string> {
  const tx = db.transaction('settings', 'readwrite', strict);
  return whole(tx, async () => {
    const found = await tx.store.get('device');
    const device = typeof found === 'string' && isId(found) ? found : randomId();
    if (found !== device) await tx.store.put(device, 'device');
    return device;
  });
}

type Here = {
  readonly connection: Connection;
  readonly device: string;
  readonly now: () => string;
  readonly pages: Pages;
};

function storeOn(here: Here): Store {
  const { device, pages } = here;
  const { use, close } = here.connection;
  const act = (act: NewAct) => saved(here, act.job, (db) => writeAct(db, here, act));
  return {
    device,
    makeJob: act,
    append: act,
    load: (job) => use((db) => load(db, job)),
    since: (job, count) => use((db) => since(db, job, count)),
    jobs: () => use(listJobs),
    addEntries: (job, entries, aside = []) =>
      saved(here, `reload ${job}`, (db) => addEntries(db, here.now(), { job, entries, aside })),
    purge: (before) => use((db) => purge(db, before)),
    aside: () => use((db) => db.getAll('aside')),
    setting: (key) => use((db) => db.get('settings', key)),
    settings: () => use(allSettings),
    keep: (key, value) => saved(here, 'settings', (db) => put(db, 'settings', [key, value])),
    shop: () => use(readShop),
    keepShop: (key, value) =>
      saved(here, 'settings', (db) => put(db, 'shop', [key, value && toStored(value)])),
    onChange: pages.hear,
    close: () => {
      pages.close();
      close();
    },
  };
}

type Work<T> = (db: Database) => Promise<Result<T, SaveError>>;

/** Tells the other pages once the change is on the phone, not before. */
async function saved<T>(here: Here, what: string, work: Work<T>): Promise<Result<T, SaveError>> {
  try {
    const done = await here.connection.use(work);
    if (done.ok) here.pages.tell(what);
    return done;
  } catch (error) {
    return err(saveError(error));
  }
}

async function allSettings(db: Database): Promise<Readonly<Record<string, Json>>> {
  const tx = db.transaction('settings');
  const [keys, values] = await Promise.all([tx.store.getAllKeys(), tx.store.getAll()]);
  return Object.fromEntries(keys.map((key, k) => [key, values[k] ?? null]));
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
