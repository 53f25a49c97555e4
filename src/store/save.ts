import type { Entry, Json } from '../job/entry';
import { err, ok, type Result } from '../length/result';
import { type Database, type SaveError, saveError } from './db';
import type { Row } from './journal/row';
import { aloneKey, behindKey } from './own-keys';
import { addEntries, freed, keepEven } from './reconciling';
import type { StoreContext } from './store-context';
import type { Added, Incoming } from './take-in';
import { putValue, type ValueRow, type ValueStore } from './values';
import { sent, strict, whole } from './whole';
import { keptOfTries, type NewAct, prepareAct, writeAct } from './writes';

type Keep<T> = {
  /** What the other pages are told once it is kept. */
  readonly tell: string;
  readonly work: (db: Database) => Promise<Result<T, SaveError>>;
  /** Patience for thousands of rows. */
  readonly how?: 'long';
  readonly rows: (value: T) => readonly Row[];
  /** Rows the journal adds when it takes the change alone. */
  readonly note?: () => readonly Row[];
  /** The result of an earlier try that nobody answered, if it was kept after all. */
  readonly after?: (db: Database) => Promise<T | undefined>;
  /** The result without the database; undefined where there can be none. */
  readonly alone?: () => T | undefined;
};

/**
 * Keeps a change in both copies, the database first: what it refuses is in neither (D4, D5). Where the database does
 * not answer at all the journal takes the change alone (D6).
 */
async function kept<T>(here: StoreContext, keep: Keep<T>): Promise<Result<T, SaveError>> {
  const { tell, rows, note, alone } = keep;
  if (here.connection.readOnly()) return err({ code: 'read-only' });
  await here.filled();
  const done = await tried(here, keep);
  if ('broken' in done) {
    const value = alone?.();
    const noted = note?.() ?? [];
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
  // both take changes again, and each may lack what the other took alone
  else if (here.keptIn() !== 'both') void keepEven(here).catch(() => undefined);
  return done;
}

/** Notes in the database that the journal missed rows: a start then compares the copies, even of equal length. */
function missed(here: StoreContext): void {
  here.setKeptIn('database');
  here.ahead.missed();
  if (here.journal)
    void here.connection.write((db) => note(db, behindKey, here.now())).catch(() => undefined);
}

async function note(db: Database, key: string, at: string): Promise<void> {
  const tx = db.transaction('settings', 'readwrite', strict);
  await whole(tx, async () => sent(tx.store.put(at, key)));
}

/** Writes into the database; where that fails, looks whether a try that nobody answered was kept after all. */
async function tried<T>(here: StoreContext, { work, how, after }: Keep<T>): Promise<Done<T>> {
  const done = await inDatabase(here, work, how);
  if (!('broken' in done) && done.ok) return done;
  const late = after && (await here.connection.use(after).catch(() => undefined));
  return late === undefined ? done : ok(late);
}

type Done<T> = Result<T, SaveError> | { readonly broken: SaveError };

async function inDatabase<T>(
  here: StoreContext,
  work: Keep<T>['work'],
  how: Keep<T>['how'],
): Promise<Done<T>> {
  try {
    return await here.connection.write(work, how);
  } catch (error) {
    const why = saveError(error);
    if (why.code === 'failed') return { broken: why };
    if (why.code === 'read-only') return err(why);
    return (await freed(here.connection)) ? again(here, work, how) : err(why);
  }
}

/** Tries once more, with the reserve given up. */
async function again<T>(here: StoreContext, work: Keep<T>['work'], how: Keep<T>['how']): Promise<Done<T>> {
  try {
    return await here.connection.write(work, how);
  } catch (error) {
    return err(saveError(error));
  }
}

const logRows = (entries: readonly Entry[]): readonly Row[] => entries.map((entry): Row => ['log', entry]);

/** Entries that every try of an act has written, over all calls: an act tried again is kept once (D7). */
const triesOf = new WeakMap<NewAct, (readonly Entry[])[]>();

/** Entries the journal was given to take alone: it may have them although it did not answer in time. */
const aloneOf = new WeakMap<NewAct, { readonly ok: true; readonly value: readonly Entry[] }>();

/** The last act of each job that is being written. */
const onTheWay = new WeakMap<StoreContext, Map<string, Promise<unknown>>>();

/** Writes the acts of a job one after the other: one tried again must not land over a later one (D7). */
export function keepAct(here: StoreContext, act: NewAct): Promise<Result<readonly Entry[], SaveError>> {
  const jobs = onTheWay.get(here) ?? new Map<string, Promise<unknown>>();
  onTheWay.set(here, jobs);
  const next = (jobs.get(act.job) ?? Promise.resolve()).catch(() => undefined).then(() => keepNow(here, act));
  jobs.set(act.job, next);
  return next;
}

async function keepNow(here: StoreContext, act: NewAct): Promise<Result<readonly Entry[], SaveError>> {
  const tries = triesOf.get(act) ?? [];
  triesOf.set(act, tries);
  const done = await kept(here, {
    tell: act.job,
    work: async (db) => {
      const made = aloneOf.get(act)?.value;
      const written = await writeAct(db, here, { act, tried: tries, after: here.last(act.job), made });
      // at once: another act may find the database emptied before the journal has this one
      if (written.ok) here.seen(act.job, written.value);
      return written;
    },
    after: async (db) => (tries.length > 0 ? keptOfTries(db, tries) : undefined),
    rows: logRows,
    alone: () => {
      // under a name of this page alone: nobody else takes that place in the log
      const made =
        aloneOf.get(act) ?? prepareAct({ ...here, device: here.aloneName }, act, here.last(act.job));
      if (!made.ok) return undefined;
      aloneOf.set(act, made);
      here.seen(act.job, made.value);
      return made.value;
    },
    note: () => [['settings', aloneKey, true, here.stamp()]],
  });
  if (done.ok) here.seen(act.job, done.value);
  return done;
}

export async function keepEntries(
  here: StoreContext,
  incoming: Incoming,
): Promise<Result<number, SaveError>> {
  const tries: Added[] = [];
  const done = await kept(here, {
    tell: `reload ${incoming.job}`,
    work: (db) => addEntries(db, { ...incoming, now: here.now() }, tries),
    how: 'long',
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

/** The value asked for last, by setting or figure. */
const asked = new WeakMap<StoreContext, Map<string, Json>>();

/** Every try writes the value asked for last, never an older one over a newer (D7). */
export async function keepValue(
  here: StoreContext,
  [store, key, value]: readonly [ValueStore, string, Json],
): Promise<Result<null, SaveError>> {
  const name = `${store} ${key}`;
  const words = asked.get(here) ?? new Map<string, Json>();
  asked.set(here, words.set(name, value));
  const last = (): Json => words.get(name) ?? null;
  const done = await kept(here, {
    tell: 'settings',
    work: async (db) => ok(await putValue(db, store, key, { value: last(), at: here.stamp() })),
    rows: (row) => [row],
    alone: (): ValueRow => [store, key, last(), here.stamp()],
  });
  return done.ok ? ok(null) : done;
}
