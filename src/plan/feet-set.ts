import type { Job } from '../job/job';
import type { Folded } from '../job/log';
import { footId, type Stand, standIn } from '../job/room';
import type { FootPlace } from '../trade/room/feet';
import type { FeetStand } from '../trade/setups/checklist';

const usualFeet = 2;

/** Feet in a row, from the left: two unless more are said. */
export const feetAcross = ({ across = usualFeet }: Stand): number => Math.min(9, Math.max(1, across));

/** Every foot a case stands on, front row first, from the left. */
export function feetPlaces(stand: Stand): readonly FootPlace[] {
  const rows = ['front', ...(stand.middleRow ? (['middle'] as const) : []), 'back'] as const;
  return rows.flatMap((row) =>
    Array.from({ length: feetAcross(stand) }, (_, k): FootPlace => ({ row, number: k + 1 })),
  );
}

/** The step of one foot of a case, as a tick keeps it. @example footStep('c1', 'front2') */
export const footStep = (id: string, foot: string): string => `cut/${id}~bench/foot~${foot}/1`;

/**
 * How many feet of a case are set of those that were read; nothing until every foot is read: such a case is levelled
 * by the level alone.
 */
export function feetStandOf(job: Job, id: string, ticks: Folded['ticks']): FeetStand | undefined {
  const stand = standIn(job, id);
  const feet = feetPlaces(stand).map(footId);
  const read = stand.feet.map(footId);
  if (!feet.every((foot) => read.includes(foot))) return undefined;
  return { set: feet.filter((foot) => ticks.has(footStep(id, foot))).length, of: feet.length };
}
