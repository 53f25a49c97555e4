import type { Job } from '../job/job';
import type { Folded } from '../job/log';
import { footId } from '../job/room';
import { tickedAt } from '../job/ticked-at';
import type { FeetStand } from '../trade/setups/checklist';
import { footFigures, levelPlanOf } from './level-plan';

/** The step of one foot of a case, as a tick keeps it. @example footStep('c1', 'front2') */
export const footStep = (id: string, foot: string): string => `cut/${id}~bench/foot~${foot}/1`;

/**
 * How many feet of a case are set of those that were read; nothing until every foot is read: such a case is levelled
 * by the level alone. A foot is set while its tick keeps the figure it has now: another reading, of this phone or of
 * another, makes it one to be set.
 */
export function feetStandOf(job: Job, id: string, ticks: Folded['ticks']): FeetStand | undefined {
  const level = levelPlanOf(job, id);
  if (level.missing > 0) return undefined;
  const figures = footFigures(level);
  const isSet = (foot: string): boolean => {
    const figure = figures.get(foot);
    return figure !== undefined && tickedAt(ticks, footStep(id, foot), figure);
  };
  return { set: level.places.map(footId).filter(isSet).length, of: level.places.length };
}
