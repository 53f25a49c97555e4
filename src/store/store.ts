import type { Length } from '../length/length';
import { err, ok, type Result } from '../length/result';
import { toStored } from '../length/stored';
import type { Shop } from '../trade/grooves/board';
import { type Connection, connect, type Database, nameOf, type OpenError, type SaveError } from './db';
import type { Entry, Json } from './entry';
import { fillBehind, keepEven, purgeJobs } from './evening';
import type { Journal } from './journal/journal';
import { restore } from './journal/restore';
import type { Row } from './journal/row';
import { aloneNameOf, type Here, isOurs, type Keeper, keeperOf } from './keeper';
import { keepAct, keepEntries, keepValue } from './keeping';
import type { Aside } from './migrations';
import { nameKey, openingKey } from './own-keys';
import { pagesOn } from './pages';
import { isId } from './paths';
import type { JobLine, Loaded } from './reads';
import { latestOf, stampedIn, valueStores } from './values';
import { viewOf } from './view';
import { reading, strict, whole } from './whole';
import type { NewAct } from './writes';

export type { JobLine, NewAct };

/**
 * - `both`: the database and the journal have it.
 * - `database`: the database alone; this browser has no place for a journal, or it does not answer.
 * - `journal`: the database does not take it; the journal has it, and gives it back at the next start.
 */
export type KeptIn = 'both' | 'database' | 'journal';

export type Store = {
  readonly device: string;
  /** Whether entries by this name are of this phone: also those the journal took alone. */
  readonly own: (name: string) => boolean;
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
  /** Once a start: removes for good what was deleted long ago, by this reading of the clock (ISO 8601) and those of starts before. */
  readonly purge: (now: string) => Promise<void>;
  /** Entries the database had lost and the journal gave back, so far. */
  readonly restored: () => number;
  /** Calls back with how many came back when the browser emptied the database under the open page. */
  readonly onRestored: (heard: (entries: number) => void) => void;
  /** Calls back when figures and settings the journal had taken alone are in the database. */
  readonly onValues: (heard: () => void) => void;
  /** Compares database and journal and gives each what it lacks; says how many entries the database had lost. */
  readonly evenOut: () => Promise<number>;
  /** Whether everything is in both copies, where there is a place for two; brings them even first. */
  readonly secure: () => Promise<boolean>;
  /** How many copies of the last change there are. */
  readonly keptIn: () => KeptIn;
  readonly onKeptIn: (heard: (now: KeptIn) => void) => void;
  /** The start before took long and never came to stand, or the last two never did. */
  readonly froze: boolean;
  /** The screen stands, or the page is left by hand: a frozen one gets to neither. */
  readonly stands: () => void;
  /** A newer version of the app has the database: nothing is written any more. */
  readonly readOnly: () => boolean;
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
  /** The second copy, where there is a place for it. */
  readonly journal?: Journal | undefined;
  /** How long one piece of work may take before it is tried again, milliseconds. */
  readonly patience?: number;
};

/** Opens everything kept on this phone; a database the browser wiped is filled again from the journal first. */
export async function openStore(options: StoreOptions): Promise<Result<Store, OpenError>> {
  const { name = 'knifeline', journal, onGone = () => undefined, patience = 3000 } = options;
  const keeper = keeperOf(journal, options.now);
  try {
    const { refill, toFill } = filler(keeper);
    const opened = await connect({ name, onGone, patience, refill });
    return opened.ok ? await storeAt(opened.value, { keeper, toFill: toFill() }, options) : opened;
  } catch (error) {
    return err({ code: 'no-storage', name: nameOf(error) });
  }
}

type Filling = { readonly keeper: Keeper; readonly toFill: readonly Row[] | undefined };

async function storeAt(
  connection: Connection,
  { keeper, toFill }: Filling,
  { randomId, now, name = 'knifeline' }: StoreOptions,
): Promise<Result<Store, OpenError>> {
  try {
    const { device, left } = connection.readOnly()
      ? { device: randomId() }
      : await nameOfPhone(connection, keeper, randomId);
    const at = now();
    const before = unended(left, at);
    const slow = keeper.journal?.starting();
    // not waited for, and refused where there is no room: a start has no need of it
    if (!connection.readOnly())
      void connection
        .write((db) => db.put('settings', before ? `${at} ${again}` : at, openingKey))
        .catch(() => undefined);
    const aloneName = aloneNameOf(device, randomId());
    const here = { connection, device, aloneName, now, pages: pagesOn(name), ...keeper };
    if (toFill) keeper.fillWith(fillBehind(here, toFill));
    const froze = before !== undefined && ((slow && (await soon(slow))) || before.endsWith(again));
    return ok(storeOn(here, froze));
  } catch (error) {
    connection.close();
    return err({ code: 'no-storage', name: nameOf(error) });
  }
}

/**
 * An empty database is new, or the browser emptied it: what the journal holds comes back first. At the start it is shown at once
 * and written behind the screens; ten thousand rows take a database some seconds.
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
      if (!journal || (await reading(db.transaction('log')).store.openKeyCursor()) !== null) return;
      // at the start the first screen does not wait for it: what it holds comes when it answers
      const found = await (stands ? journal.rows() : soon(journal.rows()));
      if (own !== tries) return; // given up on meanwhile
      unfilled(found === undefined);
      if (!found || found.length === 0) return;
      if (stands) return restored(await restore(db, found));
      rows = found;
    },
    /** The store stands: what is to be filled in, once it is shown. */
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

/** The phone's own name, and what the last start left, where it never came to its screen. */
type Begun = { readonly device: string; readonly left?: Json | undefined };

/** A new name goes to the journal too. */
async function nameOfPhone(
  { write }: Connection,
  { journal, sawStamp }: Keeper,
  randomId: () => string,
): Promise<Begun> {
  let made: string | undefined;
  const make = () => {
    made ??= randomId();
    return made;
  };
  const begun = await write((db) => begin(db, make, sawStamp));
  if (begun.device === made) await journal?.append([['settings', nameKey, begun.device]]);
  return begun;
}

async function begin(db: Database, randomId: () => string, sawStamp: (at: string) => void): Promise<Begun> {
  const tx = db.transaction(valueStores, 'readwrite', strict);
  return whole(tx, async () => {
    sawStamp(latestOf(await stampedIn(tx)));
    const settings = tx.objectStore('settings');
    const found = await settings.get(nameKey);
    const left = await settings.get(openingKey);
    const device = typeof found === 'string' && isId(found) ? found : randomId();
    if (found !== device) await settings.put(device, nameKey);
    return { device, left };
  });
}

/** Another page that starts at the same time is no start that froze. Milliseconds. */
const grace = 3000;

/**
 * The note of the start before, where that never came to its screen. It may have been killed: it froze if the journal saw that it
 * took long; where nobody saw it, two in a row did.
 */
const unended = (left: Json | undefined, at: string): string | undefined =>
  typeof left === 'string' && Date.parse(at) - Date.parse(left.split(' ')[0] ?? '') > grace
    ? left
    : undefined;
const again = 'again';

function storeOn(here: Here, froze: boolean): Store {
  const { device, pages } = here;
  let stood = false;
  const act = (act: NewAct) => keepAct(here, act);
  return {
    ...viewOf(here),
    device,
    own: (name) => isOurs(device, name),
    restored: here.howMany,
    onRestored: here.onRestored,
    onValues: here.onValues,
    makeJob: act,
    append: act,
    addEntries: (job, entries, aside = []) => keepEntries(here, { job, entries, aside }),
    purge: (now) => purgeJobs(here, now),
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
