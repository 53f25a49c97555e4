import type { Stand } from '../job/room';
import type { FootPlace } from '../trade/room/feet';

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
