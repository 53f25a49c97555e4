import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Entry } from '../../src/job/entry';
import { readEntry } from '../../src/job/rows';
import { packOf } from '../../src/store/make-pack';
import { type Pack, rowsIn } from '../../src/store/pack';
import { runs } from '../runs';

const stamp = fc.record({
  device: fc.constantFrom('anna', 'ben2'),
  count: fc.integer({ min: 1, max: 2 ** 40 }),
  at: fc.constantFrom('2026-05-04T09:00:00.000Z', '2026-05-04T09:00:00Z'),
  act: fc.option(fc.constantFrom('anna.7', '__proto__', '0'), { nil: undefined }),
  label: fc.constantFrom('', 'Cut: Left side', 'constructor', 'A "door"\n of 1/2'),
});
const more = fc.record(
  { undoes: fc.constant('anna.3'), over: fc.constantFrom([], ['1.anna'], ['1.anna', '1.ben2']) },
  { requiredKeys: [] },
);
const said = fc.oneof(
  fc.record({
    kind: fc.constant('edit' as const),
    path: fc.constantFrom('name', 'tape', 'boards/k3/length'),
    value: fc.jsonValue() as fc.Arbitrary<Extract<Entry, { kind: 'edit' }>['value']>,
  }),
  fc.record({
    kind: fc.constant('tick' as const),
    op: fc.constantFrom('cut/case~left/len/1', 'lay/s1/rnf'),
    figure: fc.constantFrom('47/64', '31', '0'),
  }),
  fc.record({ kind: fc.constant('untick' as const), op: fc.constant('cut/case~left/len/1') }),
);
const entry = fc.tuple(stamp, more, said).map(([{ act, ...own }, rest, change]) => {
  const first = { job: 'j1', ...own, act: act ?? `${own.device}.${own.count}` };
  return { ...first, ...rest, ...change } as Entry;
});
const entries = fc.array(entry, { minLength: 1, maxLength: 30 });

describe('a pack', () => {
  test('gives back exactly what was packed, with no key more or less', () => {
    fc.assert(
      fc.property(entries, (all) => {
        // what is packed has been read from the database or a file: no float that JSON does not keep
        const kept = JSON.parse(JSON.stringify(all));
        expect(rowsIn(packOf('j1', 1, kept))).toStrictEqual(kept);
      }),
      { numRuns: runs(300) },
    );
  });

  test('says how many it holds, and from which count to which', () => {
    const of = (count: number): Entry => ({
      job: 'j1',
      device: 'anna',
      count,
      at: '2026-05-04T09:00:00Z',
      act: `anna.${count}`,
      label: '',
      kind: 'untick',
      op: 'cut/case~left/len/1',
    });
    expect(packOf('j1', 3, [of(9), of(4), of(7)])).toMatchObject({
      job: 'j1',
      no: 3,
      size: 3,
      from: 4,
      to: 9,
    });
  });

  test('of damaged text gives nothing, or rows that are looked at like any other', () => {
    fc.assert(
      fc.property(entries, fc.nat(), fc.constantFrom('', '"', '7', ',', 'x', '[', 'null'), (all, at, put) => {
        const pack = packOf('j1', 1, JSON.parse(JSON.stringify(all)));
        const k = at % pack.text.length;
        const damaged: Pack = { ...pack, text: pack.text.slice(0, k) + put + pack.text.slice(k + 1) };
        const rows = rowsIn(damaged);
        expect(rows?.length ?? pack.size).toBe(pack.size);
        for (const row of rows ?? []) expect(() => readEntry(row)).not.toThrow();
      }),
      { numRuns: runs(500) },
    );
    for (const text of ['', '{}', 'null', '[]', '7', '{"count":[1]}'])
      expect(rowsIn({ job: 'j1', no: 1, size: 1, from: 1, to: 1, text })).toBeUndefined();
  });
});
