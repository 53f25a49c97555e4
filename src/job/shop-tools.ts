import type { Shop } from '../trade/machines/shop';
import type { Json } from './entry';
import { ownMachines, ownRows } from './own-machines';
import { orderIn } from './tool-order';

/** What a shop cuts with beside its figures: the order its tools are tried in, and the machines it added. */
export type ShopTools = Pick<Shop, 'order' | 'own'>;

let last: { readonly text: string; readonly tools: ShopTools } | undefined;

/**
 * Read of all that is kept of this phone; the very same as before where nothing of it changed, so that what was worked
 * out from the shop stands.
 */
export function shopTools(rows: Readonly<Record<string, Json>>): ShopTools {
  const [order, own] = [orderIn(rows), ownRows(rows)];
  const text = JSON.stringify([order ?? null, own]);
  if (last?.text !== text) last = { text, tools: { order, own: ownMachines(own) } };
  return last.tools;
}
