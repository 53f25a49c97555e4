import { type IDBPDatabase, openDB } from 'idb';
import { err, ok, type Result } from '../length/result';
import { type Schema, schemaVersion, steps } from './migrations';

export type Database = IDBPDatabase<Schema>;

export type OpenError =
  /** A later version of the app wrote this database, and nothing of it can be shown. */
  | { readonly code: 'newer-database' }
  /** Another page holds an older version open and does not let go. */
  | { readonly code: 'blocked' }
  /** Nobody holds it, and it does not answer in time: it may at the next try. */
  | { readonly code: 'slow' }
  | { readonly code: 'no-storage'; readonly name: string };

export type SaveError =
  /** The phone's storage is full: nothing of the change was kept. */
  | { readonly code: 'full' }
  /** A newer version of the app has the database: this page shows, and writes nothing. */
  | { readonly code: 'read-only' }
  | { readonly code: 'failed'; readonly name: string };

type Use = <T>(work: (db: Database) => Promise<T>, how?: 'long') => Promise<T>;

export type Connection = {
  /**
   * Runs work on an open database. What does not answer in time, or was broken off, is tried again on a new
   * connection, three times at most: work must come to the same when it has been done before.
   */
  readonly use: Use;
  /** The same for work that writes: on a database of a later version it throws `ReadOnlyError`. */
  readonly write: Use;
  readonly readOnly: () => boolean;
  readonly close: () => void;
};

type ConnectOptions = {
  readonly name: string;
  /** A newer page wants the database: from now on this one only shows. */
  readonly onGone: () => void;
  /**
   * Fills a database the browser emptied, before anything else is done with it: also one emptied under an open page.
   */
  readonly refill: (db: Database) => Promise<void>;
  /** How long a tap's work may take, milliseconds. */
  readonly patience: number;
};

/** How long it may take to open before somebody is told of it, milliseconds. */
export const openPatience = 3000;
const retries = 3;
/** A whole log takes so many times longer than a tap. */
const longer = 12;

type Opened = { readonly db: Database; readonly readOnly: boolean };

/** Opens the phone's database, brought up to this version step by step; one of a later version, for reading alone. */
export async function connect(options: ConnectOptions): Promise<Result<Connection, OpenError>> {
  let gone = false;
  const opener = (slow: WhenSlow) =>
    openerOf(options, slow, () => {
      gone = true;
      options.onGone();
    });
  const first = await openInTurns(opener('wait on'));
  if (!first.ok) return first;
  const { use, readOnly, close } = held(first.value, opener('give up'), options.patience);
  const isReadOnly = () => readOnly() || gone;
  const writable = (db: Database) => {
    if (isReadOnly()) throw new DOMException('a newer version has it', 'ReadOnlyError');
    return db;
  };
  return ok({
    use,
    write: (work, how) => use(async (db) => work(writable(db)), how),
    readOnly: isReadOnly,
    close,
  });
}

type Open = () => Promise<Result<Opened, OpenError>>;

/** Opens the database, and fills it where the browser emptied it. */
function openerOf({ name, refill, patience }: ConnectOptions, slow: WhenSlow, onGone: () => void): Open {
  return async () => {
    const opened = await openNow(name, slow, onGone);
    if (!opened.ok || opened.value.readOnly) return opened;
    try {
      await within(refill(opened.value.db), longer * patience);
      return opened;
    } catch (error) {
      opened.value.db.close();
      return err(openError(error));
    }
  };
}

/** Opens it, and again where a connection was lost on the way. */
async function openInTurns(open: Open): Promise<Result<Opened, OpenError>> {
  for (let turn = 0; ; turn += 1) {
    const opened = await open();
    if (opened.ok || turn === retries) return opened;
    const { error } = opened;
    if (error.code !== 'slow' && !(error.code === 'no-storage' && lostNames.includes(error.name)))
      return opened;
  }
}

/** The connection as it stands: opened anew where it was lost, for all who use it at once. */
function held(first: Opened, open: Open, tap: number): Pick<Connection, 'use' | 'readOnly' | 'close'> {
  let now = first;
  let opening: Promise<void> | undefined;
  const reopen = (lost: Database, error: unknown): Promise<void> => {
    opening ??= open()
      .then((again) => {
        if (!again.ok) throw error;
        lost.close();
        now = again.value;
      })
      .finally(() => {
        opening = undefined;
      });
    return opening;
  };
  const use: Use = async (work, how) => {
    const patience = how === 'long' ? longer * tap : tap;
    for (let turn = 0; ; turn += 1) {
      const used = now.db;
      try {
        return await within(work(used), patience);
      } catch (error) {
        if (!isLost(error) || turn === retries) throw error;
        if (now.db === used) await reopen(used, error); // else another call has
      }
    }
  };
  return { use, readOnly: () => now.readOnly, close: () => now.db.close() };
}

function within<T>(work: Promise<T>, patience: number): Promise<T> {
  let late: ReturnType<typeof setTimeout> | undefined;
  const tooLate = new Promise<never>((_, reject) => {
    late = setTimeout(() => reject(new DOMException('no answer', 'TimeoutError')), patience);
  });
  return Promise.race([work, tooLate]).finally(() => clearTimeout(late));
}

/** A start waits on for a database that is only slow; work that is tried again gives it up in time. */
type WhenSlow = 'wait on' | 'give up';

async function openNow(name: string, slow: WhenSlow, onGone: () => void): Promise<Result<Opened, OpenError>> {
  const wait = waitOf(slow);
  const opening = openThis(name, { onGone: () => wait.isOver() || onGone(), onBlocked: wait.blocked }).catch(
    async (error: unknown): Promise<Result<Opened, OpenError>> => {
      if (nameOf(error) !== 'VersionError') return err(openError(error));
      return (await openNewer(name).catch(() => undefined)) ?? err({ code: 'newer-database' });
    },
  );
  const result = await Promise.race([opening, wait.over]);
  wait.end();
  // given up on: should it open after all, nobody would close it
  if (!result.ok) void opening.then((tooLate) => tooLate.ok && tooLate.value.db.close());
  return result;
}

/** How an opening is waited for. Only the browser tells a database that another page blocks from a slow one. */
function waitOf(slow: WhenSlow) {
  let [isBlocked, isLate, isOver] = [false, false, false];
  let giveUp: (code: 'blocked' | 'slow') => void = () => undefined;
  const over = new Promise<Result<Opened, OpenError>>((resolve) => {
    giveUp = (code) => {
      isOver = true;
      resolve(err({ code }));
    };
  });
  const late = setTimeout(() => {
    isLate = true;
    if (isBlocked) giveUp('blocked');
    else if (slow === 'give up') giveUp('slow');
  }, openPatience);
  const blocked = () => {
    isBlocked = true;
    if (isLate) giveUp('blocked');
  };
  return { over, blocked, isOver: () => isOver, end: () => clearTimeout(late) };
}

type Heard = { readonly onGone: () => unknown; readonly onBlocked: () => void };

async function openThis(name: string, { onGone, onBlocked }: Heard): Promise<Result<Opened, OpenError>> {
  const db = await openDB<Schema>(name, schemaVersion, {
    upgrade: (made, from, _to, tx) => {
      for (const step of steps.slice(from)) step(made, tx);
    },
    blocked: onBlocked,
    blocking: (_current, _next, event) => {
      (event.target as IDBDatabase).close(); // a newer page wants to upgrade: let it, and say so
      onGone();
    },
    terminated: () => undefined, // the next use opens it again
  });
  return ok({ db, readOnly: false });
}

/** A database of a later version as it is, when it still has the stores this version reads. */
async function openNewer(name: string): Promise<Result<Opened, OpenError> | undefined> {
  const db = await openDB<Schema>(name, undefined, {
    blocking: (_current, _next, event) => (event.target as IDBDatabase).close(),
  });
  const known = ['jobs', 'entries', 'packs', 'settings', 'shop', 'aside'] as const;
  if (known.every((store) => db.objectStoreNames.contains(store))) return ok({ db, readOnly: true });
  db.close();
  return undefined;
}

const nameOf = (error: unknown): string =>
  error instanceof Error || isDomException(error) ? error.name : 'Error';
const isDomException = (error: unknown): error is { name: string } =>
  typeof error === 'object' && error !== null && 'name' in error && typeof error.name === 'string';

/**
 * The phone closed the connection behind our back, broke off a transaction in it, or does not answer: after sleep,
 * under memory pressure, on clearing site data. Work that looks whether it was done before may be tried again.
 */
const isLost = (error: unknown): boolean => lostNames.includes(nameOf(error));
const lostNames = [
  'InvalidStateError',
  'UnknownError',
  'AbortError',
  'TransactionInactiveError',
  'TimeoutError',
];

/** What an opening, or the first work after it, ended in. */
export const openError = (error: unknown): OpenError => {
  const name = nameOf(error);
  return name === 'TimeoutError' ? { code: 'slow' } : { code: 'no-storage', name };
};

export const saveError = (error: unknown): SaveError => {
  const name = nameOf(error);
  if (name === 'QuotaExceededError') return { code: 'full' };
  return name === 'ReadOnlyError' ? { code: 'read-only' } : { code: 'failed', name };
};
