import type { ReadonlySignal } from '@preact/signals';
import type { BackupError } from '../job/backup';
import type { News } from '../job/backup-news';
import type { Pictures } from './pictures';

/** What became of a copy that was to go out: a file where it was put, or handed on, or nothing. */
export type WentOut = 'file' | 'shared' | 'downloaded' | 'left' | 'not-written' | 'no-check';

/** How much came in: all of it, or the phone stopped taking after so many jobs. */
export type CameIn = { readonly jobs: number; readonly of: number };

/** Everything of this phone in one file: out, in, and when it was last done. */
export type Copies = {
  /** The bytes of pictures, which no job's file holds. */
  readonly pictures: Pictures;
  readonly out: () => Promise<WentOut>;
  /** Changes since everything was last copied out. */
  readonly since: ReadonlySignal<number>;
  /** When that was, ISO 8601. */
  readonly at: ReadonlySignal<string | undefined>;
  /** It is time to copy out again. */
  readonly due: ReadonlySignal<boolean>;
  readonly putOff: () => void;
  /** A job is finished: the first one is worth a copy. */
  readonly finished: () => void;

  readonly knows: (text: string) => boolean;
  readonly offer: (text: string) => Promise<void>;
  readonly offered: ReadonlySignal<News | BackupError | undefined>;
  readonly take: (whose: 'ours' | 'theirs') => Promise<CameIn>;
  readonly letGo: () => void;
};
