import type { Json } from '../job/entry';
import { isId } from '../job/paths';
import { err, ok, type Result } from '../length/result';
import { toStored } from '../length/stored';
import { viewOf } from './combined-reads';
import type { Store, StoreOptions } from './contract';
import { type Connection, connect, type Database, type OpenError, openError, openPatience } from './db';
import type { Row } from './journal/row';
import { frozen } from './journal/starting';
import { isEmpty, readingLog } from './log-rows';
import { nameKey, openingKey } from './own-keys';
import { pagesOn } from './pages';
import { fillBehind, keepEven, packLogs, purgeJobs, restore } from './reconciling';
import { keepAct, keepEntries, keepValue } from './save';
import { aloneNameOf, isOurs, type Keeper, keeperOf, type StoreContext } from './store-context';
import { latestOf, stampedIn, valueStores } from './values';
import { atOnce, reading, strict, whole } from './whole';
import type { NewAct } from './writes';

export type { KeptIn, Store } from './contract';
export type { JobLine } from './reads';
export type { NewAct } from './writes';

/** Opens everything kept on this phone; a database the browser wiped is filled again from the journal first. */
export async function openStore(options: StoreOptions): Promise<Result<Store, OpenError>> {
  const { name = 'knifeline', journal, onGone = () => undefined, patience = 3000 } = options;
  const keeper = keeperOf(journal, options.now);
  const late = setTimeout(() => options.onSlow?.(), openPatience);
  try {
    const { refill, toFill } = filler(keeper);
    const opened = await connect({ name, onGone, patience, refill });
    return opened.ok ? await storeAt(opened.value, { keeper, toFill: toFill() }, options) : opened;
  } catch (error) {
    return err(openError(error));
  } finally {
    clearTimeout(late);
  }
}

type Filling = { readonly keeper: Keeper; readonly toFill: readonly Row[] | undefined };

async function storeAt(
  connection: Connection,
  { keeper, toFill }: Filling,
  { randomId, now, name = 'knifeline' }: StoreOptions,
): Promise<Result<Store, OpenError>> {
  try {
    // a page that only shows what a newer version keeps names no phone, and is never taken to stand
    const { device, last, froze }: Started = connection.readOnly()
      ? { device: randomId(), froze: false }
      : await beginStart(connection, keeper, { randomId, now });
    const aloneName = aloneNameOf(device, randomId());
    const here = { connection, device, aloneName, now, pages: pagesOn(name), ...keeper };
    if (toFill) keeper.fillWith(fillBehind(here, toFill));
    return ok({ ...storeOn(here, froze), last });
  } catch (error) {
    connection.close();
    return err(openError(error));
  }
}

/**
 * An empty database is new, or the browser emptied it: what the journal holds comes back first. At the start it is
 * shown at once and written behind the screens; ten thousand rows take a database some seconds.
 */
function filler(keeper: Keeper) {
  const { journal, ahead, restored, unfilled, sawStamp } = keeper;
  let tries = 0;
  let stands = false;
  let rows: readonly Row[] | undefined;
  return {
    refill: async (db: Database): Promise<void> => {
      tries += 1;
      const own = tries;
      if (!journal || !(await isEmpty(readingLog(db)))) return;
      // at the start the first screen does not wait for it: what it holds comes when it answers
      const found = await (stands ? journal.rows() : soon(journal.rows()));
      if (own !== tries) return; // given up on meanwhile
      unfilled(found === undefined);
      if (!found || found.length === 0) return;
      if (stands) return restored(await restore(db, found));
      rows = found;
    },
    /** Called when the store is open: shows the rows the database is to be filled with, and returns them. */
    toFill: () => {
      stands = true;
      if (rows) ahead.show(rows, 'all');
      for (const row of rows ?? []) if (row[0] === 'settings' || row[0] === 'shop') sawStamp(row[3] ?? '');
      return rows;
    },
  };
}

/** How long a start waits for a journal that may never answer, milliseconds. */
const atTheStart = 2000;

function soon<T>(asked: Promise<T>): Promise<T | undefined> {
  return new Promise((resolve) => {
    const late = setTimeout(() => resolve(undefined), atTheStart);
    const end = (value: T | undefined): void => {
      clearTimeout(late);
      resolve(value);
    };
    asked.then(end, () => end(undefined));
  });
}

type Started = { readonly device: string; readonly last?: string | undefined; readonly froze: boolean };

/** The phone's own name, what the last start left, where it never came to its screen, and the job it had in hand. */
type Begun = { readonly device: string; readonly left?: Json | undefined; readonly job?: Json | undefined };

/** Names the phone, notes that a start is on its way, and says whether the one before it froze. */
async function beginStart(
  connection: Connection,
  keeper: Keeper,
  { randomId, now }: Pick<StoreOptions, 'randomId' | 'now'>,
): Promise<Started> {
  const { device, left, job } = await nameOfPhone(connection, keeper, randomId);
  const last = typeof job === 'string' ? job : undefined;
  const at = now();
  const asked = keeper.journal?.starting(at);
  // not waited for, and refused where there is no room: a start has no need of it
  const note = (text: string): void =>
    void connection.write((db) => db.put('settings', text, openingKey)).catch(() => undefined);
  note(at);
  if (!isUnended(left, at)) return { device, last, froze: false };
  const seen = asked && (await soon(asked));
  if (seen === startOf(left)) return { device, last, froze: false };
  note(at + unseen);
  return { device, last, froze: seen === frozen || left.endsWith(unseen) };
}

/** After the note of a start: the one before it did not come to its screen either, and nobody saw why. */
const unseen = ' again';

const startOf = (note: string): string => note.replace(unseen, '');

/** A new name goes to the journal too. */
async function nameOfPhone(
  { use, write }: Connection,
  { journal, sawStamp }: Keeper,
  randomId: () => string,
): Promise<Begun> {
  let made: string | undefined;
  const make = () => {
    made ??= randomId();
    return made;
  };
  // every start but the first writes nothing, and so waits for no disk
  const known = await use((db) => beginIn(reading(db.transaction(valueStores)), sawStamp));
  if (known.device !== undefined) return { ...known, device: known.device };
  const begun = await write((db) => begin(db, make, sawStamp));
  if (begun.device === made) await journal?.append([['settings', nameKey, begun.device]]);
  return begun;
}

async function begin(db: Database, randomId: () => string, sawStamp: (at: string) => void): Promise<Begun> {
  const tx = db.transaction(valueStores, 'readwrite', strict);
  return whole(tx, async () => {
    const found = await beginIn(tx, sawStamp);
    const device = found.device ?? randomId();
    if (found.device === undefined) await tx.objectStore('settings').put(device, nameKey);
    return { ...found, device };
  });
}

type Kept = { readonly get: (key: string) => Promise<Json | undefined> };
type Found = Omit<Begun, 'device'> & { readonly device: string | undefined };

/** What a start finds, in a transaction over settings and figures. */
async function beginIn(tx: Parameters<typeof stampedIn>[0], sawStamp: (at: string) => void): Promise<Found> {
  const settings = tx.objectStore('settings') as Kept;
  const [stamped, name, left, job] = await atOnce(
    () => stampedIn(tx),
    () => settings.get(nameKey),
    () => settings.get(openingKey),
    () => settings.get('job'),
  );
  sawStamp(latestOf(stamped));
  return { device: typeof name === 'string' && isId(name) ? name : undefined, left, job };
}

/** Another page that starts at the same time is no start that froze. Milliseconds. */
const grace = 3000;

/**
 * Whether the start before left a note: it never came to its screen. It may only have been killed: that is for the
 * journal to say, by the note, which saw how long it took. Where nobody saw it, it froze if the one before it did not
 * come to its screen either.
 */
const isUnended = (left: Json | undefined, at: string): left is string =>
  typeof left === 'string' && Date.parse(at) - Date.parse(startOf(left)) > grace;

function storeOn(here: StoreContext, froze: boolean): Omit<Store, 'last'> {
  const { device, pages, connection } = here;
  let stood = false;
  const act = (act: NewAct) => keepAct(here, act);
  return {
    ...viewOf(here),
    device,
    connection,
    own: (name) => isOurs(device, name),
    restored: here.howMany,
    onRestored: here.onRestored,
    onValues: here.onValues,
    makeJob: act,
    append: act,
    addEntries: (job, entries, aside = []) => keepEntries(here, { job, entries, aside }),
    purge: (now) => purgeJobs(here, now),
    pack: () => packLogs(here),
    keep: (key, value) => keepValue(here, ['settings', key, value]),
    keepShop: (key, value) => keepValue(here, ['shop', key, value ? toStored(value) : null]),
    evenOut: () => keepEven(here),
    secure: async () => {
      await keepEven(here);
      return here.journal === undefined || here.keptIn() === 'both';
    },
    froze,
    stands: () => {
      if (stood || here.connection.readOnly()) return;
      stood = true; // once: a page that is left writes nothing more
      here.journal?.stood();
      void here.connection.write((db) => db.delete('settings', openingKey)).catch(() => undefined);
    },
    readOnly: here.connection.readOnly,
    keptIn: here.keptIn,
    onKeptIn: here.onKeptIn,
    onChange: pages.hear,
    close: () => {
      pages.close();
      here.journal?.close();
      here.connection.close();
    },
  };
}
