import { inches, type Length, less } from '../../length/length';
import type { Ask } from './limits';
import { smallFence } from './plate';
import type { ShopField } from './shop';

/** What the smallest machine of its kind takes. Common practice, no source. Inches. */
const smallest: Partial<Record<ShopField, Length>> = {
  capacity: inches(24n),
  tableHeight: inches(2n),
  tableBehind: inches(24n),
  tableBeside: inches(24n),
  sledCross: inches(12n),
  stopReach: inches(24n),
  slidingCross: inches(12n),
  slidingStop: inches(24n),
  slidingHeight: inches(2n),
  routerReach: inches(1n, 2n),
  routerGuide: inches(24n),
  circularDepth: inches(2n),
  circularGuide: inches(48n),
  pressThroat: inches(4n),
  pressStroke: inches(2n),
  pressBit: inches(3n, 8n),
  plateFence: smallFence,
};

/**
 * Whether a blank figure is worth a question now: the cut wants more than the smallest machine of its kind takes.
 *
 * @example isDoubtful({ field: 'stopReach', wants: inches(48n) }) // true
 */
export function isDoubtful({ field, wants }: Ask): boolean {
  const least = smallest[field];
  return least === undefined || less(least, wants);
}
