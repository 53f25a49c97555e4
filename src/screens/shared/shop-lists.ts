import type { Settings } from '../../job/settings';
import { readLists, type ShopLists, shelfChanges } from '../../job/shop-lists';
import type { Bench } from '../bench';

/** What lies in the shop's drawers. */
export const listsOf = ({ lists, shelf }: Settings): ShopLists => readLists(lists, shelf);

/** Keeps what differs, thing by thing: what another page adds meanwhile is not touched. */
export function keepLists(bench: Bench, patch: Partial<ShopLists>): void {
  const lists = listsOf(bench.settings.value);
  void bench.keepOnShelf(shelfChanges(lists, { ...lists, ...patch }));
}
