import { type Signal, signal } from '@preact/signals';
import type { Shelf } from '../screens/bench';
import type { JobLine } from '../store/store';
import type { GoingHands } from './job-acts';
import { randomId } from './random';

type Hands = GoingHands & {
  /** What a tap sets off; it comes in a file of its own. */
  readonly acts: Promise<typeof import('./job-acts')>;
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

/** The job in hand; where there is none, the first that is not deleted. */
export const jobToShow = (
  { jobId }: Hands['log'],
  { jobs }: { readonly jobs: Signal<readonly JobLine[]> },
): string | undefined => jobId.value ?? standingJob(jobs.value, undefined)?.id;

/** The jobs of this phone. What could not be kept waits among what is not saved, and can be tried again. */
export function makeShelf(lines: readonly JobLine[], hands: Hands): JobShelf {
  const { store, log, values, acts } = hands;
  const jobs = signal(lines);

  async function lookAgain(): Promise<void> {
    jobs.value = await store.jobs();
  }

  async function openJob(id: string): Promise<void> {
    await log.load(id);
    await values.keep({ job: id });
  }

  const next = () => standingJob(jobs.value, undefined)?.id;
  const own = { ...hands, lookAgain, openJob, next };
  const setDeleted: JobShelf['setDeleted'] = async (id, deleted, label) =>
    (await acts).putAway(own, { id, deleted, label });

  const deleteJob = async () => (await acts).deleteJob(own);
  const bringBack: Shelf['bringBack'] = async (id) => (await acts).bringBack(own, id);
  const newJob: Shelf['newJob'] = async (name, like) =>
    (await acts).makeJob(own, { name, id: randomId(), ...(like ? { like } : {}) });
  const stockOf = async (id: string) => (await acts).stockOf(own, id);
  const jobFile = async () => (await acts).fileOf(log);
  return { jobs, lookAgain, openJob, setDeleted, deleteJob, bringBack, newJob, stockOf, jobFile };
}
