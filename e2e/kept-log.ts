import type { Page } from '@playwright/test';
import { canonical } from '../src/job/canonical';
import type { Entry } from '../src/job/entry';
import { rowKey } from '../src/store/journal/row';
import { unpacked } from '../src/store/log-rows';
import type { Pack } from '../src/store/pack';

/** The log of every job as the database has it, packed or single, one line an entry, in order of the keys. */
export async function keptLog(page: Page): Promise<readonly string[]> {
  const [packs, single] = await page.evaluate(async () => {
    const db = await new Promise<IDBDatabase>((resolve, reject) => {
      const open = indexedDB.open('knifeline');
      open.onsuccess = () => resolve(open.result);
      open.onerror = () => reject(open.error);
    });
    const tx = db.transaction(['packs', 'entries']);
    const all = (store: string) =>
      new Promise<unknown[]>((resolve, reject) => {
        const asked = tx.objectStore(store).getAll();
        asked.onsuccess = () => resolve(asked.result);
        asked.onerror = () => reject(asked.error);
      });
    const found = [await all('packs'), await all('entries')] as const;
    db.close();
    return found;
  });
  const rows = unpacked({ packs: packs as readonly Pack[], single }) as readonly Entry[];
  return [...rows].sort((a, b) => (rowKey(a) < rowKey(b) ? -1 : 1)).map((row) => canonical(row));
}
