import { readLists, type ShopLists, writeLists } from '../store/shop-lists';
import type { Bench } from './bench';

/** What lies in the shop's drawers. */
export const listsOf = (bench: Bench): ShopLists => readLists(bench.settings.value.lists);

export const keepLists = (bench: Bench, patch: Partial<ShopLists>): void =>
  void bench.keep({ lists: writeLists({ ...listsOf(bench), ...patch }) });
