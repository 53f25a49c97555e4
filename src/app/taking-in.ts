import type { ReadonlySignal, Signal } from '@preact/signals';
import { asideOf } from '../job/file';
import type { Job } from '../job/job';
import { secondCopy } from '../job/second-copy';
import type { TooMuch } from '../plan/plan';
import type { Offered } from '../screens/bench';
import type { HandedError } from '../store/handover/handed';
import type { Store } from '../store/store';
import type { JobShelf } from './job-shelf';
import type { LogInHand } from './log-in-hand';
import { nowHanded } from './looking';
import { randomId } from './random';
import { figuresFor } from './sample-figures';
import type { ValuesInHand } from './values-in-hand';

/** What is needed to take in what comes from outside. */
export type OfferHands = {
  readonly store: Pick<Store, 'device' | 'load' | 'addEntries'>;
  readonly shelf: JobShelf;
  readonly log: Pick<LogInHand, 'load' | 'unsaved'>;
  readonly values: Pick<ValuesInHand, 'settings' | 'shop' | 'keep' | 'keepShop'>;
  readonly job: ReadonlySignal<Job | undefined>;
  readonly askToKeep: () => void;
};

/** What is offered: looked at, or why it cannot be taken. */
export type OfferedNow = Offered | HandedError | TooMuch | undefined;

type Taking = Offered & {
  readonly how: 'merge' | 'keep-both';
  readonly from: 'phone' | 'sample';
  /** Called as soon as storage has it. */
  readonly kept: () => void;
  readonly again: () => Promise<void>;
};

/**
 * Takes in what stands offered, and brings its job into hand.
 *
 * @param from the sample comes off no phone: nobody else has it by that
 */
export async function takeOffered(
  hands: OfferHands,
  offered: Signal<OfferedNow>,
  how: Taking['how'],
  from: Taking['from'] = 'phone',
): Promise<void> {
  const now = offered.value;
  if (!now || !('file' in now)) return;
  const kept = () => {
    offered.value = undefined;
  };
  await takeIn(hands, { ...now, how, from, kept, again: () => takeOffered(hands, offered, how, from) });
}

/** Takes in the sample that stands offered. */
export async function takeSample(hands: OfferHands, offered: Signal<OfferedNow>): Promise<void> {
  await bringFigures(hands.values); // before the job, so that no screen of it asks for what comes with it
  await takeOffered(hands, offered, 'merge', 'sample');
}

async function takeIn(hands: OfferHands, offer: Taking): Promise<void> {
  const { store, shelf, log, values, job, askToKeep } = hands;
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
    await values.keep({ handed: nowHanded(values.settings.value.handed, id, theirs) });
  askToKeep();
}

/** The sample's shop figures and lists, where this phone has none of its own. */
async function bringFigures(values: OfferHands['values']): Promise<void> {
  const { figures, lists } = figuresFor(values.shop.value, values.settings.value);
  if (figures.length === 0 && lists === undefined) return;
  await Promise.all([
    ...figures.map(([field, value]) => values.keepShop(field, value)),
    values.keep({ figuresFrom: 'sample', ...(lists === undefined ? {} : { lists }) }),
  ]);
}
