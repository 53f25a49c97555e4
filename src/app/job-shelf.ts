import { type Signal, signal } from '@preact/signals';
import { editJob } from '../job/edits';
import { writeJobFile } from '../job/file';
import { fold, over } from '../job/log';
import type { Shelf } from '../screens/bench';
import type { JobLine, Store } from '../store/store';
import type { LogInHand } from './log-in-hand';
import { randomId } from './random';
import type { Router } from './router';
import type { ValuesInHand } from './values-in-hand';

/** What the shelf of jobs needs. */
type ShelfHands = {
  readonly store: Pick<Store, 'jobs' | 'makeJob' | 'load' | 'append'>;
  readonly log: Pick<LogInHand, 'jobId' | 'entries' | 'unsaved' | 'load'>;
  readonly values: Pick<ValuesInHand, 'settings' | 'keep'>;
  readonly go: Router['go'];
  /** Asks the browser to keep what is here: there is something worth keeping. */
  readonly askToKeep: () => void;
};

export type JobShelf = Shelf & {
  readonly jobs: Signal<readonly JobLine[]>;
  /** Reads the lines of all jobs again. */
  readonly lookAgain: () => Promise<void>;
  readonly setDeleted: (id: string, deleted: string | undefined, label: string) => Promise<void>;
};

/**
 * @param job the one that is in hand, or was at the last start;
 * @returns it, where it is there, else the first that is
 */
export const standingJob = (lines: readonly JobLine[], job: string | undefined): JobLine | undefined => {
  const alive = lines.filter((line) => line.deleted === undefined);
  return alive.find((line) => line.id === job) ?? alive[0];
};

/** The jobs of this phone. What could not be kept waits among what is not saved, and can be tried again. */
export function makeShelf(lines: readonly JobLine[], hands: ShelfHands): JobShelf {
  const { store, log, values, go } = hands;
  const jobs = signal(lines);

  async function lookAgain(): Promise<void> {
    jobs.value = await store.jobs();
  }

  async function openJob(id: string): Promise<void> {
    await log.load(id);
    await values.keep({ job: id });
  }

  const own: Own = { ...hands, lookAgain, openJob };
  const setDeleted: JobShelf['setDeleted'] = (id, deleted, label) => putAway(own, { id, deleted, label });

  async function deleteJob(): Promise<void> {
    const id = log.jobId.value;
    if (id === undefined) return;
    await setDeleted(id, new Date().toISOString(), 'Job deleted');
    const next = standingJob(jobs.value, undefined);
    if (next) await openJob(next.id);
    else log.jobId.value = undefined;
    go({ at: 'jobs' });
  }

  async function bringBack(id: string): Promise<void> {
    await setDeleted(id, undefined, 'Job brought back');
    await openJob(id);
  }

  const newJob = (name: string) => makeJob(own, { name, id: randomId() });
  const jobFile = () => fileOf(log);
  return { jobs, lookAgain, openJob, setDeleted, deleteJob, bringBack, newJob, jobFile };
}

type Own = ShelfHands & Pick<JobShelf, 'lookAgain' | 'openJob'>;

async function makeJob(own: Own, job: { readonly name: string; readonly id: string }): Promise<void> {
  const { store, log, values, lookAgain, openJob, askToKeep } = own;
  const label = `New job “${job.name}”`;
  const changes = editJob({ name: job.name, tape: values.settings.value.tape });
  const done = await store.makeJob({ job: job.id, label, changes });
  if (!done.ok) return log.unsaved.noteTrouble(label, done.error, () => makeJob(own, job));
  await lookAgain();
  await openJob(job.id);
  askToKeep();
}

type PuttingAway = {
  readonly id: string;
  /** ISO 8601; undefined brings it back. */
  readonly deleted: string | undefined;
  readonly label: string;
};

async function putAway(own: Own, how: PuttingAway): Promise<void> {
  const { store, log, lookAgain } = own;
  const now = fold((await store.load(how.id)).entries);
  const changes = over(now, editJob({ deleted: how.deleted }));
  const done = await store.append({ job: how.id, label: how.label, changes });
  if (!done.ok) return log.unsaved.noteTrouble(how.label, done.error, () => putAway(own, how));
  await lookAgain();
}

/** The job in hand as a file: also what is not saved yet. */
function fileOf({ jobId, entries, unsaved }: ShelfHands['log']): string {
  const job = jobId.value ?? '';
  const last = entries.value[entries.value.length - 1]?.count ?? 0;
  return writeJobFile({ job, entries: [...entries.value, ...unsaved.entriesOf(job, last)] });
}
