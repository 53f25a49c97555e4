import { computed, type ReadonlySignal, signal } from '@preact/signals';
import { doubledIn } from '../job/doubled';
import { editJob } from '../job/edits';
import { asideOf, secondCopy, writeJobFile } from '../job/file';
import { type Job, jobOf } from '../job/job';
import { fold, over } from '../job/log';
import type { Plan, TooMuch } from '../plan/plan';
import type { Bench, CameBy, Offered } from '../screens/bench';
import type { Copies } from '../screens/copies';
import { saveError } from '../store/db';
import type { HandedError } from '../store/handover/handed';
import { askToPersist, isPersisted, type Kept } from '../store/persisted';
import type { JobLine, KeptIn, Store } from '../store/store';
import { draftsOf } from '../ui/drafts';
import { hold, sawLock } from '../ui/hold';
import { later } from './bring-later';
import { homeScreen } from './home-screen';
import { keepDrafts } from './keep-drafts';
import { makeLaying } from './laying';
import { logInHand } from './log-in-hand';
import { randomId } from './random';
import { servedHere, updateWaiting } from './served';
import { shareFile } from './share';
import { undoingOf } from './undoing';
import { valueNames } from './value-names';
import { valuesInHand } from './values-in-hand';
import { makeWay } from './way';

type Planning = Promise<typeof import('./planning')>;

export type Around = {
  /** The text of the sample job. */
  readonly sample: () => Promise<string>;
  /** What works a job out; it comes in a file of its own. */
  readonly planning: Planning;
  readonly looking: Promise<typeof import('./looking')>;
  /** A newer page has the database. */
  readonly gone: ReadonlySignal<boolean>;
};

/** The bench over an open store: everything a screen reads or does, in one place. */
export async function makeBench(store: Store, { sample, planning, looking, gone }: Around): Promise<Bench> {
  const [lines, aside] = await Promise.all([store.jobs(), store.aside()]);
  const jobs = signal<readonly JobLine[]>(lines);
  const laying = makeLaying();
  const log = logInHand(store, { setAside: aside.length, onOther: laying.clear });
  const { jobId, entries, folded, decided, underWay, unsaved, setAside, acted, load, catchUp, write } = log;
  const noteTrouble = unsaved.noteTrouble;

  keepDrafts(store, await store.settings());
  const values = await valuesInHand(store, unsaved, valueNames);
  const { settings, shop, keep } = values;
  const keptIn = signal<KeptIn>(store.keptIn());
  const restored = signal(store.restored());
  const kept = signal<Kept>('unknown');
  const copies = signal<Copies | undefined>(undefined);
  later.subscribe((there) => {
    copies.value = there?.copiesOf({ store, acted, refresh });
  });
  const offered = signal<Offered | HandedError | TooMuch | undefined>(undefined);
  const cameBy = signal<CameBy>('chosen');
  const job = computed<Job | undefined>(() => {
    decided.value;
    return jobId.value === undefined ? undefined : jobOf(jobId.value, folded.peek().values);
  });
  const planner = signal<Awaited<Planning>['planOf'] | undefined>(undefined);
  // where it did not come, the page says so
  const planned = planning.then(
    ({ planOf }) => {
      planner.value = planOf;
    },
    () => undefined,
  );
  const plan = computed<Plan | undefined>(() => job.value && planner.value?.(job.value, shop.value));
  jobId.subscribe((id) => {
    draftsOf.value = id ?? '';
  });
  const undoing = undoingOf(log, store.own);

  /** Database and journal brought to hold the same; what the database had lost is shown again. */
  async function evenOut(): Promise<void> {
    await store.evenOut().catch(() => 0); // what comes back is heard
  }

  async function cameBack(entries: number): Promise<void> {
    restored.value += entries;
    const [lines, aside] = await Promise.all([store.jobs(), store.aside()]);
    jobs.value = lines;
    setAside.value = Math.max(setAside.value, aside.length);
    const open = jobId.value ?? jobs.value.find((line) => line.deleted === undefined)?.id;
    if (open !== undefined) await load(open);
  }

  const { route, go, arrived } = makeWay(settings, keep);

  async function openJob(id: string): Promise<void> {
    await load(id);
    await keep({ job: id });
  }

  /** Some browsers ask the person: nothing waits for the answer. */
  function askToKeep(): void {
    void askToPersist().then((answer) => {
      kept.value = answer;
    });
  }

  async function makeJob(name: string, id = randomId()): Promise<void> {
    const changes = editJob({ name, tape: settings.value.tape });
    const done = await store.makeJob({ job: id, label: `New job “${name}”`, changes });
    if (!done.ok) return noteTrouble(`New job “${name}”`, done.error, () => makeJob(name, id));
    jobs.value = await store.jobs();
    await openJob(id);
    askToKeep();
  }

  /** @param from the sample comes off no phone: nobody else has it by that */
  async function take(how: 'merge' | 'keep-both', from: 'phone' | 'sample' = 'phone'): Promise<void> {
    const now = offered.value;
    if (!now || !('file' in now)) return;
    const both = how === 'keep-both';
    const id = both ? randomId() : now.file.job;
    const stamp = { job: id, device: store.device, at: new Date().toISOString() };
    const log = both ? secondCopy(now.file.entries, stamp) : now.file.entries;
    const aside = how === 'merge' ? asideOf(now.against?.differing ?? []) : [];
    const done = await store.addEntries(id, log, aside);
    if (!done.ok) return noteTrouble('Taken in', done.error, () => take(how, from));
    offered.value = undefined;
    jobs.value = await store.jobs();
    await openJob(id);
    // asked for by hand: deleted here or there, the job is wanted
    if (job.value?.deleted !== undefined) {
      await setDeleted(id, undefined, 'Job brought back');
      await load(id);
    }
    if (!both && from === 'phone')
      await keep({ handed: (await looking).nowHanded(settings.value.handed, id, now.theirs) });
    askToKeep();
  }

  async function offer(text: string, by: CameBy = 'chosen'): Promise<void> {
    offered.value = undefined;
    cameBy.value = by;
    copies.value?.letGo();
    if (copies.value?.knows(text)) return copies.value.offer(text);
    const { lookAt } = await looking;
    const logOf = async (id: string) =>
      jobs.value.some((line) => line.id === id) ? (await store.load(id)).entries : undefined;
    offered.value = await lookAt(text, { logOf, shop: shop.value });
  }

  /** Other hands wrote: jobs, figures and settings are looked at again, and a job is opened when none is in hand. */
  async function refresh(): Promise<void> {
    const lines = await store.jobs();
    await values.load();
    jobs.value = lines;
    const inHand = jobId.value ?? lines.find((line) => line.deleted === undefined)?.id;
    if (inHand !== undefined) await openJob(inHand);
    askToKeep();
  }

  async function openSample(): Promise<void> {
    await offer(await sample());
    go({ at: 'job' });
    await bringFigures(); // before the job, so that no screen of it asks for what comes with it
    if (offered.value && 'file' in offered.value) await take('merge', 'sample');
  }

  /** The sample's shop figures and lists, where this phone has none of its own. */
  async function bringFigures(): Promise<void> {
    const { figures, lists } = (await looking).figuresFor(shop.value, settings.value);
    if (figures.length === 0 && lists === undefined) return;
    await Promise.all([
      ...figures.map(([field, value]) => values.keepShop(field, value)),
      keep({ figuresFrom: 'sample', ...(lists === undefined ? {} : { lists }) }),
    ]);
  }

  async function setDeleted(id: string, deleted: string | undefined, label: string): Promise<void> {
    const now = fold((await store.load(id)).entries);
    const done = await store.append({ job: id, label, changes: over(now, editJob({ deleted })) });
    if (!done.ok) return noteTrouble(label, done.error, () => setDeleted(id, deleted, label));
    jobs.value = await store.jobs();
  }

  async function deleteJob(): Promise<void> {
    const id = jobId.value;
    if (id === undefined) return;
    await setDeleted(id, new Date().toISOString(), 'Job deleted');
    const next = jobs.value.find((line) => line.deleted === undefined);
    if (next) await openJob(next.id);
    else jobId.value = undefined;
    go({ at: 'jobs' });
  }

  store.onChange((what) => {
    if (what === jobId.value) void catchUp();
    if (what === `reload ${jobId.value}`) void load(what.slice(7));
    void store.jobs().then((lines) => {
      jobs.value = lines;
    });
    if (what === 'settings') void values.catchUp();
  });
  store.onRestored((entries) => void cameBack(entries).then(evenOut));
  store.onValues(() => void values.load());
  store.onKeptIn((now) => {
    keptIn.value = now;
  });
  document.addEventListener('visibilitychange', () => {
    if (document.visibilityState === 'visible') void Promise.all([catchUp(), values.catchUp()]);
  });

  const alive = jobs.value.filter((line) => line.deleted === undefined);
  const last = alive.find((line) => line.id === settings.value.job) ?? alive[0];
  // a job that cannot be read leaves the others, and so does one over which a start froze
  if (last && !store.froze)
    await load(last.id).catch((error: unknown) =>
      noteTrouble('The last job', saveError(error), () => load(last.id)),
    );
  // nothing on the first screen moves once it stands: what is worked out is there from the start
  if ((job.value?.cases.length ?? 0) + (job.value?.banks.length ?? 0) > 0) await planned;
  void isPersisted().then((answer) => {
    kept.value = answer;
  });
  void store
    .purge(new Date().toISOString())
    .then(async () => {
      jobs.value = await store.jobs();
    })
    .catch(() => undefined); // tried again at the next start

  return {
    left: store.froze ? location.hash || settings.value.here || '#/' : undefined,
    route,
    job,
    plan,
    folded,
    doubled: computed(() => doubledIn(folded.value)),
    own: store.own,
    entries,
    jobs,
    shop,
    settings,
    unsaved: unsaved.now,
    keptIn,
    restored,
    readOnly: gone,
    saving: undoing.saving,
    underWay: computed(() => underWay.value.length > 0 || values.underWay.value),
    kept,
    setAside,
    updateWaiting,
    servedHere,
    offered,
    cameBy,
    figure: values.figure,
    undoLabel: undoing.label,
    go,
    arrive: arrived,
    act: (label, changes) => write(label, changes),
    undo: undoing.undo,
    newId: randomId,
    newJob: makeJob,
    openJob,
    openSample,
    deleteJob,
    bringBack: async (id) => {
      await setDeleted(id, undefined, 'Job brought back');
      await openJob(id);
    },
    keep,
    keepShop: values.keepShop,
    keepOnShelf: values.keepOnShelf,
    keepFigure: values.keepFigure,
    share: shareFile,
    jobFile: () => {
      const id = jobId.value ?? '';
      const last = entries.value[entries.value.length - 1]?.count ?? 0;
      return writeJobFile({ job: id, entries: [...entries.value, ...unsaved.entriesOf(id, last)] });
    },
    tryAgain: unsaved.tryAgain,
    letUnsavedGo: unsaved.letGo,
    seenRestored: () => {
      restored.value = 0;
    },
    evenOut,
    asideFile: async () => JSON.stringify(await store.aside(), null, 1),
    offer,
    take: (how) => take(how),
    letGo: () => {
      offered.value = undefined;
      copies.value?.letGo();
    },
    laying,
    startUpdate: async () => later.peek()?.startUpdate(() => store.secure().catch(() => false)),
    holdSaw: () => hold(sawLock),
    copies,
    home: homeScreen(),
  };
}
