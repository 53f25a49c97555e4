import type { Shop, ShopField } from '../trade/machines/shop';
import { type Backup, type Likes, type Liking, likings, shopRows } from './backup';
import { canonical } from './canonical';
import type { Comparison, JobFile } from './file';

/** What this phone keeps beside its jobs. */
export type Ways = { readonly shop: Shop; readonly likes: Likes };
export type Place = ShopField | Liking;

/** One job of a copy beside the one here; a job this phone does not have stands alone. */
export type JobNews = { readonly file: JobFile; readonly against?: Comparison };

/** A copy of everything looked at before anything of it is taken. */
export type News = {
  readonly backup: Backup;
  readonly jobs: readonly JobNews[];
  /** Entries new to this phone, in all jobs. */
  readonly entries: number;
  /** Jobs of which something is new. */
  readonly touched: number;
  /** Entries at a place where this phone has another: they would be set aside. */
  readonly differing: number;
  /** Figures and likings both have, and not the same. */
  readonly places: readonly Place[];
  /** Figures and likings this phone lacks. */
  readonly lacking: readonly Place[];
};

const freshIn = ({ file, against }: JobNews): number => (against?.fresh ?? file.entries).length;

/** What a copy holds that is not here. */
export function newsOf(backup: Backup, jobs: readonly JobNews[], here: Ways): News {
  const [ours, theirs] = [kept(here), kept(backup)];
  const both = [...theirs.keys()].filter((place) => ours.has(place));
  return {
    backup,
    jobs,
    entries: jobs.reduce((sum, job) => sum + freshIn(job), 0),
    touched: jobs.filter((job) => freshIn(job) > 0).length,
    differing: jobs.reduce((sum, { against }) => sum + (against?.differing.length ?? 0), 0),
    // the strip of Figure is work in hand, not a way of doing things: it fills an empty one and never writes over
    // another
    places: both.filter((place) => place !== 'figure' && ours.get(place) !== theirs.get(place)),
    lacking: [...theirs.keys()].filter((place) => !ours.has(place)),
  };
}

const kept = ({ shop, likes }: Ways): ReadonlyMap<Place, string> =>
  new Map<Place, string>([
    ...shopRows(shop),
    ...likings.flatMap((liking) => {
      const value = likes[liking];
      return value === undefined ? [] : [[liking, canonical(value)] as const];
    }),
  ]);

/**
 * What to keep of a copy's figures and likings: what this phone lacks, and with `theirs` also what differs.
 *
 * @example waysToTake(news, 'ours').shop // figures not measured here yet
 */
export function waysToTake(news: News, whose: 'ours' | 'theirs'): Ways {
  const places: readonly string[] = whose === 'theirs' ? [...news.lacking, ...news.places] : news.lacking;
  const only = <T extends object>(all: T): T =>
    Object.fromEntries(Object.entries(all).filter(([place]) => places.includes(place))) as T;
  return { shop: only(news.backup.shop), likes: only(news.backup.likes) };
}
