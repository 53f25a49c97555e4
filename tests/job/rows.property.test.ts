import fc from 'fast-check';
import * as v from 'valibot';
import { expect, test } from 'vitest';
import type { Json } from '../../src/job/entry';
import { isMoment } from '../../src/job/kinds';
import { mostOver } from '../../src/job/merge';
import { fieldAt, isId } from '../../src/job/paths';
import { readEntry } from '../../src/job/rows';
import { fromStored } from '../../src/length/stored';
import { runs } from '../runs';

// The same rules once more, in the words of a library of schemas: what the app begins with reads rows without it.

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

const rightly = {
  job: fc.constantFrom('j', 'shellcase'),
  device: fc.constantFrom('anna', 'ben2'),
  count: fc.integer({ min: 1, max: 40 }),
  at: fc.constantFrom('2026-05-04T09:00:00.000Z', '2026-05-04T09:00:00Z'),
  act: fc.constantFrom('1.anna', '7.ben'),
  label: fc.constantFrom('', 'Cut: Left side'),
};
const over = fc.record(
  {
    undoes: fc.constant('3.anna'),
    over: fc.uniqueArray(fc.constantFrom('1.anna', '2.ben', '9.anna', '40.x')),
  },
  { requiredKeys: [] },
);
const said = fc.oneof(
  fc.record({
    kind: fc.constant('edit'),
    path: fc.constantFrom('name', 'tape', 'stock/ply/name', 'boards/k3/length', 'nowhere', ''),
    value: fc.constantFrom<unknown>('A cabinet', '47/64', '1/32', null, 3, true, ['1'], {}),
  }),
  fc.record({
    kind: fc.constant('tick'),
    op: fc.constantFrom('cut/case~left/len/1', 'mark/case~left/1', 'lay/s1/rnf', 'cut/', 'buy/a/b'),
    figure: fc.constantFrom('47/64', '31', '1/0', 'x', ''),
  }),
  fc.record({ kind: fc.constant('untick'), op: fc.constantFrom('cut/case~left/len/1', 'cut') }),
);
const row = fc
  .tuple(fc.record(rightly), over, said)
  .map(([stamp, more, own]) => ({ ...stamp, ...more, ...own }));

/** What may stand where something else should. */
const anything = fc.constantFrom<unknown>(
  undefined,
  null,
  '',
  'x'.repeat(61),
  'x'.repeat(201),
  '../x',
  0,
  -1,
  1.5,
  2 ** 41,
  Number.NaN,
  [],
  ['1.anna', '1.anna'],
  [1],
  {},
  true,
  'edit',
  'tick',
  '2026-13-45T09:00:00Z',
  'yesterday',
);
const names = [...Object.keys(stamp), 'kind', 'path', 'value', 'op', 'figure', 'strange', 'toString'];
const spoilt = fc
  .tuple(
    row,
    fc.array(fc.tuple(fc.constantFrom(...names), fc.option(anything, { nil: Symbol() })), { maxLength: 2 }),
  )
  .map(([good, changes]) => {
    const bad: Record<string, unknown> = { ...good };
    for (const [name, value] of changes) {
      if (typeof value === 'symbol') delete bad[name];
      else bad[name] = value;
    }
    return bad;
  });

test('a row is read, or not, as the schema has it; what is read is the row itself', () => {
  const verdicts = new Set<boolean>();
  fc.assert(
    fc.property(spoilt, (row) => {
      const found = readEntry(row);
      verdicts.add('entry' in found);
      expect('entry' in found).toBe(v.safeParse(entrySchema, row).success);
      if ('entry' in found) expect(found.entry).toEqual(row);
      else expect(found.why).toMatch(/^\w+ cannot be read$/);
    }),
    { numRuns: runs(3000) },
  );
  expect(verdicts.size).toBe(2);
});

test.each([[undefined], [null], ['text'], [3], [[]]])('%j is no row', (what) => {
  expect(readEntry(what)).toEqual({ why: 'no row' });
});
