import type { Job, PartNotes } from '../job/job';
import { keeper } from '../length/keeper';
import type { Case } from '../trade/carcass/case';
import type { SetMarks } from '../trade/carcass/sizes';

type Recuts = Readonly<Record<string, number>>;

const none: Recuts = {};
const kept = keeper<PartNotes, Recuts>();

/** By copy of a part, how often it was spoiled and cut again. */
export function recutsOf({ parts }: Pick<Job, 'parts'>, part: string): Recuts {
  const notes = parts[part];
  return notes ? kept(notes, [], () => recutsIn(notes)) : none;
}

const recutsIn = ({ pieces }: PartNotes): Recuts =>
  Object.fromEntries(Object.entries(pieces ?? {}).map(([copy, piece]) => [copy, piece.recuts]));

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
