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
  let keptIn: KeptIn = journal ? 'both' : 'database';
  let back = 0;
  let unfilled = false;
  let filling = Promise.resolve();
  const kept = hearers<KeptIn>();
  const restored = hearers<number>();
  const values = hearers<void>();
  return {
    journal,
    ahead: makeAhead(),
    ...clock(now),
    ...greatestCounts(),
    filled: () => filling,
    fillWith: (now) => {
      filling = now;
    },
    unfilled: (now = unfilled) => {
      unfilled = now;
      return unfilled;
    },
    tookValues: values.tell,
    onValues: values.hear,
    keptIn: () => keptIn,
    onKeptIn: kept.hear,
    setKeptIn: (now) => {
      if (now === keptIn) return;
      keptIn = now;
      kept.tell(now);
    },
    restored: (entries) => {
      back += entries;
      restored.tell(entries);
    },
    howMany: () => back,
    onRestored: restored.hear,
  };
}

type Hearers<T> = { readonly hear: (heard: (now: T) => void) => void; readonly tell: (now: T) => void };

/** Those who want to hear of something, in the order they said so. */
function hearers<T>(): Hearers<T> {
  const all: ((now: T) => void)[] = [];
  return {
    hear: (heard) => void all.push(heard),
    tell: (now) => {
      for (const heard of all) heard(now);
    },
  };
}

function clock(now: () => string): Pick<Keeper, 'stamp' | 'sawStamp'> {
  let latest = '';
  return {
    stamp: () => {
      latest = laterThan(latest, now());
      return latest;
    },
    sawStamp: (at) => {
      if (at > latest) latest = at;
    },
  };
}

function greatestCounts(): Pick<Keeper, 'last' | 'seen'> {
  const counts = new Map<string, number>();
  const last = (job: string) => counts.get(job) ?? 0;
  return {
    last,
    seen: (job, entries) =>
      void counts.set(
        job,
        entries.reduce((n, { count }) => Math.max(n, count), last(job)),
      ),
  };
}
