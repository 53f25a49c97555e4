import { err, ok, type Result } from '../length/result';
import { type Connection, type Database, type SaveError, saveError } from './db';
import type { Entry, Json } from './entry';
import { evenOut } from './journal/even';
import type { Journal } from './journal/journal';
import { aloneNote, behindKey, behindOf, noteOf } from './journal/notes';
import { restore } from './journal/restore';
import type { Row } from './journal/row';
import type { Keeper } from './keeper';
import type { Pages } from './pages';
import { freed, layBy } from './reserve';
import {
  type Added,
  addEntries,
  type Incoming,
  keptOfTries,
  type NewAct,
  prepareAct,
  purge,
  put,
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
  /** What the journal notes besides when it takes the change alone, and when that was. */
  readonly note: (now: string) => readonly Row[];
  /** What the database notes when it alone took the change. */
  readonly behind: string;
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
  const { tell, rows, note, alone, behind } = keep;
  if (here.connection.readOnly()) return err({ code: 'read-only' });
  await here.filled();
  const done = await tried(here, keep);
  if ('broken' in done) {
    const value = alone?.();
    if (value === undefined || !(await here.journal?.append([...rows(value), ...note(here.now())])))
      return err(done.broken);
    here.ahead.take(rows(value));
    here.setKeptIn('journal');
    return ok(value);
  }
  if (!done.ok) return done;
  here.pages.tell(tell);
  here.ahead.overtaken(rows(done.value));
  const second = (await here.journal?.append(rows(done.value))) ?? false;
  if (!second) missed(here, behind);
  // both take changes again: each may lack what the other took alone
  else if (here.keptIn() !== 'both') void keepEven(here).catch(() => undefined);
  return done;
}

/** The journal missed something: noted in the database, for a start that finds both of the same length, and of which figure. */
function missed(here: Here, behind: string): void {
  const first = here.keptIn() === 'both';
  here.setKeptIn('database');
  if (here.journal && (first || behind !== behindKey))
    void here.connection.use((db) => put(db, 'settings', [behind, here.now()])).catch(() => undefined);
}

/** The database was found empty while the journal did not answer; undefined while it still does not. */
async function fill(here: Here, journal: Journal): Promise<number | undefined> {
  const rows = await journal.rows();
  if (!rows) return undefined;
  const back = await here.connection.use((db) => restore(db, rows), 'long');
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
    return await here.connection.use(work);
  } catch (error) {
    const why = saveError(error);
    if (why.code !== 'full') return { broken: why };
    return (await freed(here.connection)) ? again(here, work) : err(why);
  }
}

/** With the reserve given up, once more. */
async function again<T>(here: Here, work: Keep<T>['work']): Promise<Done<T>> {
  try {
    return await here.connection.use(work);
  } catch (error) {
    return err(saveError(error));
  }
}

const logRows = (entries: readonly Entry[]): readonly Row[] => entries.map((entry): Row => ['log', entry]);

/** What was written of an act before, also by an earlier call: tried again, it is there once. */
const triesOf = new WeakMap<NewAct, (readonly Entry[])[]>();

export async function keepAct(here: Here, act: NewAct): Promise<Result<readonly Entry[], SaveError>> {
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
    note: (now) => [['settings', aloneNote, now]],
    behind: behindKey,
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
    note: () => [],
    behind: behindKey,
    rows: ({ entries, aside }) => [...logRows(entries), ...aside.map((one): Row => ['aside', one])],
  });
  return done.ok ? ok(done.value.entries.length) : done;
}

export function keepValue(
  here: Here,
  store: 'settings' | 'shop',
  pair: readonly [string, Json | undefined],
): Promise<Result<null, SaveError>> {
  return kept(here, {
    tell: 'settings',
    work: (db) => put(db, store, pair),
    rows: () => [[store, pair[0], pair[1] ?? null]],
    note: (now) => [['settings', noteOf(store, pair[0]), now]],
    behind: behindOf(store, pair[0]),
    alone: () => null,
  });
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
  await connection.use(async (db) => void gone.push(...(await purge(db, before))), 'long');
  if (gone.length > 0) await journal?.append(gone.map((job): Row => ['purge', job]));
}

const under = new WeakMap<Here, Promise<unknown>>();

/** One after the other: what compares the copies must not meet a purge halfway through them. */
function inTurn<T>(here: Here, work: () => Promise<T>): Promise<T> {
  const next = (under.get(here) ?? Promise.resolve()).catch(() => undefined).then(work);
  under.set(here, next);
  return next;
}

/** Database and journal brought to hold the same, and the reserve laid by; says how many entries the database had lost. */
export const keepEven = (here: Here): Promise<number> => inTurn(here, () => evenNow(here));

async function evenNow(here: Here): Promise<number> {
  const { connection, journal, ahead } = here;
  if (connection.readOnly()) return 0;
  await here.filled();
  await layBy(connection);
  if (!journal) return 0;
  const back = here.unfilled() ? await fill(here, journal) : 0;
  if (back === undefined) return 0;
  const turn = ahead.turn();
  let told = false;
  try {
    const { restored, both, values } = await evenOut(connection.use, journal, (rows) => {
      told = ahead.show(rows) || told;
    });
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
export async function fillBehind(here: Here): Promise<void> {
  const { ahead, connection } = here;
  const rows = ahead.rows();
  here.restored(rows.filter(([kind]) => kind === 'log').length);
  try {
    await connection.use((db) => restore(db, rows), 'long');
    ahead.clear(ahead.turn());
  } catch {
    ahead.beside();
    here.setKeptIn('journal');
  }
}
