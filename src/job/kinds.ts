import { inches, type Length, numerator, type Ratio, ratio } from '../length/length';
import { fromStored, toStored } from '../length/stored';
import type { Json } from './entry';

/**
 * How one field of a job is read and written; what does not read is undefined. One table serves reading, writing,
 * import.
 */
export type Field<T> = {
  readonly read: (json: Json) => T | undefined;
  readonly write: (value: T) => Json;
  /** Kept by the app itself: where two phones differ the last entry stands, and nobody is asked (M14). */
  readonly silent?: boolean;
};

export const silent = <T>(field: Field<T>): Field<T> => ({ ...field, silent: true });

export const text = (most: number): Field<string> => ({
  read: (json) => (typeof json === 'string' && json.length <= most ? json : undefined),
  write: (value) => value,
});

export const oneOf = <T extends string>(...words: readonly T[]): Field<T> => ({
  read: (json) => words.find((word) => word === json),
  write: (value) => value,
});

export const length: Field<Length> = {
  read: (json) => {
    const found = typeof json === 'string' ? fromStored(json) : undefined;
    return found?.ok ? found.value : undefined;
  },
  write: toStored,
};

/** A number without a unit, exact: a share, a ratio, pounds. Kept as a length is. */
export const amount: Field<Ratio> = {
  read: (json) => {
    const found = length.read(json);
    return found && ratio(numerator(found), found.d);
  },
  write: (value) => toStored(inches(numerator(value), value.d)),
};

export const lengths: Field<readonly Length[]> = {
  read: (json) => {
    if (!Array.isArray(json) || json.length > 500) return undefined;
    const found = json.map((item: Json) => length.read(item));
    return found.every((x) => x !== undefined) ? found : undefined;
  },
  write: (value) => value.map(toStored),
};

/** Places in a list; one taken away leaves a gap (`null`), so that the others keep their numbers and their ticks. */
export const places: Field<readonly (Length | undefined)[]> = {
  read: (json) => {
    if (!Array.isArray(json) || json.length > 500) return undefined;
    const found = json.map((item: Json) => (item === null ? null : length.read(item)));
    return found.includes(undefined) ? undefined : found.map((x) => x ?? undefined);
  },
  write: (value) => value.map((x) => (x === undefined ? null : toStored(x))),
};

export const count: Field<number> = {
  read: (json) =>
    typeof json === 'number' && Number.isInteger(json) && json >= 0 && json <= 1000 ? json : undefined,
  write: (value) => value,
};

/** Nobody makes more partitions, cleats or drawers in a column. */
export const mostFew = 24;

/** A count up to that. */
export const few: Field<number> = {
  read: (json) =>
    typeof json === 'number' && Number.isInteger(json) && json >= 0 && json <= mostFew ? json : undefined,
  write: (value) => value,
};

export const flag: Field<boolean> = {
  read: (json) => (typeof json === 'boolean' ? json : undefined),
  write: (value) => value,
};

const momentShape = /^\d{4}-\d\d-\d\dT\d\d:\d\d(:\d\d(\.\d{1,9})?)?Z$/;

/** A moment of ISO 8601 in UTC, one that a calendar has. */
export const isMoment = (word: string): boolean => momentShape.test(word) && !Number.isNaN(Date.parse(word));

/** A moment, or empty: none. */
export const moment: Field<string> = {
  read: (json) => (typeof json === 'string' && (json === '' || isMoment(json)) ? json : undefined),
  write: (value) => value,
};

/** Id of a stock, a case, a thing. */
export const stockId = text(24);
