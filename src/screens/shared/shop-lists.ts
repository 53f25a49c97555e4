import { readLists, type ShopLists, shelfChanges } from '../../job/shop-lists';
import type { Bench } from '../bench';

/** What lies in the shop's drawers. */
export const listsOf = (bench: Bench): ShopLists =>
  readLists(bench.settings.value.lists, bench.settings.value.shelf);

/** Keeps what differs, thing by thing: what another page adds meanwhile is not touched. */
export const keepLists = (bench: Bench, patch: Partial<ShopLists>): void =>
  void bench.keepOnShelf(shelfChanges(listsOf(bench), { ...listsOf(bench), ...patch }));
