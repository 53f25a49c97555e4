import type { Entry } from './entry';

/** Entries of several logs, job by job. @example byJob([]).size // 0 */
export function byJob(entries: Iterable<Entry>): ReadonlyMap<string, readonly Entry[]> {
  const jobs = new Map<string, Entry[]>();
  for (const entry of entries) {
    const own = jobs.get(entry.job);
    if (own) own.push(entry);
    else jobs.set(entry.job, [entry]);
  }
  return jobs;
}
