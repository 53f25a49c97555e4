import type { Database } from './db';
import { evenOut } from './journal/difference';
import type { Journal } from './journal/journal';
import { restore } from './journal/restore';
import type { Row } from './journal/row';
import { packLog } from './pack-up';
import { purge } from './purge';
import { layBy } from './reserve';
import type { StoreContext } from './store-context';
import { reading } from './whole';

export { restore } from './journal/restore';
export { freed } from './reserve';
export { setAside } from './set-aside';
export { addEntries } from './take-in';

/**
 * Purges old deleted jobs, but only when both copies hold the same: one alone may know that a job was brought back
 * (D15).
 */
export const purgeJobs = (here: StoreContext, now: string): Promise<void> =>
  inTurn(here, async () => {
    await evenNow(here);
    const { connection, journal } = here;
    if (connection.readOnly() || (journal !== undefined && here.keptIn() !== 'both')) return;
    const gone = await connection.write((db) => purge(db, now), 'long');
    if (gone.length > 0) await journal?.append(gone.map((job): Row => ['purge', job]));
  });

/** Packs the old entries of every log, a thousand in a transaction, so that other pages come in between. */
export const packLogs = (here: StoreContext): Promise<void> =>
  inTurn(here, async () => {
    if (here.connection.readOnly()) return;
    await here.filled();
    for (const job of await here.connection.use(allJobs))
      while (await here.connection.write((db) => packLog(db, job), 'long'));
  });

const allJobs = (db: Database) => reading(db.transaction('jobs')).store.getAllKeys();

const under = new WeakMap<StoreContext, Promise<unknown>>();

/** Runs one after the other: comparing the copies must not meet half a purge. */
function inTurn<T>(here: StoreContext, work: () => Promise<T>): Promise<T> {
  const next = (under.get(here) ?? Promise.resolve()).catch(() => undefined).then(work);
  under.set(here, next);
  return next;
}

/** A comparison asked for and not begun yet: it serves all who ask meanwhile. */
const waiting = new WeakMap<StoreContext, Promise<number>>();

/**
 * Brings database and journal to hold the same, and lays the reserve by. Returns how many entries the database had
 * lost.
 */
export function keepEven(here: StoreContext): Promise<number> {
  const next =
    waiting.get(here) ??
    inTurn(here, () => {
      waiting.delete(here);
      return evenNow(here);
    });
  waiting.set(here, next);
  return next;
}

async function evenNow(here: StoreContext): Promise<number> {
  const { connection, journal, ahead } = here;
  if (connection.readOnly()) return 0;
  await here.filled();
  await layBy(connection);
  if (!journal) return 0;
  const refilled = here.unfilled();
  const back = refilled ? await fill(here, journal) : 0;
  if (back === undefined) {
    here.setKeptIn('database');
    return 0;
  }
  const turn = ahead.turn();
  let told = false;
  try {
    const show = (rows: readonly Row[]) => {
      told = ahead.show(rows) || told;
    };
    const { restored, both, values } = await evenOut({ connection, journal, show });
    if (both) ahead.clear(turn);
    // what the journal took alone meanwhile waits for the next time
    if (ahead.turn() === turn) here.setKeptIn(both ? 'both' : 'database');
    if (values || refilled) here.tookValues();
    // the screen hears of it, whoever asked
    if (back + restored > 0) here.restored(back + restored);
    return back + restored;
  } catch (error) {
    if (told) showBeside(here);
    throw error;
  }
}

/** Shows what the journal alone has while the database takes nothing. */
function showBeside(here: StoreContext): void {
  here.setKeptIn('journal');
  here.tookValues();
  here.restored(0);
}

/** Fills a database found empty while the journal did not answer; undefined while it still does not. */
async function fill(here: StoreContext, journal: Journal): Promise<number | undefined> {
  const rows = await journal.rows();
  if (!rows) return undefined;
  const back = await here.connection.write((db) => restore(db, rows), 'long');
  here.unfilled(false);
  return back;
}
