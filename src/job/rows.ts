import { isStored } from '../length/stored';
import type { Entry, Json } from './entry';
import { isMoment } from './kinds';
import { mostOver } from './merge';
import { fieldAt, isId } from './paths';

/** A row that could not be read, set aside whole. */
export type Aside = {
  readonly id?: number;
  readonly from: string;
  readonly why: string;
  readonly row: unknown;
};

type Row = Readonly<Record<string, unknown>>;
type Check = (value: unknown, row: Row) => boolean;

const texts =
  (test: (text: string) => boolean): Check =>
  (value) =>
    typeof value === 'string' && test(value);

const shaped = (shape: RegExp, most = Number.POSITIVE_INFINITY): Check =>
  texts((text) => text.length <= most && shape.test(text));

const unless =
  (check: Check): Check =>
  (value, row) =>
    value === undefined || check(value, row);

/** The rows of a log have much in common with the row before: a word just found good is not looked at again. */
function again(check: Check): Check {
  let good: unknown;
  return (value, row) => {
    if (value === good && value !== undefined) return true;
    if (!check(value, row)) return false;
    good = value;
    return true;
  };
}

const id = texts(isId);
const word = texts((text) => text !== '' && text.length <= 60);

/** A place in a log. Counts stay far below what a whole number can hold, so that one can always follow. */
const count: Check = (value) =>
  typeof value === 'number' && Number.isInteger(value) && value >= 1 && value <= 2 ** 40;

const key = /^([1-9]\d{0,12})\.[a-z0-9]{1,24}$/;

/** Names earlier entries, of lower counts, each once; so no two entries are over each other. */
const earlier: Check = (over, row) =>
  Array.isArray(over) &&
  over.length <= mostOver &&
  new Set(over).size === over.length &&
  over.every(
    (word) => typeof word === 'string' && Number(key.exec(word)?.[1] ?? row.count) < Number(row.count),
  );

/** A value its field reads; a field of no table is no field of a job. */
const readable: Check = (value, { path }) => {
  const field = fieldAt(`${path}`);
  return field !== undefined && (value === null || field.read(value as Json) !== undefined);
};

/** Keys a row may lack. */
const mayLack = ['undoes', 'over'];

const stamp = {
  job: again(id),
  device: again(id),
  count,
  at: again(texts(isMoment)),
  act: word,
  label: texts((text) => text.length <= 200),
  undoes: unless(word),
  over: unless(earlier),
} satisfies Readonly<Record<string, Check>>;

const op = shaped(
  /^((cut|mark)(\/[A-Za-z0-9~]{1,60}){2,3}|lay\/[a-z0-9]{1,24}\/r[nf]{0,400}|buy(\/[A-Za-z0-9~]{1,60}){2,3})$/,
);

const figure = texts(isStored);
const path = shaped(/^[a-zA-Z0-9~]+(\/[a-zA-Z0-9~]+)*$/, 200);
const kind: Check = () => true;

/** What each key of a row must hold, by its kind. */
const kinds: ReadonlyMap<unknown, readonly (readonly [string, Check])[]> = new Map(
  Object.entries({
    edit: Object.entries({ ...stamp, kind, path, value: readable }),
    tick: Object.entries({ ...stamp, kind, op, figure }),
    untick: Object.entries({ ...stamp, kind, op }),
  } satisfies Record<Entry['kind'], unknown>),
);

const isRow = (row: unknown): row is Row => typeof row === 'object' && row !== null && !Array.isArray(row);

/** The first key that does not hold what it must; undefined where all do. A key nobody knows is one of them. */
function badKey(row: Row, keys: readonly (readonly [string, Check])[]): string | undefined {
  let known = 0;
  for (const [name, holds] of keys) {
    const value = row[name];
    const has = value !== undefined || Object.hasOwn(row, name);
    if (has) known += 1;
    else if (!mayLack.includes(name)) return name;
    if (has && !holds(value, row)) return name;
  }
  const names = Object.keys(row);
  return names.length === known ? undefined : names.find((name) => !keys.some(([own]) => own === name));
}

/**
 * A row read from the database or a file, or why it is none: the key that cannot be read. Strict: a key nobody knows
 * makes the row unreadable, so nothing is lost unseen.
 */
export function readEntry(row: unknown): { readonly entry: Entry } | { readonly why: string } {
  if (!isRow(row)) return { why: 'no row' };
  const keys = kinds.get(row.kind);
  const bad = keys ? badKey(row, keys) : 'kind';
  return bad === undefined ? { entry: row as Entry } : { why: `${bad} cannot be read`.slice(0, 300) };
}
