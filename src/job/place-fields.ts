import { type Field, flag, silent, text } from './kinds';

/** Most bytes of a picture that is kept. */
export const mostPictureSize = 2 ** 21;

/** Bytes, or pixels along an edge: a whole number. */
const whole: Field<number> = {
  read: (json) =>
    typeof json === 'number' && json > 0 && json <= mostPictureSize && json % 1 === 0 ? json : undefined,
  write: (value) => value,
};

/** What is said at a place, beside its figures. */
export const noteFields = { note: text(400) };

/** One picture: the code of the place it belongs to, and its bytes by their SHA-256; they are kept beside the log. */
export const pictureFields = {
  of: text(68),
  hash: text(64),
  size: whole,
  wide: whole,
  high: whole,
  /** Its bytes were deleted for good. */
  cleared: silent(flag),
  /** Taken off its place; its bytes are kept. */
  gone: flag,
};
