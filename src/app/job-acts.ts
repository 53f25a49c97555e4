import { editJob } from '../job/edits';
import { writeJobFile } from '../job/file';
import { fold, over } from '../job/log';
import type { Store } from '../store/store';
import type { LogInHand } from './log-in-hand';
import type { ValuesInHand } from './values-in-hand';

/** What the shelf of jobs needs. */
export type ShelfHands = {
  readonly store: Pick<Store, 'jobs' | 'makeJob' | 'load' | 'append'>;
  readonly log: Pick<LogInHand, 'jobId' | 'entries' | 'unsaved' | 'load'>;
  readonly values: Pick<ValuesInHand, 'settings' | 'keep'>;
  /** Asks the browser to keep what is here: there is something worth keeping. */
  readonly askToKeep: () => void;
};

type Own = ShelfHands & {
  readonly lookAgain: () => Promise<void>;
  readonly openJob: (id: string) => Promise<void>;
};

export async function makeJob(own: Own, job: { readonly name: string; readonly id: string }): Promise<void> {
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

export async function putAway(own: Own, how: PuttingAway): Promise<void> {
  const { store, log, lookAgain } = own;
  const now = fold((await store.load(how.id)).entries);
  const changes = over(now, editJob({ deleted: how.deleted }));
  const done = await store.append({ job: how.id, label: how.label, changes });
  if (!done.ok) return log.unsaved.noteTrouble(how.label, done.error, () => putAway(own, how));
  await lookAgain();
}

/** The job in hand as a file: also what is not saved yet. */
export function fileOf({ jobId, entries, unsaved }: ShelfHands['log']): string {
  const job = jobId.value ?? '';
  const last = entries.value[entries.value.length - 1]?.count ?? 0;
  return writeJobFile({ job, entries: [...entries.value, ...unsaved.entriesOf(job, last)] });
}
