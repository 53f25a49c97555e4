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

/** A request's own failure is told by the end of its transaction. */
export const sent = (request: Promise<unknown>): void => void request.catch(() => undefined);
