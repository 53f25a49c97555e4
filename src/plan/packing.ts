import type { Length } from '../length/length';
import { frameOf } from '../trade/carcass/frame';
import type { Bank } from '../trade/fronts/bank';
import type { Plan } from './plan';

/** How far a face frame stands into the bay of a column: slides are packed out to it. Inches. */
export type Packing = { readonly column: number; readonly left: Length; readonly right: Length };

/** @returns one for each column, from the left; none where the case has no frame */
export function packingOf(
  worked: Plan['worked'] | undefined,
  { of = '', bay, across }: Bank,
): readonly Packing[] {
  const found = worked?.get(of);
  if (!found?.ok || !found.value.sizes.case.hasFrame) return [];
  return frameOf(found.value.sizes)
    .openings.slice(bay - 1, bay - 1 + Math.max(1, across))
    .map((opening, k) => ({ column: k + 1, left: opening.left.value, right: opening.right.value }));
}
