import { edits } from './edits';
import type { Change } from './entry';
import type { Job } from './job';
import { placeCode, placeOfCode } from './place-code';
import { pictureFields } from './place-fields';
import { children, pick } from './tree';

/** One picture as the log has it; its bytes are kept under the hash. */
export type Picture = {
  readonly id: string;
  /** Where it belongs: see `place-code.ts`. */
  readonly of: string;
  readonly hash: string;
  /** Bytes, and pixels. */
  readonly size: number;
  readonly wide: number;
  readonly high: number;
  /** Taken off its place. */
  readonly gone: boolean;
  /** Its bytes were deleted for good on some phone. */
  readonly cleared: boolean;
};

type Read = Pick<Job, 'tree'>;

/** The pictures of a job in the order they were taken, those off their place too. */
export const picturesIn = ({ tree }: Read): readonly Picture[] =>
  children(tree, 'pictures').flatMap(([id, node]) => {
    const { of, hash, size, wide, high, gone = false, cleared = false } = pick(pictureFields, node);
    if (of === undefined || size === undefined || !/^[0-9a-f]{64}$/.test(hash ?? '')) return [];
    const at = placeCode(placeOfCode(of));
    return [{ id, of: at, hash: hash ?? '', size, wide: wide ?? 4, high: high ?? 3, gone, cleared }];
  });

/** Those that hang at a place. */
export const picturesAt = (job: Read, place: string): readonly Picture[] =>
  picturesIn(job).filter((picture) => picture.of === place && !picture.gone && !picture.cleared);

type New = Pick<Picture, 'id' | 'of' | 'hash' | 'size' | 'wide' | 'high'>;

export const addPicture = ({ id, ...said }: New): readonly Change[] =>
  edits(`pictures/${id}/`, pictureFields, said);

export const takePictureOff = (id: string): readonly Change[] =>
  edits(`pictures/${id}/`, pictureFields, { gone: true });

export const putPictureBack = (id: string): readonly Change[] =>
  edits(`pictures/${id}/`, pictureFields, { gone: undefined });

export const clearPictures = (ids: readonly string[]): readonly Change[] =>
  ids.flatMap((id) => edits(`pictures/${id}/`, pictureFields, { cleared: true }));

/** Where the bytes of a picture are kept: in both copies, or in one. */
export type PictureIn = 'both' | 'database' | 'files';

/** What became of a picture's bytes; `no-answer` where storage does not say. */
export type Found = ArrayBuffer | 'missing' | 'damaged' | 'no-answer';

/** Most pictures of one job, and most bytes of them. */
export const mostPictures = 300;
export const mostPictureBytes = 100 * 1024 * 1024;

/** How many pictures a job has and what they take, those off their place too. */
export function picturesHeld(job: Read): { readonly count: number; readonly bytes: number } {
  const held = picturesIn(job).filter(({ cleared }) => !cleared);
  return { count: held.length, bytes: held.reduce((sum, { size }) => sum + size, 0) };
}
