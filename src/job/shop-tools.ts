import { toStored } from '../length/stored';
import type { Shop } from '../trade/machines/shop';
import type { Json } from './entry';
import { ownMachines, ownRows } from './own-machines';
import { shelfScrews } from './shelf-screws';
import { orderIn } from './tool-order';

/** What a shop works with beside its figures: the order of its tools, the machines it added, and its screws. */
export type ShopTools = Pick<Shop, 'order' | 'own' | 'screws'>;

let last: { readonly text: string; readonly tools: ShopTools } | undefined;

/**
 * Read of all that is kept of this phone; the very same as before where nothing of it changed, so that what was worked
 * out from the shop stands.
 */
export function shopTools(rows: Readonly<Record<string, Json>>): ShopTools {
  const [order, own, screws] = [orderIn(rows), ownRows(rows), shelfScrews(rows)];
  const text = JSON.stringify([order ?? null, own, screws.map(toStored)]);
  if (last?.text !== text) last = { text, tools: { order, own: ownMachines(own), screws } };
  return last.tools;
}
