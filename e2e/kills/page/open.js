// The one place that knows how a store is opened and what it says of itself at the start.
import { randomId } from '../../../src/app/random';
import { openStore } from '../../../src/store/store';

// the second copy is the app's to open; a build without one is measured all the same
const parts = import.meta.glob(['../../../src/app/journal.ts', '../../../src/app/journal-worker.ts'], {
  eager: true,
});
const { openJournal, journalWorker } = Object.assign({}, ...Object.values(parts));

/** What the browser itself says as the database opens: made anew, and why. Listens only, and opens nothing more. */
export const database = { made: false, loss: '' };

const open = IDBFactory.prototype.open;
IDBFactory.prototype.open = function opened(...args) {
  const request = open.apply(this, args);
  request.addEventListener('upgradeneeded', (event) => {
    if (event.oldVersion > 0) return;
    database.made = true;
    database.loss = event.dataLoss === 'total' ? (event.dataLossMessage ?? 'total') : '';
  });
  return request;
};

/** The store of the app, or the code of why there is none. */
export async function openKept(onGone) {
  const journal = openJournal?.(journalWorker?.());
  const opened = await openStore({
    randomId,
    now: () => new Date().toISOString(),
    onGone,
    ...(journal === undefined ? {} : { journal }),
  });
  if (!opened.ok) return { why: opened.error.code };
  // what the build should keep, not what it managed to: a journal that does not come up is no excuse
  return { store: opened.value, twoCopies: openJournal !== undefined };
}

/** How many entries came back from the second copy: as it opened, and as the app evens the two out once it stands. */
export async function restoredBy(store) {
  const before = typeof store.restored === 'function' ? store.restored() : (store.restored ?? 0);
  return before + ((await store.evenOut?.()) ?? 0);
}
