import type { Values } from '../values';
import type { Sum } from './kept-rows';
import type { Row } from './row';

/** What the journal holds, without its entries. */
export type Summary = {
  readonly sum: Sum;
  readonly settings: Values;
  readonly shop: Values;
};

/**
 * The second copy of everything kept, in a file beside the database. Every call settles: `undefined` or false when
 * the file did not answer.
 */
export type Journal = {
  /** True once the rows are on the phone's disk. */
  readonly append: (rows: readonly Row[]) => Promise<boolean>;
  readonly summary: () => Promise<Summary | undefined>;
  /** Every row that stands, none superseded. */
  readonly rows: () => Promise<readonly Row[] | undefined>;
  /**
   * The page is on its way to its screen since `at`. Names the start before it where that was only killed or stood,
   * `frozen` where it froze.
   */
  readonly starting: (at: string) => Promise<string | undefined>;
  /** The page stands. */
  readonly stood: () => void;
  readonly close: () => void;
};

/** What the worker is asked, each with a number its answer carries. */
export type JournalAsked = {
  readonly no: number;
  readonly what: 'append' | 'summary' | 'rows';
  readonly rows?: readonly Row[];
};

/** What the worker is told of the page's start. */
export type StartAsked = {
  readonly no: number;
  readonly what: 'starting' | 'stood';
  readonly at?: string;
};

/**
 * What the first script asks, by the number 0 and not through a `Journal`: the worker is at work while the page reads
 * in the app.
 */
export type MarkAsked = { readonly no: 0; readonly what: 'mark'; readonly job: string };

export type JournalTold = {
  readonly no: number;
  readonly summary?: Summary;
  readonly rows?: readonly Row[];
  /** What was seen of the start before: see `watchOfStart`. */
  readonly seen?: string;
  /** See `markOf`. */
  readonly mark?: string;
  /** What went wrong, by its name. */
  readonly error?: string;
};
