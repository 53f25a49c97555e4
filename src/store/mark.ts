/**
 * What the database holds of a job, and of settings and figures, in one text: it is another one after every change,
 * and the same where old entries were only packed. Asked of the browser itself, with no library: the first script of
 * the page asks it.
 *
 * @throws where there is no such database; none is made
 */
export async function markOf(job: string, name = 'knifeline'): Promise<string> {
  const db = await opened(name);
  try {
    return await read(db, job);
  } finally {
    db.close();
  }
}

const opened = (name: string): Promise<IDBDatabase> =>
  new Promise((resolve, reject) => {
    const asked = indexedDB.open(name);
    asked.onupgradeneeded = () => asked.transaction?.abort();
    asked.onerror = reject;
    asked.onsuccess = () => {
      const db = asked.result;
      db.onversionchange = () => db.close(); // a newer page waits for nothing of this
      resolve(db);
    };
  });

type EntryKey = readonly [job: string, device: string, count: number];
type PackKey = readonly [job: string, no: number, size: number];

function read(db: IDBDatabase, job: string): Promise<string> {
  const tx = db.transaction(['entries', 'packs', 'settings']);
  const log = IDBKeyRange.bound([job], [job, []]);
  const moments = IDBKeyRange.bound('at/', 'at0'); // `0` comes right after `/`
  const keys = (store: string, range: IDBKeyRange) => tx.objectStore(store).getAllKeys(range);
  const single = keys('entries', log);
  const packs = keys('packs', log);
  const written = keys('settings', moments);
  const when = tx.objectStore('settings').getAll(moments);
  return new Promise((resolve, reject) => {
    tx.onabort = reject;
    tx.oncomplete = () => {
      const counts = (single.result as unknown as EntryKey[]).map(([, , count]) => count);
      const packed = (packs.result as unknown as PackKey[]).reduce((sum, [, , size]) => sum + size, 0);
      const log = [counts.length + packed, Math.max(...counts)];
      resolve(JSON.stringify([log, written.result, when.result]));
    };
  });
}
