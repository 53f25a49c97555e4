import { describe, expect, test } from 'vitest';
import { type Case, type Inside, newCase } from '../../../src/trade/carcass/case';
import { partsOf } from '../../../src/trade/carcass/parts';
import { sizesOf } from '../../../src/trade/carcass/sizes';
import { pinProblems, pinWarnings } from '../../../src/trade/shelves/pin-problems';
import { proudOf } from '../../../src/trade/shelves/strips';
import { l } from '../../length/write-figures';

const sheet = { id: 'a', name: 'A', thickness: l('23/32'), measured: true };
const strips = (own: Partial<Inside> = {}): Inside => ({
  id: 's',
  kind: 'loose',
  bay: 1,
  heldBy: 'strips',
  width: l('5/8'),
  stripThick: l('13/64'),
  depth: l('3/16'),
  ...own,
});
const held = (...inside: readonly Inside[]): Case => ({
  ...newCase('c'),
  hold: 'openings',
  opening: l('20'),
  clear: l('40'),
  depth: l('18'),
  partitions: 1,
  stocks: { side: 'a' },
  inside,
});
const sizes = (...inside: readonly Inside[]) => {
  const found = sizesOf(held(...inside), [sheet]);
  if (!found.ok) throw new Error(found.error.map((e) => e.code).join());
  return found.value;
};
const told = (found: readonly object[]) =>
  found.map((x) =>
    Object.values(x)
      .map((v) => (typeof v === 'object' && v !== null && 'toFraction' in v ? v.toFraction(true) : `${v}`))
      .join(' '),
  );

describe('metal strips', () => {
  test('both walls of their bay have the same two grooves, and no other part', () => {
    const found = partsOf(held(strips()), { stuff: [sheet], tape: '1/32' });
    if (!found.ok) throw new Error('not worked');
    const along = found.value.parts.flatMap(({ id, along: own = [] }) =>
      own.map(({ near, width, depth, face }) =>
        [id, face, ...[near, width, depth].map((x) => x.toFraction(true))].join(' '),
      ),
    );
    // 5/8 + 1/32; the rear groove ends 2 from the back: 18 − 2 − 21/32
    expect(along).toEqual([
      'c~left A 2 21/32 3/16',
      'c~left A 15 11/32 21/32 3/16',
      'c~partition1 A 2 21/32 3/16',
      'c~partition1 A 15 11/32 21/32 3/16',
    ]);
  });

  test('what is not said of a strip is asked for', () => {
    const found = partsOf(held({ id: 's', kind: 'loose', bay: 1, heldBy: 'strips' }), {
      stuff: [sheet],
      tape: '1/32',
    });
    expect(found.ok ? [] : told(found.error)).toEqual([
      'missing-inside s width',
      'missing-inside s stripThick',
      'missing-inside s depth',
    ]);
  });

  test('a strip that lies sunk leaves the shelf its length', () => {
    expect(proudOf(strips({ depth: l('1/4') }))).toEqual(l('0'));
  });

  test('grooves that run off, cross or go through are refused by how much', () => {
    expect(told(pinProblems(sizes(strips({ behind: l('0') }))))).toEqual([]);
    // front at 9, 21/32 wide; the rear one begins at 18 − 9 − 21/32 = 8 11/32
    expect(told(pinProblems(sizes(strips({ front: l('9'), behind: l('9') }))))).toEqual([
      'rows-cross s strip 1 5/16',
    ]);
    expect(told(pinProblems(sizes(strips({ depth: l('3/4') }))))).toEqual(['hole-through s strip 3/4 23/32']);
  });

  test('grooves in both faces of a partition leave their wood between them', () => {
    const other = strips({ id: 't', bay: 2 });
    // 23/32 − 2 × 3/16 = 11/32, more than a third
    expect(told(pinWarnings(sizes(strips(), other)))).toEqual([]);
    // 23/32 − 2 × 1/4 = 7/32, under a third of 23/96
    const deep = { depth: l('1/4') };
    expect(told(pinWarnings(sizes(strips(deep), { ...other, ...deep })))).toEqual([
      'hole-web t strip 7/32 23/96 true',
    ]);
    // a hole anywhere in the row of a groove counts: 3/8 + 3/8 is 1/32 more than there is
    const pins: Inside = {
      id: 't',
      kind: 'loose',
      bay: 2,
      heldBy: 'pins',
      first: l('4'),
      pitch: l('2'),
      front: l('2 1/4'),
    };
    expect(told(pinProblems(sizes(strips({ depth: l('3/8') }), pins)))).toEqual([
      'holes-meet t hole s 1/32 23/96',
    ]);
  });

  test('a fixed shelf across them is told', () => {
    expect(told(pinWarnings(sizes(strips(), { id: 'f', kind: 'fixed', bay: 1, at: l('20') })))).toEqual([
      'strips-crossed s',
    ]);
  });
});
