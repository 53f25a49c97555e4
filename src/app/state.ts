import { computed, effect, type ReadonlySignal, signal } from '@preact/signals';
import type { Job } from '../job/job';
import type { Bench } from '../screens/bench';
import type { Copies } from '../screens/copies';
import { saveError } from '../store/db';
import type { Store } from '../store/store';
import { draftsOf } from '../ui/drafts';
import { hold, sawLock } from '../ui/hold';
import { tapeInHand } from '../ui/unit-in-hand';
import { home, later } from './bring-later';
import { type JobShelf, jobToShow, makeShelf, standingJob } from './job-shelf';
import { keepDrafts } from './keep-drafts';
import { makeLaying } from './laying';
import { type LogInHand, logInHand } from './log-in-hand';
import { makeOffers } from './offers';
import { planInHand } from './plan-in-hand';
import { randomId } from './random';
import { makeRouter } from './router';
import { makePhone, type PhoneInHand } from './this-phone';
import { undoingOf } from './undoing';
import { type ValuesInHand, valuesInHand } from './values-in-hand';

type Around = {
  /** The text of the sample job. */
  readonly sample: () => Promise<string>;
  /** What works a job out, and looks at what comes in; it comes in a file of its own. */
  readonly planning: Promise<typeof import('./planning')>;
  /** Ends when what reads a job is here, or did not come: then a page that needs it says so. */
  readonly reader: Promise<void>;
  /** A job is in hand: its files are wanted now, also on what looked like a first visit. */
  readonly wanted: () => void;
  /** Ends when all screens are here, or do not come, and the first stands: its first tick waits for nothing else. */
  readonly stood: Promise<void>;
  /** A newer page has the database. */
  readonly gone: ReadonlySignal<boolean>;
};

/** The bench over an open store: everything a screen reads or does, in one place. */
export async function makeBench(store: Store, around: Around): Promise<Bench> {
  const { sample, planning, gone } = around;
  const laying = makeLaying(planning);
  const log = logInHand(store, { setAside: 0, onOther: laying.clear });
  const { last } = store;
  const early = last === undefined || store.froze ? undefined : { id: last, log: store.load(last) };
  early?.log.catch(() => undefined); // said where it is waited for
  const ways = valuesInHand(store, log.unsaved, planning);
  const asked = [store.jobs(), store.aside(), store.settings(), ways] as const;
  const [lines, aside, kept, values] = await Promise.all(asked);
  log.setAside.value += aside.length;
  keepDrafts(store, kept);
  const { settings, shop, keep } = values;
  const left = store.froze ? location.hash || settings.value.here || '#/' : undefined;
  const phone = makePhone(store, { gone, setAside: log.setAside, left });
  const { route, go, arrived: arrive } = makeRouter(settings, keep);
  const { askToKeep } = phone;
  const shelf = makeShelf(lines, { store, log, values, acts: planning, go, askToKeep });
  const job = jobIn(log);
  // Figure has marks of its own; everything else is said in the unit of the job
  effect(() => {
    const own = route.value.at === 'figure' ? undefined : job.value?.tape;
    tapeInHand.value = own ?? settings.value.tape;
  });
  const { plan, planned } = planInHand(job, shop, planning);
  const hands: Hands = { store, log, values, shelf, phone };
  const copies = copiesIn(hands);
  const incoming = makeOffers({
    store,
    shelf,
    log,
    values,
    job,
    copies,
    looking: planning,
    sample,
    go,
    askToKeep,
  });
  hearOthers(hands);
  await openLast(hands, early).then(() => jobRead(log, around));
  // nothing on the first screen moves once it stands: what is worked out is there from the start
  if ((job.value?.cases.length ?? 0) + (job.value?.banks.length ?? 0) > 0) await planned;
  void around.stood.then(() => later.peek()?.tidyUp(store, shelf.lookAgain));
  return { route, go, arrive, ...inHand(hands, planning), job, plan, laying, shelf, incoming, phone };
}

/** What reads a job is here, where one is in hand. */
async function jobRead({ jobId }: LogInHand, { reader, wanted }: Around): Promise<void> {
  if (jobId.value === undefined) return;
  wanted();
  await reader;
}

type Hands = {
  readonly store: Store;
  readonly log: LogInHand;
  readonly values: ValuesInHand;
  readonly shelf: JobShelf;
  readonly phone: PhoneInHand;
};

/** The job in hand; a tick changes nothing of it. */
function jobIn({ jobId, decided, folded }: LogInHand): ReadonlySignal<Job | undefined> {
  jobId.subscribe((id) => {
    draftsOf.value = id ?? '';
  });
  return computed(() => {
    decided.value;
    const id = jobId.value;
    return id === undefined ? undefined : home.value?.jobOf(id, folded.peek().values);
  });
}

type InHand = Omit<
  Bench,
  'route' | 'go' | 'arrive' | 'job' | 'plan' | 'laying' | 'shelf' | 'incoming' | 'phone'
>;

/** The log and the figures in hand: what stands in them, and what can be done to them. */
function inHand({ store, log, values }: Hands, planning: Around['planning']): InHand {
  const undoing = undoingOf(log, store.own, planning);
  const { unsaved, folded, entries, underWay, write } = log;
  const { settings, shop, figure, keep, keepShop, keepOnShelf, keepFigure } = values;
  return {
    folded,
    entries,
    doubled: computed(() => later.value?.doubledIn(folded.value) ?? []),
    own: store.own,
    settings,
    shop,
    figure,
    keep,
    keepShop,
    keepOnShelf,
    keepFigure,
    unsaved: unsaved.now,
    tryAgain: unsaved.tryAgain,
    letUnsavedGo: unsaved.letGo,
    underWay: computed(() => underWay.value.length > 0 || values.underWay.value),
    saving: undoing.saving,
    act: (label, changes) => write(label, changes),
    undo: undoing.undo,
    undoLabel: undoing.label,
    newId: randomId,
    holdSaw: () => hold(sawLock),
  };
}

/** Everything in one file, out and in, once that part of the app is here. */
function copiesIn(hands: Hands): ReadonlySignal<Copies | undefined> {
  const copies = signal<Copies | undefined>(undefined);
  later.subscribe((there) => {
    copies.value = there?.copiesOf(hands);
  });
  return copies;
}

/** Another page changed what is kept, or a copy gave something back: it is looked at again. */
function hearOthers(hands: Hands): void {
  const { store, log, values, shelf, phone } = hands;
  store.onChange((what) => {
    if (what === log.jobId.value) void log.catchUp();
    if (what === `reload ${log.jobId.value}`) void log.load(what.slice('reload '.length));
    void shelf.lookAgain();
    if (what === 'settings') void values.catchUp();
  });
  store.onRestored((entries) => void cameBack(hands, entries).then(phone.evenOut));
  store.onValues(() => void values.load());
  document.addEventListener('visibilitychange', () => {
    if (document.visibilityState === 'visible') void Promise.all([log.catchUp(), values.catchUp()]);
  });
}

/** The browser had lost entries, and the second copy gave them back. */
async function cameBack({ store, log, shelf, phone }: Hands, entries: number): Promise<void> {
  phone.restored.value += entries;
  const [, aside] = await Promise.all([shelf.lookAgain(), store.aside()]);
  log.setAside.value = Math.max(log.setAside.value, aside.length);
  const open = jobToShow(log, shelf);
  if (open !== undefined) await log.load(open);
}

/** The job that was last in hand, asked for before it is known whether it still stands. */
type Early = { readonly id: string; readonly log: ReturnType<Store['load']> };

/** A job that cannot be read leaves the others, and so does one over which a start froze. */
async function openLast({ store, log, values, shelf }: Hands, early: Early | undefined): Promise<void> {
  const last = standingJob(shelf.jobs.value, values.settings.value.job);
  if (!last || store.froze) return;
  await log
    .load(last.id, last.id === early?.id ? early.log : undefined)
    .catch((error: unknown) =>
      log.unsaved.noteTrouble('The last job', saveError(error), () => log.load(last.id)),
    );
}
