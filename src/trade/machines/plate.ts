import { atMost, inches, isPositive, type Length, subtract } from '../../length/length';
import type { Shop } from './shop';

/** As far as the fence of any plate joiner stands off its cutter. Common practice, no source. Inches. */
export const smallFence = inches(1n);

/**
 * How a plate joiner is brought to a line across a face: its fence on the end, or its base against a straightedge so
 * far from that end; how far is left out while its base was not measured. Inches.
 */
type PlateAt = { readonly by: 'fence' } | { readonly by: 'straightedge'; readonly at?: Length };

/**
 * How slots in a face are set, their middle so far from the end: the straightedge lies between that end and the joiner.
 *
 * @param off inches, > 0
 * @example plateAt(inches(20n), { plateBase: inches(3n, 8n) }) // a straightedge at 19 5/8
 */
export function plateAt(off: Length, { plateFence = smallFence, plateBase }: Shop): PlateAt {
  if (atMost(off, plateFence)) return { by: 'fence' };
  const at = plateBase && subtract(off, plateBase);
  return { by: 'straightedge', ...(at && isPositive(at) ? { at } : {}) };
}

type PlateField = 'plateDeep' | 'plateFence' | 'plateBase';

/** Slots of a plate joiner: their middle from the face or the end they are set off, how deep, and in what. Inches. */
export type SlotNeed = {
  readonly cut: 'slot';
  readonly in: 'end' | 'face';
  readonly off: Length;
  readonly depth: Length;
};

/**
 * What slots want of a joiner's figures. In an end it is set by its fence; over a face, where that does not reach, by
 * its base.
 */
export function slotWants(
  { in: where, off, depth }: SlotNeed,
  shop: Shop,
): readonly (readonly [field: PlateField, wants: Length])[] {
  const set = plateAt(off, shop);
  const unset = where === 'face' && set.by === 'straightedge' && !set.at;
  return [
    ['plateDeep', depth],
    ...(where === 'end' ? [['plateFence', off] as const] : []),
    ...(unset ? [['plateBase', off] as const] : []),
  ];
}
