import { type Likes, likings } from '../store/backup';
import { type News, waysToTake } from '../store/backup-news';
import type { Json } from '../store/entry';
import type { Store } from '../store/store';
import type { Shop } from '../trade/grooves/board';

/** Of all that is kept among the settings, what a copy carries. */
export const likesOf = (kept: Readonly<Record<string, Json>>): Likes =>
  Object.fromEntries(
    likings.flatMap((liking) => (kept[liking] === undefined ? [] : [[liking, kept[liking]]])),
  );

/** Keeps a copy's figures and likings; says whether all of them were. */
export async function takeWays(store: Store, news: News, whose: 'ours' | 'theirs'): Promise<boolean> {
  const { shop, likes } = waysToTake(news, whose);
  for (const [field, value] of Object.entries(shop)) {
    if (!(await store.keepShop(field as keyof Shop, value)).ok) return false;
  }
  for (const [liking, value] of Object.entries(likes)) {
    if (!(await store.keep(liking, value)).ok) return false;
  }
  return true;
}
