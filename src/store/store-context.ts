import type { Entry } from '../job/entry';
import type { KeptIn } from './contract';
import type { Connection } from './db';
import type { Journal } from './journal/journal';
import { type Ahead, makeAhead } from './journal-overlay';
import type { Pages } from './pages';
import { laterThan } from './values';

/** What one page knows of the two copies and how they stand. */
export type Keeper = {
  readonly journal: Journal | undefined;
  readonly ahead: Ahead;
  /** Now, ISO 8601, but later than any moment seen in either copy: a clock set back makes no new value older. */
  readonly stamp: () => string;
  readonly sawStamp: (at: string) => void;
  /** Resolves when an emptied database is filled, or cannot be; nothing is written before that (D8). */
  readonly filled: () => Promise<void>;
  readonly fillWith: (filling: Promise<void>) => void;
  /** Whether the database was empty and the journal did not answer: nothing is compared until it has. */
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
  /** Device name of changes that the journal takes alone: see `aloneNameOf`. */
  readonly aloneName: string;
  readonly now: () => string;
  readonly pages: Pages;
} & Keeper;

const more = 8;

/**
 * Device name of changes that the journal takes alone. It is one page's, so nobody else takes its places in the log
 * (D3), and begins with the phone's, so that all its pages know the entries as theirs.
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
