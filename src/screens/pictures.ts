import type { ReadonlySignal } from '@preact/signals';
import type { Job } from '../job/job';
import type { ScaleError } from '../job/picture-head';
import type { Found, Picture, PictureIn } from '../job/pictures';
import type { Result } from '../length/result';

/** Why a picture was not taken in. */
export type PictureError =
  | ScaleError
  /** The store's own: `SaveError`. */
  | { readonly code: 'full' | 'read-only' }
  | { readonly code: 'failed'; readonly name: string }
  /** Bytes of the file. */
  | { readonly code: 'too-big'; readonly size: number }
  | { readonly code: 'too-many' }
  /** All pictures of the job with this one, bytes. */
  | { readonly code: 'too-much'; readonly bytes: number }
  /** Bytes free on the phone. */
  | { readonly code: 'no-room'; readonly free: number }
  /** What scales pictures down gave no answer. */
  | { readonly code: 'no-answer' }
  | { readonly code: 'no-check' };

/** A picture whose bytes are kept: what its job's log says of it, and in how many copies it is. */
export type Taken = Pick<Picture, 'hash' | 'size' | 'wide' | 'high'> & { readonly keptIn: PictureIn };

/** A picture by its job and its hash. */
export type PictureName = { readonly job: string; readonly hash: string };

type JobRead = Pick<Job, 'id' | 'tree'>;

/** The bytes of pictures on this phone. */
export type Pictures = {
  /**
   * Scales a picture down, keeps its bytes, and then has `note` write its job's log: what is noted is there.
   *
   * @param note resolves once the log has it, or has refused it
   */
  readonly take: (
    job: JobRead,
    file: Blob,
    note: (taken: Taken) => Promise<unknown>,
  ) => Promise<Result<Taken, PictureError>>;
  readonly read: (job: string, hash: string) => Promise<Found>;
  /** Hashes of all pictures of a job whose bytes are here. */
  readonly here: (job: string) => Promise<ReadonlySet<string>>;
  /** Keeps bytes that came in with a file; false where the phone took them not. */
  readonly keep: (job: string, hash: string, bytes: ArrayBuffer) => Promise<boolean>;
  /** Deletes bytes for good in both copies; false where a copy did not take it. */
  readonly drop: (job: string, hashes: readonly string[]) => Promise<boolean>;
  /** Whether any were ever taken here. */
  readonly some: ReadonlySignal<boolean>;
  /** Keys of those that belong to no job of these. */
  readonly jobless: (jobs: readonly string[]) => Promise<readonly PictureName[]>;
  /** How many pictures are in one copy alone. */
  readonly alone: ReadonlySignal<number>;
};
