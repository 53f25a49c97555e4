import { type ReadonlySignal, type Signal, signal } from '@preact/signals';
import type { ThisPhone } from '../screens/bench';
import { askToPersist, isPersisted, type Kept } from '../store/persisted';
import type { KeptIn, Store } from '../store/store';
import { later } from './bring-later';
import { homeScreen } from './home-screen';
import { servedHere, updateWaiting } from './served';

type PhoneStore = Pick<Store, 'keptIn' | 'onKeptIn' | 'restored' | 'evenOut' | 'aside' | 'secure'>;

type At = {
  /** A newer page has the database. */
  readonly gone: ReadonlySignal<boolean>;
  /** How many rows are set aside. */
  readonly setAside: ReadonlySignal<number>;
  /** The screen the last start froze over, as a hash route. */
  readonly left: string | undefined;
};

export type PhoneInHand = ThisPhone & {
  readonly restored: Signal<number>;
  readonly askToKeep: () => void;
};

/** How what is kept on this phone stands, and what its browser offers. */
export function makePhone(store: PhoneStore, { gone, setAside, left }: At): PhoneInHand {
  const keptIn = signal<KeptIn>(store.keptIn());
  const restored = signal(store.restored());
  const kept = signal<Kept>('unknown');
  const heard = (answer: Kept): void => {
    kept.value = answer;
  };
  store.onKeptIn((now) => {
    keptIn.value = now;
  });
  void isPersisted().then(heard);
  return {
    left,
    keptIn,
    restored,
    seenRestored: () => {
      restored.value = 0;
    },
    kept,
    setAside,
    asideFile: async () => JSON.stringify(await store.aside(), null, 1),
    // what comes back is heard
    evenOut: () => store.evenOut().then(nothing, nothing),
    updateWaiting,
    servedHere,
    startUpdate: async () => later.peek()?.startUpdate(() => store.secure().catch(() => false)),
    home: homeScreen(),
    share: async (name, text) => (await sharing()).shareFile(name, text),
    sharePdf: async (name, pdf) => (await sharing()).sharePdf(name, pdf),
    readOnly: gone,
    // some browsers ask the person: nothing waits for the answer
    askToKeep: () => void askToPersist().then(heard),
  };
}

/** Only screens of the second file hand anything out: it is here by then. */
const sharing = () => import('./later');

const nothing = (): void => undefined;
