import type { Database } from './db';
import type { Json } from './entry';
import { isBehind, reserveKey } from './journal/notes';
import type { Here } from './keeping';
import { fold, merge } from './log';
import { type JobLine, lastFirst, listJobs, load, readable, since } from './reads';
import { readShop } from './shop-rows';
import type { Store } from './store';
import { reading } from './whole';

type View = Pick<Store, 'load' | 'since' | 'jobs' | 'aside' | 'setting' | 'settings' | 'shop'>;

/** What is kept, as the screens read it: the database, and over it what the journal alone has yet. */
export function viewOf({ connection, ahead, seen }: Here): View {
  const read = <T>(work: (db: Database) => Promise<T>, none: T, how?: 'long'): Promise<T> =>
    ahead.all() ? Promise.resolve(none) : connection.use(work, how);

  async function loadAll(job: string) {
    const { entries, setAside } = await read((db) => load(db, job), { entries: [], setAside: 0 }, 'long');
    return { entries: merge(entries, readable(ahead.log(job))), setAside };
  }

  /** A job's line from its whole log. */
  async function lineOf(id: string): Promise<JobLine> {
    const { entries } = await loadAll(id);
    const { values } = fold(entries);
    const [name = '', place = '', deleted = ''] = ['name', 'place', 'deleted'].map((path) => {
      const value = values.get(path);
      return typeof value === 'string' ? value : '';
    });
    const last = entries[entries.length - 1]?.at ?? '';
    return { id, name, place, last, ...(deleted ? { deleted } : {}) };
  }

  const values = async (of: 'settings' | 'shop'): Promise<ReadonlyMap<string, Json>> => {
    const kept = new Map(await read((db) => allOf(db, of), []));
    for (const [key, value] of ahead.values(of))
      if (value === undefined) kept.delete(key);
      else kept.set(key, value);
    return kept;
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
      const lines = await read(listJobs, []);
      const own = [...ahead.jobs()];
      const anew = await Promise.all(own.map(lineOf));
      return lastFirst([...lines.filter(({ id }) => !own.includes(id)), ...anew]);
    },
    aside: async () => [
      ...(await read((db) => reading(db.transaction('aside')).store.getAll(), [])),
      ...ahead.asides(),
    ],
    setting: async (key) => (await values('settings')).get(key),
    settings: async () => {
      const all = [...(await values('settings'))];
      return Object.fromEntries(all.filter(([key]) => key !== reserveKey && !isBehind(key)));
    },
    shop: async () => readShop(await values('shop')),
  };
}

async function allOf(db: Database, of: 'settings' | 'shop'): Promise<readonly (readonly [string, Json])[]> {
  const { store } = reading(db.transaction(of));
  const keys = await store.getAllKeys();
  const all = await store.getAll();
  return keys.map((key, k) => [key, (all[k] ?? null) as Json]);
}
