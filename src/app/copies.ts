import { effect, type Signal, signal } from '@preact/signals';
import { type Backup, isBackup, readBackup, writeBackup } from '../job/backup';
import { type JobNews, newsOf, type Ways } from '../job/backup-news';
import { editJob } from '../job/edits';
import { asideOf, compareWith, type JobFile } from '../job/file';
import { fold, over } from '../job/log';
import { isPictured } from '../job/pictured-file';
import type { CameIn, Copies, WentOut } from '../screens/copies';
import type { JobLine, Store } from '../store/store';
import { likesOf, takeWays } from './backup-preferences';
import { copyCount } from './copy-count';
import { handOut } from './hand-out';
import { type JobShelf, jobToShow } from './job-shelf';
import type { LogInHand } from './log-in-hand';
import { picturedIn, writePictured } from './pictured';
import { picturesOf } from './pictures';
import type { ValuesInHand } from './values-in-hand';

/** What copying needs of the bench. */
type CopyHands = {
  readonly store: Store;
  readonly log: Pick<LogInHand, 'jobId' | 'entries' | 'unsaved' | 'load' | 'acted'>;
  readonly values: Pick<ValuesInHand, 'load'>;
  readonly shelf: Pick<JobShelf, 'jobs' | 'lookAgain' | 'openJob'>;
  /** Asks the browser to keep what is here. */
  readonly phone: { readonly askToKeep: () => void };
};

/** Everything of this phone, out and in. */
export function copiesOf(hands: CopyHands): Copies {
  const {
    store,
    log: { acted },
  } = hands;
  const offered: Offered = signal(undefined);
  const pictures = picturesOf(store);
  const pictured = picturedIn(pictures);
  const counted = copyCount(store);
  let last = 0; // what was done before this file came counts too
  effect(() => {
    counted.add(acted.value - last);
    last = acted.value;
  });
  return {
    ...counted,
    pictures,
    pictured: pictured.at,
    hold: pictured.hold,
    out: async () => {
      const upTo = counted.since.peek();
      const went = await handAllOut(store);
      if (isOut(went)) await counted.copied(upTo);
      return went;
    },
    outPictured: async (name, job) => {
      const upTo = counted.since.peek();
      const [went, missing] = await handPicturedOut({ store, pictures }, name, job);
      if (job === undefined && isOut(went)) await counted.copied(upTo);
      return [went, missing];
    },
    offered,
    offer: async (text) => {
      const inside = isPictured(text) ? await pictured.look(text) : { ok: true as const, value: text };
      if (inside.ok) await lookAtCopy(store, offered, inside.value);
      else offered.value = inside.error;
    },
    take: (whose) => takeCopy({ ...hands, pictured }, offered, whose),
    knows: (text) => isPictured(text) || isBackup(text),
    letGo: () => {
      pictured.letGo();
      offered.value = undefined;
    },
  };
}

const isOut = (went: WentOut): boolean => went !== 'left' && went !== 'not-written' && went !== 'no-check';

type Offered = Signal<Copies['offered']['value']>;

async function handAllOut(store: Store): Promise<WentOut> {
  if (!globalThis.crypto.subtle) return 'no-check';
  let failed = false;
  const text = async () => {
    const written = await writeBackup(await everything(store));
    if (!written.ok) failed = true;
    return written.ok ? written.value : '';
  };
  const went = await handOut(`Knifeline ${day(new Date())}`, text);
  return failed ? 'no-check' : went;
}

type PicturedHands = Pick<CopyHands, 'store'> & Pick<Copies, 'pictures'>;

async function handPicturedOut(
  { store, pictures }: PicturedHands,
  name: string,
  job: string | undefined,
): Promise<readonly [WentOut, number]> {
  if (!globalThis.crypto.subtle) return ['no-check', 0];
  let missing = 0;
  const file = async () => {
    const written = await writePictured(
      await (job === undefined ? everything(store) : one(store, job)),
      pictures,
    );
    if (written.ok) missing = written.value.missing;
    return written.ok ? written.value.file : '';
  };
  return [await handOut(job === undefined ? `${name} ${day(new Date())}` : name, file), missing];
}

/** One job alone, without the shop's figures. */
const one = async (store: Store, job: string): Promise<Backup> => ({
  jobs: [{ job, entries: (await store.load(job)).entries }],
  shop: {},
  likes: {},
});

async function lookAtCopy(store: Store, offered: Offered, text: string): Promise<void> {
  const read = await readBackup(text);
  if (!read.ok) {
    offered.value = read.error;
    return;
  }
  const jobs = await Promise.all(read.value.jobs.map(besideOurs(store, await store.jobs())));
  offered.value = newsOf(read.value, jobs, await waysOf(store));
}

async function takeCopy(
  { pictured, ...hands }: CopyHands & { readonly pictured: ReturnType<typeof picturedIn> },
  offered: Offered,
  whose: 'ours' | 'theirs',
): Promise<CameIn> {
  const { store } = hands;
  const news = offered.peek();
  if (!news || 'code' in news) return { jobs: 0, of: 0, pictures: true };
  const jobs = await takeJobs(store, news.jobs);
  const whole = jobs === news.jobs.length && (await takeWays(store, news, whose));
  const files = news.jobs.map(({ file }) => file);
  const pictures = !whole || (await pictured.take(files));
  await lookAgain(hands);
  if (whole && pictures) offered.value = undefined;
  return { jobs, of: news.jobs.length, pictures };
}

/** A copy was taken in: all is looked at again, and a job is opened when none is in hand. */
async function lookAgain({ log, values, shelf, phone }: CopyHands): Promise<void> {
  await values.load();
  await shelf.lookAgain();
  const open = jobToShow(log, shelf);
  if (open !== undefined) await shelf.openJob(open);
  phone.askToKeep();
}

/** Takes jobs in, one after the other; says how many, where the phone stops taking. */
async function takeJobs(store: Store, news: readonly JobNews[]): Promise<number> {
  const lines = await store.jobs();
  for (const [k, { file, against }] of news.entries()) {
    const here = lines.find(({ id }) => id === file.job);
    const done = await store.addEntries(file.job, file.entries, asideOf(against?.differing ?? []));
    if (!done.ok) return k;
    if (here && here.deleted === undefined) await aliveAgain(store, file.job);
  }
  return news.length;
}

/** A job that stands here goes on standing, though the copy says it was deleted. */
async function aliveAgain(store: Store, job: string): Promise<void> {
  const now = (await store.jobs()).find(({ id }) => id === job);
  if (now?.deleted === undefined) return;
  const folded = fold((await store.load(job)).entries);
  const changes = over(folded, editJob({ deleted: undefined }));
  await store.append({ job, label: 'Job brought back', changes });
}

/** Every job of the phone, the deleted ones too: they can still come back. */
async function everything(store: Store): Promise<Backup> {
  const jobs: JobFile[] = [];
  for (const { id } of await store.jobs()) {
    const { entries } = await store.load(id);
    jobs.push({ job: id, entries });
  }
  return { jobs, ...(await waysOf(store)) };
}

const waysOf = async (store: Store): Promise<Ways> => ({
  shop: await store.shop(),
  likes: likesOf(await store.settings()),
});

const besideOurs =
  (store: Store, lines: readonly JobLine[]) =>
  async (file: JobFile): Promise<JobNews> =>
    lines.some(({ id }) => id === file.job)
      ? { file, against: compareWith((await store.load(file.job)).entries, file.entries) }
      : { file };

/** The day by the phone's own clock: `2026-11-29`. */
const day = (at: Date): string =>
  [at.getFullYear(), at.getMonth() + 1, at.getDate()].map((n) => `${n}`.padStart(2, '0')).join('-');
