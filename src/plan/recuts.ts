import type { Job } from '../job/job';

/** By copy of a part, how often it was spoiled and cut again. */
export const recutsOf = (job: Job, part: string): Readonly<Record<string, number>> =>
  Object.fromEntries(
    Object.entries(job.parts[part]?.pieces ?? {}).map(([copy, piece]) => [copy, piece.recuts]),
  );
