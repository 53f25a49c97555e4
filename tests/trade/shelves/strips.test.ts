import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { add, equals, inches, isNegative, shortest, sum, times } from '../../../src/length/length';
import { type Case, type Inside, newCase } from '../../../src/trade/carcass/case';
import { partsOf } from '../../../src/trade/carcass/parts';
import { sizesOf } from '../../../src/trade/carcass/sizes';
import { pinProblems, pinWarnings } from '../../../src/trade/shelves/pin-problems';
import { soldStrips } from '../../../src/trade/shelves/sold-strips';
import { proudOf, stripsOf } from '../../../src/trade/shelves/strips';
import { l } from '../../length/write-figures';
import { runs } from '../../runs';

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
  stocks: { side: 'a', tray: 'a' },
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

  const fixed = (at: string, id = 'f'): Inside => ({ id, kind: 'fixed', bay: 1, at: l(at) });
  const pieces = (...inside: readonly Inside[]) =>
    stripsOf(sizes(...inside), inside[0] ?? strips())?.pieces.map(({ low, long }) =>
      [low, long].map((x) => x.toFraction(true)).join(' '),
    );

  test('each opening between fixed shelves has strips of its own', () => {
    // 40 clear, a shelf 23/32 thick at 20: 20 under it, 40 − 20 23/32 = 19 9/32 over it; each 1/2 short
    expect(pieces(strips({ endRoom: l('1/2') }), fixed('20'))).toEqual(['0 19 1/2', '20 23/32 18 25/32']);
    expect(told(pinWarnings(sizes(strips(), fixed('20'))))).toEqual([]);
    // the one said first may stand higher; a shelf of another bay counts for nothing
    expect(pieces(strips(), fixed('30'), fixed('10', 'g'), { ...fixed('5', 'h'), bay: 2 })).toEqual([
      '0 10',
      '10 23/32 19 9/32',
      '30 23/32 9 9/32',
    ]);
  });

  test('an opening that takes none is told, and where none does they are refused by how much', () => {
    // 40 − 38 23/32 = 1 9/32 over the shelf, 2 short: nothing there; 38 − 2 under it
    const low = strips({ endRoom: l('2') });
    expect(told(pinWarnings(sizes(low, fixed('38'))))).toEqual(['no-strip s 1 9/32']);
    expect(pinProblems(sizes(low, fixed('38')))).toEqual([]);
    // the highest is 20: 25 short of it is 5 too much
    expect(told(pinProblems(sizes(strips({ endRoom: l('25') }), fixed('20'))))).toEqual(['no-strips s 5']);
  });

  test('strips sold shorter than they may be are told by how much; trays in their bay too', () => {
    // 40 − 36
    expect(told(pinWarnings(sizes(strips({ stripSold: l('36') }))))).toEqual(['strips-short s 4']);
    expect(pinWarnings(sizes(strips({ stripSold: l('40') })))).toEqual([]);
    const trays: Inside = {
      id: 't',
      kind: 'trays',
      bay: 1,
      first: l('4'),
      pitch: l('6'),
      width: l('3/4'),
      depth: l('1/4'),
    };
    expect(told(pinWarnings(sizes(strips(), trays)))).toEqual(['strips-crossed s']);
  });
});

describe('strips as they are sold', () => {
  const out = (sold: string, ...pieces: readonly string[]) => {
    const { count, left } = soldStrips({ pieces: pieces.map(l), sold: l(sold), cut: l('1/16') });
    return [count, ...left.map((x) => x.toFraction(true))];
  };

  test('the longest first, each into the first that holds it', () => {
    // 48 − 30; 48 − 20 − 1/16 − 20 = 7 15/16; the 18 do not fit beside 30 with their cut: 48 − 18, and 10 1/16 off that
    expect(out('48', '20', '30', '20', '18', '10')).toEqual([3, '7 15/16', '7 15/16', '30']);
    // just so long: no cut, nothing left
    expect(out('48', '48')).toEqual([1, '0']);
  });

  test('one shorter than a piece may be stands as it is sold', () => {
    expect(out('36', '59 1/2')).toEqual([1, '0']);
  });

  test('they hold what was cut out of them', () => {
    const sixteenth = fc.integer({ min: 16, max: 1200 }).map((n) => inches(BigInt(n), 16n));
    fc.assert(
      fc.property(fc.array(sixteenth, { minLength: 1, maxLength: 8 }), sixteenth, (pieces, sold) => {
        const cut = inches(1n, 16n);
        const { count, left } = soldStrips({ pieces, sold, cut });
        const cuts = times(cut, BigInt(pieces.length - count));
        const used = add(sum(pieces.map((x) => shortest(x, sold))), cuts);
        expect(left.every((x) => !isNegative(x))).toBe(true);
        expect(equals(add(used, sum(left)), times(sold, BigInt(count)))).toBe(true);
      }),
      { numRuns: runs(100) },
    );
  });
});
