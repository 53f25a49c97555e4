import type { Connection, Database } from './db';
import type { Row } from './journal/row';
import type { StoreContext } from './store-context';

/**
 * What brings the copies to hold the same, takes entries in and sets rows aside comes in a file of its own, since the
 * first screen has no need of it. Where it does not come, each of these fails as if the database did not answer; the
 * next call asks for it again.
 */
const copies = () => import('./reconcile-copies');

export const keepEven = async (here: StoreContext): Promise<number> => (await copies()).keepEven(here);

export const purgeJobs = async (here: StoreContext, now: string): Promise<void> =>
  (await copies()).purgeJobs(here, now);

export const packLogs = async (here: StoreContext): Promise<void> => (await copies()).packLogs(here);

export const addEntries: typeof import('./take-in').addEntries = async (...all) =>
  (await copies()).addEntries(...all);

export const setAside: typeof import('./set-aside').setAside = async (...all) =>
  (await copies()).setAside(...all);

/** Gives up the reserve; false where there is none, or it cannot be asked for. */
export const freed = (connection: Connection): Promise<boolean> =>
  copies().then(
    (there) => there.freed(connection),
    () => false,
  );

export const restore = async (db: Database, rows: readonly Row[]): Promise<number> =>
  (await copies()).restore(db, rows);

/** Writes what the journal gave back into the emptied database, while the screens show it already (D8). */
export async function fillBehind(
  { ahead, connection, ...here }: StoreContext,
  rows: readonly Row[],
): Promise<void> {
  here.restored(rows.filter(([kind]) => kind === 'log').length);
  try {
    await connection.write((db) => restore(db, rows), 'long');
    ahead.clear(ahead.turn());
    here.tookValues();
  } catch {
    ahead.beside();
    here.setKeptIn('journal');
  }
}
