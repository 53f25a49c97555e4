import type { Bench } from '../screens/bench';
import type { Store } from '../store/store';
import { takeIncoming } from './incoming';
import { goOffline } from './offline';

/** All screens are here and drawn: the app is put on the phone, and what was shared to it is looked at. */
export async function allHere(bench: Bench): Promise<void> {
  goOffline();
  await takeIncoming(bench);
}

/** What was deleted long ago goes for good, and old entries are packed; both are tried again at the next start. */
export function tidyUp(store: Store, lookAgain: () => Promise<void>): void {
  void store
    .purge(new Date().toISOString())
    .then(lookAgain)
    .catch(() => undefined)
    .then(store.pack)
    .catch(() => undefined);
}
