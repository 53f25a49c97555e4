/**
 * How the k-th call into the database goes wrong: it throws as on a closed connection; its transaction ends as on a
 * full disk after the request has succeeded; the transaction is broken off; or it never answers, and is carried out
 * all the same.
 */
export type Fault = 'closed' | 'full' | 'broken off' | 'silent';

export type Faults = {
  /** Calls made so far. */
  readonly count: () => number;
  readonly clear: () => void;
};

type Calls = Readonly<Record<string, unknown>>;

const targets = (): readonly (readonly [object, readonly string[]])[] => [
  [IDBFactory.prototype, ['open']],
  [IDBDatabase.prototype, ['transaction']],
  [IDBObjectStore.prototype, ['get', 'getKey', 'getAll', 'getAllKeys', 'add', 'put', 'delete', 'openCursor']],
  [IDBIndex.prototype, ['get', 'getAll', 'openCursor', 'openKeyCursor']],
];

/** Lets the k-th call go wrong, from 0, once or from then on; `clear` ends it. */
export function failAt(k: number, fault: Fault, forEver: boolean): Faults {
  let calls = 0;
  const undo = targets().flatMap(([on, names]) =>
    names.map((name) => {
      const own = (on as Calls)[name] as (...args: unknown[]) => unknown;
      const wrapped = function (this: unknown, ...args: unknown[]) {
        const now = calls;
        calls += 1;
        // the database's own upgrade goes through this call here, and through none in a browser
        const bad = (forEver ? now >= k : now === k) && args[1] !== 'versionchange';
        const call = () => own.apply(this, args);
        return bad ? gone(call, name, fault) : call();
      };
      Object.defineProperty(on, name, { value: wrapped, configurable: true, writable: true });
      return () => Object.defineProperty(on, name, { value: own, configurable: true, writable: true });
    }),
  );
  return { count: () => calls, clear: () => undo.forEach((back) => void back()) };
}

type Heard = { addEventListener: (...args: never[]) => void };

function gone(call: () => unknown, name: string, fault: Fault): unknown {
  if (fault === 'closed') throw new DOMException('closing', 'InvalidStateError');
  if (name === 'open') throw new DOMException('no', fault === 'full' ? 'QuotaExceededError' : 'UnknownError');
  const made = call() as Heard & { readonly transaction?: IDBTransaction };
  if (fault === 'silent') {
    made.addEventListener = () => undefined;
    return made;
  }
  const tx = (name === 'transaction' ? made : made.transaction) as unknown as IDBTransaction;
  const end = () => {
    if (fault === 'full')
      Object.defineProperty(tx, 'error', { value: new DOMException('no room', 'QuotaExceededError') });
    try {
      tx.abort();
    } catch {
      // it has ended already: nothing went wrong
    }
  };
  if (name === 'transaction') queueMicrotask(end);
  else (made as unknown as IDBRequest).onsuccess = end;
  return made;
}
