import * as v from 'valibot';
import { fromStored } from '../length/stored';
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

const word = (most: number) => v.pipe(v.string(), v.minLength(1), v.maxLength(most));
const id = v.pipe(
  v.string(),
  v.check((text) => isId(text), 'not an id'),
);

/** A place in a log. Counts stay far below what a whole number can hold, so that one can always follow. */
const count = v.pipe(v.number(), v.integer(), v.minValue(1), v.maxValue(2 ** 40));

const stamp = {
  job: id,
  device: id,
  count,
  at: v.pipe(v.string(), v.check(isMoment, 'not a moment of ISO 8601')),
  act: word(60),
  label: v.pipe(v.string(), v.maxLength(200)),
  undoes: v.optional(word(60)),
  over: v.optional(v.pipe(v.array(v.string()), v.maxLength(mostOver))),
};

const key = /^([1-9]\d{0,12})\.[a-z0-9]{1,24}$/;

type Saying = { readonly count: number; readonly over?: readonly string[] | undefined };

/** `over` names earlier entries, of lower counts, each once; so no two entries are over each other. */
const overEarlier = ({ count, over = [] }: Saying): boolean =>
  new Set(over).size === over.length && over.every((word) => Number(key.exec(word)?.[1] ?? count) < count);

const op = v.pipe(
  v.string(),
  v.regex(
    /^((cut|mark)(\/[A-Za-z0-9~]{1,60}){2,3}|lay\/[a-z0-9]{1,24}\/r[nf]{0,400}|buy(\/[A-Za-z0-9~]{1,60}){2,3})$/,
  ),
);
const figure = v.pipe(
  v.string(),
  v.check((text) => fromStored(text).ok, 'not an exact length'),
);
const path = v.pipe(v.string(), v.maxLength(200), v.regex(/^[a-zA-Z0-9~]+(\/[a-zA-Z0-9~]+)*$/));

const rowSchema = v.variant('kind', [
  v.pipe(
    v.strictObject({ ...stamp, kind: v.literal('edit'), path, value: v.unknown() }),
    v.check(({ path: at, value: json }) => readable(at, json as Json), 'not a value of this field'),
  ),
  v.strictObject({ ...stamp, kind: v.literal('tick'), op, figure }),
  v.strictObject({ ...stamp, kind: v.literal('untick'), op }),
]);

/** A row of the log. Strict: a key nobody knows makes the row unreadable, so nothing is lost unseen. */
const entrySchema = v.pipe(
  rowSchema,
  v.check((row) => overEarlier(row), 'over: not earlier entries, each once'),
);

/** A value its field reads; a field of no table is no field of a job. */
function readable(at: string, json: Json): boolean {
  const field = fieldAt(at);
  return field !== undefined && (json === null || field.read(json) !== undefined);
}

/** A row read from the database or a file, or why it is none. */
export function readEntry(row: unknown): { readonly entry: Entry } | { readonly why: string } {
  const found = v.safeParse(entrySchema, row, { abortEarly: true });
  if (found.success) return { entry: found.output as Entry };
  const [issue] = found.issues;
  return { why: `${v.getDotPath(issue) ?? 'row'}: ${issue.message}`.slice(0, 300) };
}
