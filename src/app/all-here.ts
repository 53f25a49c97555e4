import type { Bench } from '../screens/bench';
import { takeIncoming } from './incoming';
import { goOffline } from './offline';

/** All screens are here and drawn: the app is put on the phone, and what was shared to it is looked at. */
export async function allHere(bench: Bench): Promise<void> {
  goOffline();
  await takeIncoming(bench);
}
