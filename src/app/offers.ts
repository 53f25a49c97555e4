import { type ReadonlySignal, signal } from '@preact/signals';
import { asideOf, secondCopy } from '../job/file';
import type { Job } from '../job/job';
import type { TooMuch } from '../plan/plan';
import type { CameBy, Incoming, Offered } from '../screens/bench';
import type { Copies } from '../screens/copies';
import type { HandedError } from '../store/handover/handed';
import type { Store } from '../store/store';
import type { JobShelf } from './job-shelf';
import type { LogInHand } from './log-in-hand';
import { randomId } from './random';
import type { Router } from './router';
import type { ValuesInHand } from './values-in-hand';

type Looking = typeof import('./looking');

/** What is needed to take in what comes from outside. */
type OfferHands = {
  readonly store: Pick<Store, 'device' | 'load' | 'addEntries'>;
  readonly shelf: JobShelf;
  readonly log: Pick<LogInHand, 'load' | 'unsaved'>;
  readonly values: Pick<ValuesInHand, 'settings' | 'shop' | 'keep' | 'keepShop'>;
  readonly job: ReadonlySignal<Job | undefined>;
  readonly copies: ReadonlySignal<Copies | undefined>;
  readonly looking: Promise<Looking>;
  /** The text of the sample job. */
  readonly sample: () => Promise<string>;
  readonly go: Router['go'];
  readonly askToKeep: () => void;
};

/** What comes in from outside: looked at, and then taken in by a tap, or let go. */
export function makeOffers(hands: OfferHands): Incoming {
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
    await takeIn(hands, { ...now, how, from, kept, again: () => take(how, from) });
  }

  async function openSample(): Promise<void> {
    await offer(await sample());
    go({ at: 'job' });
    await bringFigures(hands); // before the job, so that no screen of it asks for what comes with it
    if (offered.value && 'file' in offered.value) await take('merge', 'sample');
  }

  return { offered, cameBy, copies, offer, take: (how) => take(how), letGo, openSample };
}

type Taking = Offered & {
  readonly how: 'merge' | 'keep-both';
  readonly from: 'phone' | 'sample';
  /** Called as soon as storage has it. */
  readonly kept: () => void;
  readonly again: () => Promise<void>;
};

async function takeIn(hands: OfferHands, offer: Taking): Promise<void> {
  const { store, shelf, log, values, job, looking, askToKeep } = hands;
  const { file, against, theirs, how, from } = offer;
  const both = how === 'keep-both';
  const id = both ? randomId() : file.job;
  const stamp = { job: id, device: store.device, at: new Date().toISOString() };
  const entries = both ? secondCopy(file.entries, stamp) : file.entries;
  const done = await store.addEntries(id, entries, both ? [] : asideOf(against?.differing ?? []));
  if (!done.ok) return log.unsaved.noteTrouble('Taken in', done.error, offer.again);
  offer.kept();
  await shelf.lookAgain();
  await shelf.openJob(id);
  // asked for by hand: deleted here or there, the job is wanted
  if (job.value?.deleted !== undefined) {
    await shelf.setDeleted(id, undefined, 'Job brought back');
    await log.load(id);
  }
  if (!both && from === 'phone')
    await values.keep({ handed: (await looking).nowHanded(values.settings.value.handed, id, theirs) });
  askToKeep();
}

/** The sample's shop figures and lists, where this phone has none of its own. */
async function bringFigures({ values, looking }: OfferHands): Promise<void> {
  const { figures, lists } = (await looking).figuresFor(values.shop.value, values.settings.value);
  if (figures.length === 0 && lists === undefined) return;
  await Promise.all([
    ...figures.map(([field, value]) => values.keepShop(field, value)),
    values.keep({ figuresFrom: 'sample', ...(lists === undefined ? {} : { lists }) }),
  ]);
}
