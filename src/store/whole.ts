export const strict = { durability: 'strict' } as const;

type Transaction = { readonly done: Promise<void>; readonly abort: () => void };

/** Work on one transaction, kept whole or not at all, also when the work breaks off after its first requests. */
export async function whole<T>(tx: Transaction, work: () => Promise<T>): Promise<T> {
  tx.done.catch(() => undefined); // awaited last: a request that fails first must not leave it unheard
  try {
    const result = await work();
    await tx.done;
    return result;
  } catch (error) {
    abort(tx);
    throw error;
  }
}

function abort(tx: Transaction): void {
  try {
    tx.abort();
  } catch {
    // it has ended by itself
  }
}

/** A transaction that only reads: its requests tell of every failure, so its end is not listened to. */
export function reading<T extends Pick<Transaction, 'done'>>(tx: T): T {
  tx.done.catch(() => undefined);
  return tx;
}

/**
 * Asks several things of a database at once, in place of one after the other. Where one of them cannot even be asked,
 * the failures of those before it are heard all the same.
 */
export async function atOnce<T extends readonly unknown[]>(
  ...asks: { readonly [K in keyof T]: () => Promise<T[K]> }
): Promise<T> {
  const asked: Promise<unknown>[] = [];
  for (const ask of asks) {
    const one = ask();
    sent(one);
    asked.push(one);
  }
  return (await Promise.all(asked)) as unknown as T;
}

/** A request's own failure is told by the end of its transaction. */
export const sent = (request: Promise<unknown>): void => void request.catch(() => undefined);
