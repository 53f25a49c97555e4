import type { Settings } from '../../job/settings';
import { readLists, type ShopLists, shelfChanges } from '../../job/shop-lists';
import type { Reach } from '../../trade/machines/limits';
import type { Bench } from '../bench';

/** What lies in the shop's drawers. */
export const listsOf = ({ lists, shelf }: Settings): ShopLists => readLists(lists, shelf);

/** The shop's figures, and the most its arbor carries: what a machine can take is told by them. */
export const reachOf = ({ shop, settings }: Pick<Bench, 'shop' | 'settings'>): Reach => ({
  ...shop.value,
  arbor: listsOf(settings.value).stack.arbor,
});

/** Keeps what differs, thing by thing: what another page adds meanwhile is not touched. */
export function keepLists(bench: Bench, patch: Partial<ShopLists>): void {
  const lists = listsOf(bench.settings.value);
  void bench.keepOnShelf(shelfChanges(lists, { ...lists, ...patch }));
}
