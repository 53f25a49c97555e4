import type { ReadonlySignal } from '@preact/signals';
import type { BackupError } from '../job/backup';
import type { News } from '../job/backup-news';
import type { PicturedError } from '../job/pictured-file';
import type { Pictures } from './pictures';

/** What became of a copy that was to go out: a file where it was put, or handed on, or nothing. */
export type WentOut = 'file' | 'shared' | 'downloaded' | 'left' | 'not-written' | 'no-check';

/** How much came in: all of it, or the phone stopped taking after so many jobs, or at a picture. */
export type CameIn = { readonly jobs: number; readonly of: number; readonly pictures: boolean };

/** Pictures of a file that came in: how many are in it, and how many of them were kept. */
export type Pictured = { readonly count: number; readonly done: number };

/** Everything of this phone in one file: out, in, and when it was last done. */
export type Copies = {
  /** The bytes of pictures, which no job's file holds. */
  readonly pictures: Pictures;
  readonly out: () => Promise<WentOut>;
  /**
   * The same with all pictures; of one job alone where one is named.
   *
   * @returns also how many pictures are not whole on this phone, and did not go along
   */
  readonly outPictured: (name: string, job?: string) => Promise<readonly [WentOut, number]>;
  /** The file whose head is offered next: one with pictures is read piece by piece. */
  readonly hold: (file: Blob | undefined) => void;
  readonly pictured: ReadonlySignal<Pictured | undefined>;
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
  readonly offered: ReadonlySignal<News | BackupError | PicturedError | undefined>;
  readonly take: (whose: 'ours' | 'theirs') => Promise<CameIn>;
  readonly letGo: () => void;
};
