import { begunFrom } from '../job/begun-from';
import { editJob } from '../job/edits';
import type { Change, Entry } from '../job/entry';
import { writeJobFile } from '../job/file';
import { jobOf, type Stock } from '../job/job';
import { fold, over } from '../job/log';
import type { Store } from '../store/store';
import type { LogInHand } from './log-in-hand';
import type { Router } from './router';
import type { ValuesInHand } from './values-in-hand';

/** What the shelf of jobs needs. */
export type ShelfHands = {
  readonly store: Pick<Store, 'jobs' | 'makeJob' | 'load' | 'append'>;
  readonly log: Pick<LogInHand, 'jobId' | 'entries' | 'unsaved' | 'load'>;
  readonly values: Pick<ValuesInHand, 'settings' | 'keep'>;
  /** Asks the browser to keep what is here: there is something worth keeping. */
  readonly askToKeep: () => void;
};

/** The same, and the way to another page. */
export type GoingHands = ShelfHands & { readonly go: Router['go'] };

type Own = ShelfHands & {
  readonly lookAgain: () => Promise<void>;
  readonly openJob: (id: string) => Promise<void>;
};

type Making = {
  readonly id: string;
  readonly name: string;
  /** Begun like the job in hand: with what was decided there, and with its readings or without. */
  readonly like?: { readonly readings: boolean };
};

export async function makeJob(own: Own, job: Making): Promise<void> {
  const { store, log, lookAgain, openJob, askToKeep } = own;
  const label = `New job “${job.name}”`;
  const done = await store.makeJob({ job: job.id, label, changes: beginning(own, job) });
  if (!done.ok) return log.unsaved.noteTrouble(label, done.error, () => makeJob(own, job));
  await lookAgain();
  await openJob(job.id);
  askToKeep();
}

const beginning = ({ log, values }: Own, { name, like }: Making): readonly Change[] =>
  like
    ? begunFrom(fold(wholeLog(log)).values, { name, ...like })
    : editJob({ name, tape: values.settings.value.tape });

/** The stock of a job kept here, with what was read of it. */
export async function stockOf({ store }: ShelfHands, id: string): Promise<readonly Stock[]> {
  return jobOf(id, fold((await store.load(id)).entries).values).stock;
}

type PuttingAway = {
  readonly id: string;
  /** ISO 8601; undefined brings it back. */
  readonly deleted: string | undefined;
  readonly label: string;
};

export async function putAway(own: Own, how: PuttingAway): Promise<void> {
  const { store, log, lookAgain } = own;
  const now = fold((await store.load(how.id)).entries);
  const changes = over(now, editJob({ deleted: how.deleted }));
  const done = await store.append({ job: how.id, label: how.label, changes });
  if (!done.ok) return log.unsaved.noteTrouble(how.label, done.error, () => putAway(own, how));
  await lookAgain();
}

type Going = Own &
  GoingHands & {
    /** The job that is taken into hand after one that is deleted. */
    readonly next: () => string | undefined;
  };

/** Deletes the job in hand. */
export async function deleteJob(own: Going): Promise<void> {
  const { log, openJob, go } = own;
  const id = log.jobId.value;
  if (id === undefined) return;
  await putAway(own, { id, deleted: new Date().toISOString(), label: 'Job deleted' });
  const next = own.next();
  if (next === undefined) log.jobId.value = undefined;
  else await openJob(next);
  go({ at: 'jobs' });
}

export async function bringBack(own: Own, id: string): Promise<void> {
  await putAway(own, { id, deleted: undefined, label: 'Job brought back' });
  await own.openJob(id);
}

type LogOfJob = Pick<ShelfHands['log'], 'jobId' | 'entries' | 'unsaved'>;

/** All of the job in hand: also what is not saved yet. */
function wholeLog({ jobId, entries, unsaved }: LogOfJob): readonly Entry[] {
  const last = entries.value[entries.value.length - 1]?.count ?? 0;
  return [...entries.value, ...unsaved.entriesOf(jobId.value ?? '', last)];
}

/** The job in hand as a file: also what is not saved yet. */
export function fileOf({ jobId, entries, unsaved }: LogOfJob): string {
  return writeJobFile({ job: jobId.value ?? '', entries: wholeLog({ jobId, entries, unsaved }) });
}
