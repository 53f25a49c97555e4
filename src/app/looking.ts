import type { Entry, Json } from '../job/entry';
import { compareWith } from '../job/file';
import { jobOf } from '../job/job';
import { fold, merge } from '../job/log';
import { type TooMuch, tooMuchOf } from '../plan/plan';
import type { Offered } from '../screens/bench';
import { type HandedError, knownBy, readHanded, standing } from '../store/handover/handed';
import { handedOf, type Known, together, withHanded } from '../store/handover/known';
import type { Shop } from '../trade/machines/shop';

type Here = {
  /** This phone's log of a job, where it has it. */
  readonly logOf: (job: string) => Promise<readonly Entry[] | undefined>;
  readonly shop: Shop;
};

/**
 * A job file, or changes to a job, looked at: all of it as one whole job, beside what is here. What would be too much
 * to be worked out, once it is taken in, is refused.
 */
export async function lookAt(text: string, { logOf, shop }: Here): Promise<Offered | HandedError | TooMuch> {
  const read = readHanded(text);
  if (!read.ok) return read.error;
  const { job } = read.value.file;
  const ours = await logOf(job);
  const whole = standing(read.value, ours);
  if (!whole.ok) return whole.error;
  const { entries } = whole.value;
  const tooMuch = tooMuchOf(jobOf(job, fold(ours ? merge(ours, entries) : entries).values), shop);
  if (tooMuch) return tooMuch;
  return {
    file: whole.value,
    theirs: knownBy(read.value),
    ...(ours ? { against: compareWith(ours, entries) } : {}),
  };
}

/** What is kept of who has what, once a job has come in from a phone. */
export const nowHanded = (handed: Json | undefined, job: string, theirs: Known): Json =>
  withHanded(handed, job, together(handedOf(handed, job) ?? new Map(), theirs));
