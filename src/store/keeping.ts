import { err, ok, type Result } from '../length/result';
import { type Connection, type Database, type SaveError, saveError } from './db';
import type { Entry, Json } from './entry';
import { evenOut } from './journal/even';
import type { Journal } from './journal/journal';
import { restore } from './journal/restore';
import type { Row } from './journal/row';
import type { Keeper } from './keeper';
import { aloneKey, behindKey } from './own-keys';
import type { Pages } from './pages';
import { freed, layBy } from './reserve';
import { laterThan, putValue, type Stamped, type ValueRow, type ValueStore } from './values';
import { sent, strict, whole } from './whole';
import {
  type Added,
  addEntries,
  type Incoming,
  keptOfTries,
  type NewAct,
  prepareAct,
  purge,
  writeAct,
} from './writes';

/** An open store's parts: the database, the journal beside it, and how the two stand. */
export type Here = {
  readonly connection: Connection;
  readonly device: string;
  readonly now: () => string;
  readonly pages: Pages;
} & Keeper;

type Keep<T> = {
  /** What the other pages are told once it is kept. */
  readonly tell: string;
  readonly work: (db: Database) => Promise<Result<T, SaveError>>;
  readonly rows: (value: T) => readonly Row[];
  /** What the journal notes besides when it takes the change alone. */
  readonly note?: (now: string) => readonly Row[];
  /** What an earlier try of it that ended unheard has kept after all. */
  readonly after?: (db: Database) => Promise<T | undefined>;
  /** What it comes to without the database; undefined where it cannot be had so. */
  readonly alone?: () => T | undefined;
};

/**
 * Keeps a change in both copies, the database first: what it refuses is in neither. Where the database does not answer at all
 * the journal takes the change alone.
 */
async function kept<T>(here: Here, keep: Keep<T>): Promise<Result<T, SaveError>> {
  const { tell, rows, note, alone } = keep;
  if (here.connection.readOnly()) return err({ code: 'read-only' });
  await here.filled();
  const done = await tried(here, keep);
  if ('broken' in done) {
    const value = alone?.();
    const noted = note?.(here.now()) ?? [];
    if (value === undefined || !(await here.journal?.append([...rows(value), ...noted])))
      return err(done.broken);
    here.ahead.take(rows(value));
    here.setKeptIn('journal');
    return ok(value);
  }
  if (!done.ok) return done;
  here.pages.tell(tell);
  here.ahead.overtaken(rows(done.value));
  const second = (await here.journal?.append(rows(done.value))) ?? false;
  if (!second) missed(here);
  // both take changes again: each may lack what the other took alone
  else if (here.keptIn() !== 'both') void keepEven(here).catch(() => undefined);
  return done;
}

/** The journal missed something: noted in the database, for a start that finds both of the same length. */
function missed(here: Here): void {
  const first = here.keptIn() === 'both';
  here.setKeptIn('database');
  here.ahead.missed();
  if (here.journal && first)
    void here.connection.write((db) => note(db, behindKey, here.now())).catch(() => undefined);
}

async function note(db: Database, key: string, at: string): Promise<void> {
  const tx = db.transaction('settings', 'readwrite', strict);
  await whole(tx, async () => sent(tx.store.put(at, key)));
}

/** The database was found empty while the journal did not answer; undefined while it still does not. */
async function fill(here: Here, journal: Journal): Promise<number | undefined> {
  const rows = await journal.rows();
  if (!rows) return undefined;
  const back = await here.connection.write((db) => restore(db, rows), 'long');
  here.unfilled(false);
  return back;
}

/** In the database; where that fails, what a try that ended unheard may have kept. */
async function tried<T>(here: Here, { work, after }: Keep<T>): Promise<Done<T>> {
  const done = await inDatabase(here, work);
  if (!('broken' in done) && done.ok) return done;
  const late = after && (await here.connection.use(after).catch(() => undefined));
  return late === undefined ? done : ok(late);
}

type Done<T> = Result<T, SaveError> | { readonly broken: SaveError };

async function inDatabase<T>(here: Here, work: Keep<T>['work']): Promise<Done<T>> {
  try {
    return await here.connection.write(work);
  } catch (error) {
    const why = saveError(error);
    if (why.code === 'failed') return { broken: why };
    if (why.code === 'read-only') return err(why);
    return (await freed(here.connection)) ? again(here, work) : err(why);
  }
}

/** With the reserve given up, once more. */
async function again<T>(here: Here, work: Keep<T>['work']): Promise<Done<T>> {
  try {
    return await here.connection.write(work);
  } catch (error) {
    return err(saveError(error));
  }
}

const logRows = (entries: readonly Entry[]): readonly Row[] => entries.map((entry): Row => ['log', entry]);

/** What was written of an act before, also by an earlier call: tried again, it is there once. */
const triesOf = new WeakMap<NewAct, (readonly Entry[])[]>();

/** The last act of each job that is on its way. */
const onTheWay = new WeakMap<Here, Map<string, Promise<unknown>>>();

/** Acts of a job one after the other: one that is tried again must not land over what was done after it. */
export function keepAct(here: Here, act: NewAct): Promise<Result<readonly Entry[], SaveError>> {
  const jobs = onTheWay.get(here) ?? new Map<string, Promise<unknown>>();
  onTheWay.set(here, jobs);
  const next = (jobs.get(act.job) ?? Promise.resolve()).catch(() => undefined).then(() => keepNow(here, act));
  jobs.set(act.job, next);
  return next;
}

async function keepNow(here: Here, act: NewAct): Promise<Result<readonly Entry[], SaveError>> {
  const tries = triesOf.get(act) ?? [];
  triesOf.set(act, tries);
  const done = await kept(here, {
    tell: act.job,
    work: async (db) => {
      const written = await writeAct(db, here, { act, tried: tries, after: here.last(act.job) });
      // at once: another act may find the database emptied before the journal has this one
      if (written.ok) here.seen(act.job, written.value);
      return written;
    },
    after: async (db) => (tries.length > 0 ? keptOfTries(db, tries) : undefined),
    rows: logRows,
    alone: () => {
      // under a name of this page alone: nobody else takes that place in the log
      const made = prepareAct({ device: here.aloneName, now: here.now }, act, here.last(act.job));
      if (made.ok) here.seen(act.job, made.value);
      return made.ok ? made.value : undefined;
    },
    note: (now) => [['settings', aloneKey, true, now]],
  });
  if (done.ok) here.seen(act.job, done.value);
  return done;
}

export async function keepEntries(here: Here, incoming: Incoming): Promise<Result<number, SaveError>> {
  const tries: Added[] = [];
  const done = await kept(here, {
    tell: `reload ${incoming.job}`,
    work: (db) => addEntries(db, { ...incoming, now: here.now() }, tries),
    after: async (db) => {
      const entries = await keptOfTries(
        db,
        tries.map((added) => added.entries),
      );
      return tries.find((added) => added.entries === entries);
    },
    rows: ({ entries, aside }) => [...logRows(entries), ...aside.map((one): Row => ['aside', one])],
  });
  return done.ok ? ok(done.value.entries.length) : done;
}

/** Of each setting and figure the word asked for last, and the stamp of the last one kept. */
const asked = new WeakMap<Here, Map<string, Stamped>>();

/** One tried again writes the word asked for last: never an older over a newer. */
export async function keepValue(
  here: Here,
  [store, key, value]: readonly [ValueStore, string, Json],
): Promise<Result<null, SaveError>> {
  const name = `${store} ${key}`;
  const words = asked.get(here) ?? new Map<string, Stamped>();
  const last = () => words.get(name) ?? { value, at: '' };
  asked.set(here, words.set(name, { value, at: last().at }));
  const done = await kept(here, {
    tell: 'settings',
    work: async (db) => ok(await putValue(db, store, key, { value: last().value, at: here.now() })),
    rows: (row) => [row],
    alone: (): ValueRow => [store, key, last().value, laterThan(last().at, here.now())],
  });
  if (!done.ok) return done;
  words.set(name, { value: last().value, at: done.value[3] });
  return ok(null);
}

/** Only when both copies hold the same: a job may have been brought back in one of them alone. */
export const purgeJobs = (here: Here, before: string): Promise<void> =>
  inTurn(here, async () => {
    await evenNow(here);
    if (here.journal === undefined || here.keptIn() === 'both') await purgeNow(here, before);
  });

async function purgeNow({ connection, journal }: Here, before: string): Promise<void> {
  if (connection.readOnly()) return;
  const gone: string[] = [];
  await connection.write(async (db) => void gone.push(...(await purge(db, before))), 'long');
  if (gone.length > 0) await journal?.append(gone.map((job): Row => ['purge', job]));
}

const under = new WeakMap<Here, Promise<unknown>>();

/** One after the other: what compares the copies must not meet a purge halfway through them. */
function inTurn<T>(here: Here, work: () => Promise<T>): Promise<T> {
  const next = (under.get(here) ?? Promise.resolve()).catch(() => undefined).then(work);
  under.set(here, next);
  return next;
}

/** Asked for and not begun yet: one serves all who ask meanwhile. */
const waiting = new WeakMap<Here, Promise<number>>();

/** Database and journal brought to hold the same, and the reserve laid by; says how many entries the database had lost. */
export function keepEven(here: Here): Promise<number> {
  const next =
    waiting.get(here) ??
    inTurn(here, () => {
      waiting.delete(here);
      return evenNow(here);
    });
  waiting.set(here, next);
  return next;
}

async function evenNow(here: Here): Promise<number> {
  const { connection, journal, ahead } = here;
  if (connection.readOnly()) return 0;
  await here.filled();
  await layBy(connection);
  if (!journal) return 0;
  const back = here.unfilled() ? await fill(here, journal) : 0;
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
    const { restored, both, values } = await evenOut({ connection, journal, began: here.now(), show });
    if (both) ahead.clear(turn);
    // what the journal took alone meanwhile waits for the next time
    if (ahead.turn() === turn) here.setKeptIn(both ? 'both' : 'database');
    if (values) here.tookValues();
    // whoever asked for it, the screen hears
    if (back + restored > 0) here.restored(back + restored);
    return back + restored;
  } catch (error) {
    if (told) showBeside(here);
    throw error;
  }
}

/** The database takes nothing: what the journal alone has is shown all the same. */
function showBeside(here: Here): void {
  here.setKeptIn('journal');
  here.tookValues();
  here.restored(0);
}

/** What the journal gave back is written into the emptied database while it is shown already. */
export async function fillBehind({ ahead, connection, ...here }: Here, rows: readonly Row[]): Promise<void> {
  here.restored(rows.filter(([kind]) => kind === 'log').length);
  try {
    await connection.write((db) => restore(db, rows), 'long');
    ahead.clear(ahead.turn());
  } catch {
    ahead.beside();
    here.setKeptIn('journal');
  }
}
