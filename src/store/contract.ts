import type { Entry, Json } from '../job/entry';
import type { Aside } from '../job/rows';
import type { Length } from '../length/length';
import type { Result } from '../length/result';
import type { Shop, ShopField } from '../trade/machines/shop';
import type { Connection, SaveError } from './db';
import type { Journal } from './journal/journal';
import type { JobLine, Loaded } from './reads';
import type { NewAct } from './writes';

/**
 * - `both`: the database and the journal have it.
 * - `database`: the database alone; this browser has no place for a journal, or it does not answer.
 * - `journal`: the database does not take it; the journal has it, and gives it back at the next start.
 */
export type KeptIn = 'both' | 'database' | 'journal';

export type Store = {
  readonly device: string;
  /** The job that the settings of the database name as the last in hand, so that it can be asked for at once. */
  readonly last: string | undefined;
  /** Whether entries by this name are of this phone: also those the journal took alone. */
  readonly own: (name: string) => boolean;
  /** Makes a job, empty but for its first act. */
  readonly makeJob: (act: NewAct) => Promise<Result<readonly Entry[], SaveError>>;
  /** Adds an act. Resolves with its entries once they are on the phone's storage, not before. */
  readonly append: (act: NewAct) => Promise<Result<readonly Entry[], SaveError>>;
  /**
   * The whole log of a job, in order. Rows that cannot be read are set aside, whole, and counted; on a full disk
   * they stay in place, left out and counted.
   */
  readonly load: (job: string) => Promise<Loaded>;
  /** Entries of a job from a count on: what another page added. */
  readonly since: (job: string, count: number) => Promise<readonly Entry[]>;
  readonly jobs: () => Promise<readonly JobLine[]>;
  /** Takes in another copy's entries; ours stand where both have one. */
  readonly addEntries: (
    job: string,
    entries: readonly Entry[],
    aside?: readonly Aside[],
  ) => Promise<Result<number, SaveError>>;
  /**
   * Once a start: removes for good what was deleted long ago, by this reading of the clock (ISO 8601) and those of
   * starts before.
   */
  readonly purge: (now: string) => Promise<void>;
  /** Once a start: packs old entries, so that the next start reads them fast. Nothing of what is kept changes. */
  readonly pack: () => Promise<void>;
  /** Entries the database had lost and the journal gave back, so far. */
  readonly restored: () => number;
  /** Calls back with how many came back when the browser emptied the database under the open page. */
  readonly onRestored: (heard: (entries: number) => void) => void;
  /** Calls back when figures and settings the journal had taken alone are in the database. */
  readonly onValues: (heard: () => void) => void;
  /** Compares database and journal and gives each what it lacks; says how many entries the database had lost. */
  readonly evenOut: () => Promise<number>;
  /** Whether everything is in both copies, where there is a place for two; brings them even first. */
  readonly secure: () => Promise<boolean>;
  /** How many copies of the last change there are. */
  readonly keptIn: () => KeptIn;
  readonly onKeptIn: (heard: (now: KeptIn) => void) => void;
  /** The start before froze: it never stood, and was seen to take long, or nobody saw it nor the one before (D16). */
  readonly froze: boolean;
  /** Called once the screen stands, or the page is left by hand: a frozen page gets to neither. */
  readonly stands: () => void;
  /** A newer version of the app has the database: nothing is written any more. */
  readonly readOnly: () => boolean;
  readonly aside: () => Promise<readonly Aside[]>;
  readonly setting: (key: string) => Promise<Json | undefined>;
  readonly settings: () => Promise<Readonly<Record<string, Json>>>;
  readonly keep: (key: string, value: Json) => Promise<Result<null, SaveError>>;
  readonly shop: () => Promise<Shop>;
  readonly keepShop: (key: ShopField, value: Length | undefined) => Promise<Result<null, SaveError>>;
  /** Calls back when another page has written: a job's id, `reload` and the id after an import, or `settings`. */
  readonly onChange: (heard: (what: string) => void) => void;
  /** Pictures are kept over the same connection: see `pictures/`. */
  readonly connection: Connection;
  readonly close: () => void;
};

export type StoreOptions = {
  readonly name?: string;
  readonly randomId: () => string;
  readonly now: () => string;
  /** Another page upgraded the database: this one can no longer write. */
  readonly onGone?: () => void;
  /** Nothing has opened in three seconds: it is waited for on. */
  readonly onSlow?: () => void;
  /** The second copy, where there is a place for it. */
  readonly journal?: Journal | undefined;
  /** How long one piece of work may take before it is tried again, milliseconds. */
  readonly patience?: number;
};
