import type { Job } from '../job/job';
import type { Case } from '../trade/carcass/case';
import type { SetMarks } from '../trade/carcass/sizes';

/** By copy of a part, how often it was spoiled and cut again. */
export const recutsOf = (job: Job, part: string): Readonly<Record<string, number>> =>
  Object.fromEntries(
    Object.entries(job.parts[part]?.pieces ?? {}).map(([copy, piece]) => [copy, piece.recuts]),
  );

/**
 * The marks a case keeps for what sets it: of a piece spoiled after others were cut to its mark, or of one that came
 * out otherwise and is to be matched.
 */
export function keptMarks({ parts }: Pick<Job, 'parts'>, { id }: Pick<Case, 'id'>): SetMarks {
  const of = (role: string) => parts[`${id}~${role}`];
  const across = of('bottom')?.mark;
  const up = of('left')?.mark ?? of('right')?.mark;
  const deep = of('left')?.markWide ?? of('right')?.markWide;
  return { ...(across ? { across } : {}), ...(up ? { up } : {}), ...(deep ? { deep } : {}) };
}
