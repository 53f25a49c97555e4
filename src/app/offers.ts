import { type ReadonlySignal, signal } from '@preact/signals';
import type { CameBy, Incoming } from '../screens/bench';
import type { Copies } from '../screens/copies';
import type { Router } from './router';
import type { OfferedNow, OfferHands } from './taking-in';

type Hands = OfferHands & {
  readonly copies: ReadonlySignal<Copies | undefined>;
  /** What looks at a text and takes it in; it comes in a file of its own. */
  readonly looking: Promise<Pick<typeof import('./planning'), 'lookAt' | 'takeOffered' | 'takeSample'>>;
  /** The text of the sample job. */
  readonly sample: () => Promise<string>;
  readonly go: Router['go'];
};

/** What comes in from outside: looked at, and then taken in by a tap, or let go. */
export function makeOffers(hands: Hands): Incoming {
  const { store, shelf, values, copies, looking, sample, go } = hands;
  const offered = signal<OfferedNow>(undefined);
  const cameBy = signal<CameBy>('chosen');

  function letGo(): void {
    offered.value = undefined;
    copies.value?.letGo();
  }

  async function offer(text: string, by: CameBy = 'chosen'): Promise<void> {
    letGo();
    cameBy.value = by;
    if (copies.value?.knows(text)) return copies.value.offer(text);
    const { lookAt } = await looking;
    const logOf = async (id: string) =>
      shelf.jobs.value.some((line) => line.id === id) ? (await store.load(id)).entries : undefined;
    offered.value = await lookAt(text, { logOf, shop: values.shop.value });
  }

  return {
    offered,
    cameBy,
    copies,
    offer,
    letGo,
    take: async (how) => (await looking).takeOffered(hands, offered, how),
    openSample: async () => {
      await offer(await sample());
      go({ at: 'job' });
      await (await looking).takeSample(hands, offered);
    },
  };
}
