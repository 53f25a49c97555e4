import { type Likes, likings } from '../job/backup';
import { type News, waysToTake } from '../job/backup-news';
import type { Json } from '../job/entry';
import { readSettings } from '../job/settings';
import { readLists, shelfChanges, writeLists } from '../job/shop-lists';
import { figureWhole } from '../screens/figure/figure.kept';
import type { Store } from '../store/store';
import type { ShopField } from '../trade/machines/shop';

/** Of all that is kept among the settings, what a copy carries. */
export function likesOf(kept: Readonly<Record<string, Json>>): Likes {
  const { lists, shelf } = readSettings(kept);
  const none = lists === undefined && Object.keys(shelf).length === 0;
  const strip = Object.keys(kept).some((key) => key.startsWith('strip/'));
  const all: Readonly<Record<string, Json>> = {
    ...kept,
    ...(none ? {} : { lists: writeLists(readLists(lists, shelf)) }),
    ...(strip ? { figure: figureWhole(kept) } : {}),
  };
  return Object.fromEntries(
    likings.flatMap((liking) => (all[liking] === undefined ? [] : [[liking, all[liking]]])),
  );
}

/** Keeps a copy's figures and likings; says whether all of them were. */
export async function takeWays(store: Store, news: News, whose: 'ours' | 'theirs'): Promise<boolean> {
  const { shop, likes } = waysToTake(news, whose);
  for (const field of Object.keys(shop) as ShopField[]) {
    if (!(await store.keepShop(field, shop[field])).ok) return false;
  }
  const { lists, ...others } = likes;
  const { lists: whole, shelf } = readSettings(await store.settings());
  const empty = whole === undefined && Object.keys(shelf).length === 0;
  // over lists that are here it is told thing by thing
  const over = () => shelfChanges(readLists(whole, shelf), readLists(lists));
  const things = lists === undefined ? {} : empty ? { lists } : over();
  for (const [liking, value] of Object.entries({ ...others, ...things })) {
    if (!(await store.keep(liking, value)).ok) return false;
  }
  return true;
}
