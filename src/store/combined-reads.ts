import type { Entry, Json } from '../job/entry';
import { fold, inOrder, merge } from '../job/log';
import { readShop } from '../job/shop-rows';
import type { Store } from './contract';
import type { Database } from './db';
import { lineFields } from './log-rows';
import type { Bad } from './read-rows';
import { type JobLine, lastFirst, listJobs, nextOf, readable, readLog, since } from './reads';
import { setAside } from './reconciling';
import type { StoreContext } from './store-context';
import { allValues, pairsIn, type Stamped, takeLater, type ValueStore } from './values';
import { reading } from './whole';

/** Reads the database, or takes `none` while the journal alone is shown. */
type Read = <T>(work: (db: Database) => Promise<T>, none: T, how?: 'long') => Promise<T>;

type View = Pick<Store, 'load' | 'since' | 'jobs' | 'aside' | 'setting' | 'settings' | 'shop'>;

/**
 * What is kept, as the screens read it: the rows of the database, and over them the rows that only the journal has
 * yet. The journal is read first. A row that reaches the database between the two reads is then read twice; in the
 * other order it would be missed.
 */
export function viewOf({ connection, ahead, seen }: StoreContext): View {
  const read: Read = (work, none, how) => (ahead.all() ? Promise.resolve(none) : connection.use(work, how));

  async function loadAll(job: string) {
    const more = readable(ahead.log(job));
    const { entries, single, bad } = await read((db) => readLog(db, job), noLog, 'long');
    if (bad > 0) await outOfTheWay(job, single);
    return { entries: merge(entries, more), setAside: bad };
  }

  /** Where they cannot be moved, on a full disk or in a database of a later version, the job opens without them. */
  const outOfTheWay = (job: string, single: readonly Bad[]): Promise<void> =>
    connection.write((db) => setAside(db, job, single), 'long').catch(() => undefined);

  const lineOf = async (id: string) =>
    lineFrom(id, ahead.all() ? ahead.log(id) : (await loadAll(id)).entries);

  // asked for in one breath, as a start does, they are read once; never what was read before something was kept
  let asked: ReturnType<typeof allValues> | undefined;
  const kept = () => {
    asked ??= read(allValues, { settings: new Map(), shop: new Map() });
    queueMicrotask(() => {
      asked = undefined;
    });
    return asked;
  };

  const values = async (of: ValueStore): Promise<ReadonlyMap<string, Json>> => {
    const more = ahead.values(of);
    return pairsIn(withLater((await kept())[of], more));
  };

  return {
    load: async (job) => {
      const loaded = await loadAll(job);
      seen(job, loaded.entries);
      return loaded;
    },
    since: async (job, from) => {
      const more = readable(ahead.log(job)).filter(({ count }) => count >= from);
      const found = merge(await read((db) => since(db, job, from), []), more);
      seen(job, found);
      return found;
    },
    jobs: async () => {
      const own = ahead.jobs();
      const lines = await read(listJobs, []);
      const anew = await Promise.all(own.map(lineOf));
      return lastFirst([...lines.filter(({ id }) => !own.includes(id)), ...anew]);
    },
    aside: async () => {
      const more = ahead.asides();
      return [...(await read(allAsides, [])), ...more];
    },
    setting: async (key) => (await values('settings')).get(key),
    settings: async () => Object.fromEntries(await values('settings')),
    shop: async () => readShop(await values('shop')),
  };
}

const noLog = { entries: [], single: [], bad: 0 };

/**
 * A job's line of the list, from its log. Of a log that only the journal has, only the fields of the line are
 * checked.
 */
function lineFrom(id: string, entries: readonly Entry[]): JobLine {
  const own = entries.filter((entry) => entry.kind === 'edit' && lineFields.includes(entry.path));
  const { values } = fold(readable(own));
  const [name = '', place = '', deleted = ''] = lineFields.map((path) => {
    const value = values.get(path);
    return typeof value === 'string' ? value : '';
  });
  const newest = entries.reduce<Entry | undefined>(
    (last, entry) => (last && inOrder(entry, last) < 0 ? last : entry),
    undefined,
  );
  const noted = entries.filter((entry) => entry.kind === 'edit' && entry.path.startsWith('next/'));
  const next = nextOf(readable(noted));
  return { id, name, place, last: newest?.at ?? '', ...next, ...(deleted ? { deleted } : {}) };
}

const allAsides = (db: Database) => reading(db.transaction('aside')).store.getAll();

type Stampeds = ReadonlyMap<string, Stamped>;

/** Of each key the later word. */
function withLater(kept: Stampeds, more: Stampeds): Stampeds {
  const both = new Map(kept);
  for (const [key, one] of more) takeLater(both, key, one);
  return both;
}
