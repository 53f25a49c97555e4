import { type ReadonlySignal, signal } from '@preact/signals';
import type { TooMuch } from '../plan/plan';
import type { CameBy, Incoming, Offered } from '../screens/bench';
import type { Copies } from '../screens/copies';
import type { HandedError } from '../store/handover/handed';
import type { Router } from './router';
import type { OfferHands } from './taking-in';

type Hands = OfferHands & {
  readonly copies: ReadonlySignal<Copies | undefined>;
  /** What looks at a text and takes it in; it comes in a file of its own. */
  readonly looking: Promise<Pick<typeof import('./planning'), 'lookAt' | 'takeIn' | 'bringFigures'>>;
  /** The text of the sample job. */
  readonly sample: () => Promise<string>;
  readonly go: Router['go'];
};

/** What comes in from outside: looked at, and then taken in by a tap, or let go. */
export function makeOffers(hands: Hands): Incoming {
  const { store, shelf, values, copies, looking, sample, go } = hands;
  const offered = signal<Offered | HandedError | TooMuch | undefined>(undefined);
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

  /** @param from the sample comes off no phone: nobody else has it by that */
  async function take(how: 'merge' | 'keep-both', from: 'phone' | 'sample' = 'phone'): Promise<void> {
    const now = offered.value;
    if (!now || !('file' in now)) return;
    const kept = () => {
      offered.value = undefined;
    };
    const { takeIn } = await looking;
    await takeIn(hands, { ...now, how, from, kept, again: () => take(how, from) });
  }

  async function openSample(): Promise<void> {
    await offer(await sample());
    go({ at: 'job' });
    await (await looking).bringFigures(hands.values); // before the job, so that no screen of it asks for what comes with it
    if (offered.value && 'file' in offered.value) await take('merge', 'sample');
  }

  return { offered, cameBy, copies, offer, take: (how) => take(how), letGo, openSample };
}
