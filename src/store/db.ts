import { type IDBPDatabase, openDB } from 'idb';
import { err, ok, type Result } from '../length/result';
import { type Schema, schemaVersion, steps } from './migrations';

export type Database = IDBPDatabase<Schema>;

export type OpenError =
  /** A later version of the app wrote this database: it is left as it is. */
  | { readonly code: 'newer-database' }
  /** Another page holds an older version open and does not let go. */
  | { readonly code: 'blocked' }
  | { readonly code: 'no-storage'; readonly name: string };

export type SaveError =
  /** The phone's storage is full: nothing of the change was kept. */
  { readonly code: 'full' } | { readonly code: 'failed'; readonly name: string };

export type Connection = {
  /** Runs work on an open database; opens it again, once, when the phone has dropped the connection. */
  readonly use: <T>(work: (db: Database) => Promise<T>) => Promise<T>;
  readonly close: () => void;
};

const patience = 3000;

/** Opens the phone's database, brought up to this version step by step. */
export async function connect(name: string, onGone: () => void): Promise<Result<Connection, OpenError>> {
  const first = await openNow(name, onGone);
  if (!first.ok) return first;
  let db = first.value;
  let opening: Promise<void> | undefined;
  const reopen = (lost: Database, error: unknown): Promise<void> => {
    opening ??= openNow(name, onGone)
      .then((again) => {
        if (!again.ok) throw error;
        lost.close();
        db = again.value;
      })
      .finally(() => {
        opening = undefined;
      });
    return opening;
  };
  return ok({
    use: async (work) => {
      const used = db;
      try {
        return await work(used);
      } catch (error) {
        if (!isLost(error)) throw error;
        if (db === used) await reopen(used, error); // else another call has
        return work(db);
      }
    },
    close: () => db.close(),
  });
}

async function openNow(name: string, onGone: () => void): Promise<Result<Database, OpenError>> {
  let late: ReturnType<typeof setTimeout> | undefined;
  const blocked = new Promise<Result<Database, OpenError>>((resolve) => {
    late = setTimeout(() => resolve(err({ code: 'blocked' })), patience);
  });
  const opening = openDB<Schema>(name, schemaVersion, {
    upgrade: (db, from, _to, tx) => {
      for (const step of steps.slice(from)) step(db, tx);
    },
    blocking: (_current, _next, event) => {
      (event.target as IDBDatabase).close(); // a newer page wants to upgrade: let it, and say so
      onGone();
    },
    terminated: () => undefined, // the next use opens it again
  }).then(
    (db): Result<Database, OpenError> => ok(db),
    (error: unknown) => err(openError(error)),
  );
  const result = await Promise.race([opening, blocked]);
  clearTimeout(late);
  // given up on: should it open after all, nobody would close it
  if (!result.ok) void opening.then((tooLate) => tooLate.ok && tooLate.value.close());
  return result;
}

function openError(error: unknown): OpenError {
  const name = nameOf(error);
  return name === 'VersionError' ? { code: 'newer-database' } : { code: 'no-storage', name };
}

export const nameOf = (error: unknown): string =>
  error instanceof Error || isDomException(error) ? error.name : 'Error';
const isDomException = (error: unknown): error is { name: string } =>
  typeof error === 'object' && error !== null && 'name' in error && typeof error.name === 'string';

/**
 * The phone closed the connection behind our back, or broke off a transaction in it: after sleep, under memory
 * pressure, on clearing site data. Nothing of a transaction that ended so was kept, so it may be tried again.
 */
const isLost = (error: unknown): boolean =>
  ['InvalidStateError', 'UnknownError', 'AbortError', 'TransactionInactiveError'].includes(nameOf(error));

export const saveError = (error: unknown): SaveError => {
  const name = nameOf(error);
  return name === 'QuotaExceededError' ? { code: 'full' } : { code: 'failed', name };
};
