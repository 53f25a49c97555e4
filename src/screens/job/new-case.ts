import { editCase } from '../../job/edits';
import type { Bench } from '../bench';
import * as words from './words';

/** A new case in the job in hand, or in a new one. */
export async function newCaseIn(bench: Bench): Promise<void> {
  if (!bench.job.value) await bench.shelf.newJob(words.firstJob);
  const id = bench.newId();
  const n = (bench.job.value?.cases.length ?? 0) + 1;
  const made = await bench.act(words.caseMade, editCase(id, { name: words.caseName(n), hold: 'outside' }));
  if (made) bench.go({ at: 'case', id });
}
