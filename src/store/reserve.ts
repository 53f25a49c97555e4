import type { Connection } from './db';
import { reserveKey } from './own-keys';
import { sent, strict, whole } from './whole';

type Writing = Pick<Connection, 'write'>;

/** Gives up the reserve; false when there is none. */
export async function freed({ write }: Writing): Promise<boolean> {
  try {
    return await write((db) => {
      const tx = db.transaction('settings', 'readwrite', strict);
      return whole(tx, async () => {
        const there = (await tx.store.getKey(reserveKey)) !== undefined;
        if (there) sent(tx.store.delete(reserveKey));
        return there;
      });
    });
  } catch {
    return false;
  }
}

/** Characters laid by for the last change on a full phone: a tick takes about 300. */
const reserveSize = 200_000;

/** Lays the reserve by where there is none and room for it. */
export async function layBy({ write }: Writing): Promise<void> {
  try {
    await write((db) => {
      const tx = db.transaction('settings', 'readwrite', strict);
      return whole(tx, async () => {
        if ((await tx.store.getKey(reserveKey)) === undefined)
          sent(tx.store.put('.'.repeat(reserveSize), reserveKey));
      });
    });
  } catch {
    // the phone is full already
  }
}
