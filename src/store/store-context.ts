import type { Entry } from '../job/entry';
import type { KeptIn } from './contract';
import type { Connection } from './db';
import type { Journal } from './journal/journal';
import { type Ahead, makeAhead } from './journal-overlay';
import type { Pages } from './pages';
import { laterThan } from './values';

/** How the database and the journal beside it stand, as one page knows it. */
export type Keeper = {
  readonly journal: Journal | undefined;
  readonly ahead: Ahead;
  /** A moment later than any seen in either copy, ISO 8601: a clock set back makes nothing older than it is. */
  readonly stamp: () => string;
  readonly sawStamp: (at: string) => void;
  /** Ends when an emptied database is filled, or cannot be: before that nothing is written. */
  readonly filled: () => Promise<void>;
  readonly fillWith: (filling: Promise<void>) => void;
  /** The database was empty and the journal did not answer: nothing is compared before it has. */
  readonly unfilled: (now?: boolean) => boolean;
  /** Values the journal had taken alone are in the database now. */
  readonly tookValues: () => void;
  readonly onValues: (heard: () => void) => void;
  readonly keptIn: () => KeptIn;
  readonly onKeptIn: (heard: (keptIn: KeptIn) => void) => void;
  readonly setKeptIn: (keptIn: KeptIn) => void;
  /** Notes entries that came back out of the journal. */
  readonly restored: (entries: number) => void;
  readonly howMany: () => number;
  readonly onRestored: (heard: (entries: number) => void) => void;
  /** Greatest count seen of a job: a change the journal alone takes follows it. */
  readonly last: (job: string) => number;
  readonly seen: (job: string, entries: readonly Entry[]) => void;
};

/** An open store's parts: the database, the journal beside it, and how the two stand. */
export type StoreContext = {
  readonly connection: Connection;
  readonly device: string;
  /** The name a change goes by that the journal alone takes: see `aloneNameOf`. */
  readonly aloneName: string;
  readonly now: () => string;
  readonly pages: Pages;
} & Keeper;

const more = 8;

/**
 * The name a change of one page goes by that the journal alone takes: nobody else takes its places in the log, and
 * all of this phone know it again.
 */
export const aloneNameOf = (device: string, random: string): string =>
  `${device}${random.padStart(more, '0').slice(-more)}`;

/** Whether a name in the log is this phone's, or of a page of it. @example isOurs('phone1', 'phone1') */
export const isOurs = (device: string, name: string): boolean =>
  name === device || (name.length === device.length + more && name.startsWith(device));

export function keeperOf(journal: Journal | undefined, now: () => string): Keeper {
  let latest = '';
  let keptIn: KeptIn = journal ? 'both' : 'database';
  const heard: ((keptIn: KeptIn) => void)[] = [];
  const counts = new Map<string, number>();
  let back = 0;
  const hearBack: ((entries: number) => void)[] = [];
  const hearValues: (() => void)[] = [];
  let unfilled = false;
  let filling = Promise.resolve();
  return {
    journal,
    ahead: makeAhead(),
    stamp: () => {
      latest = laterThan(latest, now());
      return latest;
    },
    sawStamp: (at) => {
      if (at > latest) latest = at;
    },
    filled: () => filling,
    fillWith: (now) => {
      filling = now;
    },
    unfilled: (now = unfilled) => {
      unfilled = now;
      return unfilled;
    },
    tookValues: () => {
      for (const hear of hearValues) hear();
    },
    onValues: (hear) => void hearValues.push(hear),
    keptIn: () => keptIn,
    onKeptIn: (hear) => void heard.push(hear),
    setKeptIn: (now) => {
      if (now === keptIn) return;
      keptIn = now;
      for (const hear of heard) hear(now);
    },
    restored: (entries) => {
      back += entries;
      for (const hear of hearBack) hear(entries);
    },
    howMany: () => back,
    onRestored: (hear) => void hearBack.push(hear),
    last: (job) => counts.get(job) ?? 0,
    seen: (job, entries) => {
      const most = entries.reduce((n, { count }) => Math.max(n, count), counts.get(job) ?? 0);
      counts.set(job, most);
    },
  };
}
