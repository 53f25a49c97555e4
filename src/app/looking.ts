export { figuresFor } from './sample-figures';

import type { Offered } from '../screens/bench';
import type { Entry, Json } from '../store/entry';
import { compareWith } from '../store/file';
import { type HandedError, knownBy, readHanded, standing } from '../store/handover/handed';
import { handedOf, type Known, together, withHanded } from '../store/handover/known';

/** A job file, or changes to a job, looked at: all of it as one whole job, beside what is here. */
export async function lookAt(
  text: string,
  logOf: (job: string) => Promise<readonly Entry[] | undefined>,
): Promise<Offered | HandedError> {
  const read = readHanded(text);
  if (!read.ok) return read.error;
  const ours = await logOf(read.value.file.job);
  const whole = standing(read.value, ours);
  if (!whole.ok) return whole.error;
  return {
    file: whole.value,
    theirs: knownBy(read.value),
    ...(ours ? { against: compareWith(ours, whole.value.entries) } : {}),
  };
}

/** What is kept of who has what, once a job has come in from a phone. */
export const nowHanded = (handed: Json | undefined, job: string, theirs: Known): Json =>
  withHanded(handed, job, together(handedOf(handed, job) ?? new Map(), theirs));
