import type { Length } from '../length/length';
import { fromStored, toStored } from '../length/stored';
import type { Json } from './entry';

/** How one field of a job is kept: read back to its value, or not readable. One table serves reading, writing, import. */
export type Field<T> = { readonly read: (json: Json) => T | undefined; readonly write: (value: T) => Json };

const text = (most: number): Field<string> => ({
  read: (json) => (typeof json === 'string' && json.length <= most ? json : undefined),
  write: (value) => value,
});

const oneOf = <T extends string>(...words: readonly T[]): Field<T> => ({
  read: (json) => words.find((word) => word === json),
  write: (value) => value,
});

const length: Field<Length> = {
  read: (json) => {
    const found = typeof json === 'string' ? fromStored(json) : undefined;
    return found?.ok ? found.value : undefined;
  },
  write: toStored,
};

const lengths: Field<readonly Length[]> = {
  read: (json) => {
    if (!Array.isArray(json) || json.length > 500) return undefined;
    const found = json.map((item: Json) => length.read(item));
    return found.every((x) => x !== undefined) ? found : undefined;
  },
  write: (value) => value.map(toStored),
};

/** Places in a list; one taken away leaves a gap (`null`), so that the others keep their numbers and their ticks. */
const places: Field<readonly (Length | undefined)[]> = {
  read: (json) => {
    if (!Array.isArray(json) || json.length > 500) return undefined;
    const found = json.map((item: Json) => (item === null ? null : length.read(item)));
    return found.includes(undefined) ? undefined : found.map((x) => x ?? undefined);
  },
  write: (value) => value.map((x) => (x === undefined ? null : toStored(x))),
};

const count: Field<number> = {
  read: (json) =>
    typeof json === 'number' && Number.isInteger(json) && json >= 0 && json <= 1000 ? json : undefined,
  write: (value) => value,
};

const flag: Field<boolean> = {
  read: (json) => (typeof json === 'boolean' ? json : undefined),
  write: (value) => value,
};

const momentShape = /^\d{4}-\d\d-\d\dT\d\d:\d\d(:\d\d(\.\d{1,9})?)?Z$/;

/** A moment of ISO 8601 in UTC, one that a calendar has. */
export const isMoment = (word: string): boolean => momentShape.test(word) && !Number.isNaN(Date.parse(word));

/** A moment, or empty: none. */
const moment: Field<string> = {
  read: (json) => (typeof json === 'string' && (json === '' || isMoment(json)) ? json : undefined),
  write: (value) => value,
};

export const jobFields = {
  name: text(120),
  place: text(200),
  note: text(4000),
  tape: oneOf('1/16', '1/32', '1/64', '1 mm', '1/2 mm', '0.001'),
  deleted: moment,
};

export const boardFields = {
  name: text(120),
  made: oneOf('alike', 'pair', 'partition'),
  copies: count,
  length,
  thickness: length,
  across: length,
  end: text(40),
  datum: length,
  mate: length,
  mateName: text(80),
  machine: oneOf('stop', 'fence', 'router', 'saw', 'spacers', 'index'),
  against: oneOf('reference', 'other'),
  grows: oneOf('toward', 'away'),
  guide: oneOf('reference', 'far'),
  stopSide: oneOf('left', 'right'),
  cutter: length,
  gone: flag,
};

export const runFields = {
  spacing: oneOf('pitch', 'fill', 'openings', 'given'),
  face: oneOf('A', 'B'),
  point: oneOf('near', 'centre', 'far'),
  width: length,
  depth: length,
  count,
  pitch: length,
  first: length,
  endRoom: length,
  centred: flag,
  span: length,
  part: length,
  at: places,
  stopped: length,
  gone: flag,
};

export const wideFields = { face: oneOf('A', 'B'), near: length, width: length, depth: length, gone: flag };

export const stockFields = { name: text(120), readings: lengths, gone: flag };

/** What a table's fields read to; a field that is missing or not readable is undefined. */
export type Values<T> = { readonly [K in keyof T]: T[K] extends Field<infer V> ? V | undefined : never };

const idShape = /^[a-z0-9]{1,24}$/;
export const isId = (word: string | undefined): word is string => word !== undefined && idShape.test(word);

/** The field a path names, or undefined when the path is none of a job's. */
export function fieldAt(path: string): Field<unknown> | undefined {
  const [kind, id, ...rest] = path.split('/');
  if (kind !== undefined && id === undefined) return own(jobFields, kind);
  if (!isId(id)) return undefined;
  if (kind === 'stock' && rest.length === 1) return own(stockFields, rest[0]);
  if (kind !== 'boards') return undefined;
  if (rest.length === 1) return own(boardFields, rest[0]);
  if (rest.length !== 3 || !isId(rest[1])) return undefined;
  if (rest[0] === 'runs') return own(runFields, rest[2]);
  return rest[0] === 'wides' ? own(wideFields, rest[2]) : undefined;
}

function own(table: object, name: string | undefined): Field<unknown> | undefined {
  return name !== undefined && Object.hasOwn(table, name)
    ? (table as Record<string, Field<unknown>>)[name]
    : undefined;
}
