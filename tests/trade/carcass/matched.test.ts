import { describe, expect, test } from 'vitest';
import { add, half, subtract } from '../../../src/length/length';
import { type Case, newCase } from '../../../src/trade/carcass/case';
import { checkOf } from '../../../src/trade/carcass/check';
import { matched } from '../../../src/trade/carcass/matched';
import { sizeAt } from '../../../src/trade/carcass/part';
import { partsOf } from '../../../src/trade/carcass/parts';
import type { SetMarks } from '../../../src/trade/carcass/sizes';
import { layOut } from '../../../src/trade/grooves/lay-out';
import { marksOf } from '../../../src/trade/grooves/marks';
import { given } from '../../../src/trade/sums/sum';
import { l, w } from '../../length/write-figures';
import { part, sheet } from './sample-case';

/** Shells behind a frame: 43 5/8 wide, of 18 mm sheet. */
const shells: Case = {
  ...newCase('c1'),
  width: l('43 5/8'),
  height: l('66 1/2'),
  depth: l('18 3/4'),
  feet: l('4'),
  stocks: { side: 'a', back: 'k' },
  hasBack: true,
  dado: l('1/4'),
  topRabbet: l('11/32'),
  backDeep: l('3/8'),
  ease: l('1/16'),
  inside: [{ id: 'shelf', kind: 'fixed', bay: 1, at: l('30') }],
};

function made(c: Case, marks: SetMarks = {}, thickness = '18 mm') {
  const stuff = [sheet('a', thickness), sheet('k', '1/4')];
  const worked = partsOf(c, { stuff, tape: '1/32', marks });
  if (!worked.ok) throw new Error('not worked out');
  return worked.value;
}

const long = (worked: ReturnType<typeof made>, role: string) => {
  const { mark } = part(worked, role).length;
  return `${w(mark.value)} ${w(mark.rest)}`;
};

describe('matched', () => {
  test('Example 15 of carcass: a full shelf shares the mark of the bottom and what that leaves', () => {
    const worked = made(shells);
    expect([long(worked, 'bottom'), long(worked, 'shelf')]).toEqual([
      '42 23/32 -45/4064',
      '42 23/32 -45/4064',
    ]);
  });

  test('a top let in as deep as the bottom shares its mark too', () => {
    expect(long(made({ ...shells, topRabbet: l('1/4') }), 'top')).toBe('42 23/32 -45/4064');
  });

  test('a bookcase of two fixed shelves: 29.084 long, all at 29 3/32', () => {
    // 30 − 2 × .708 + 2 × 1/4 = 29.084, marked 29 3/32 = 29.09375: scant by .00975
    const shelf = (id: string, at: string) => ({ id, kind: 'fixed' as const, bay: 1, at: l(at) });
    const inside = [shelf('low', '15'), shelf('high', '30')];
    const worked = made({ ...shells, width: l('30'), depth: l('11 1/4'), inside }, {}, '.708');
    for (const role of ['bottom', 'low', 'high']) expect(long(worked, role)).toBe('29 3/32 -39/4000');
  });

  test('equal widths share a mark: the loose shelf is as deep as the bottom', () => {
    const inside = [{ id: 'shelf', kind: 'loose' as const, bay: 1 }];
    const worked = made({ ...shells, backWide: l('.319'), inside });
    // 18 3/4 − .319 = 18.431, nearest 18 7/16; alone the shelf would go down to 18 13/32
    expect([w(part(worked, 'bottom').width.mark.value), w(part(worked, 'shelf').width.mark.value)]).toEqual([
      '18 7/16',
      '18 7/16',
    ]);
  });

  test('lengths equal in different openings keep each its own rule', () => {
    const worked = made(shells);
    const size = (opening: string, mode: 'floor' | 'halfExpand') => ({
      ...sizeAt(given('bay', l('20.03')), '1/32', mode),
      spans: { opening, sets: false },
    });
    const parts = [size('bay1', 'floor'), size('bay2', 'halfExpand')].map((length) => ({
      ...part(worked, 'shelf'),
      length,
    }));
    const marks = matched(parts, worked.sizes, '1/32').map((p) => w(p.length.mark.value));
    expect(marks).toEqual(['20', '20 1/32']);
  });

  test('a board grooved in a part knows the mark of its length, down where that goes down', () => {
    const worked = made({ ...shells, height: l('66.49'), partitions: 1, inside: [] });
    const { board, length } = part(worked, 'partition1');
    expect(length.mode).toBe('floor');
    expect(board?.lengthMark).toEqual(length.mark);
    const side = part(worked, 'left').board;
    const [mark] = side ? marksOf(side, layOut(side), '1/32') : [];
    expect(mark && w(add(mark.near.value, mark.other.value))).toBe(w(part(worked, 'left').length.mark.value));
  });
});

describe('onMarks', () => {
  test('Example 14 of carcass: what stands on the bottom follows from its mark', () => {
    const { sizes } = made({ ...shells, partitions: 1, inside: [] });
    expect(w(subtract(sizes.width.value, l('43 5/8')))).toBe('45/4064');
    expect(sizes.bays.map((bay) => w(bay.value))).toEqual(['20 6137/8128', '20 6137/8128']);
  });

  test('a bay that is given stays as given while another can take what the mark adds', () => {
    const { sizes } = made({ ...shells, partitions: 1, bays: [l('15')], inside: [] });
    expect(sizes.bays.map((bay) => w(bay.value))).toEqual(['15', w(subtract(l('27 7/32'), l('18 mm')))]);
  });

  test('bays that are all given share what the mark adds, and the parts still add back', () => {
    const held = { ...shells, hold: 'openings' as const, clear: l('61'), partitions: 1, inside: [] };
    const worked = made({ ...held, bays: [l('15'), l('20')] });
    // 35 + 18 mm + 1/2 = 36.2087 is marked 36 7/32: .0101 more, half for each bay
    const more = subtract(l('36 7/32'), add(l('35 1/2'), l('18 mm')));
    expect(worked.sizes.bays.map((bay) => w(subtract(bay.value, l('15'))))).toEqual([
      w(half(more)),
      w(add(l('5'), half(more))),
    ]);
    expect(checkOf(worked).every((line) => line.meets)).toBe(true);
  });

  test('up the case everything follows from the mark of the sides', () => {
    const worked = made({ ...shells, height: l('66.49'), partitions: 1, inside: [] });
    // 66.49 is marked 66 1/2
    expect(long(worked, 'left')).toBe('66 1/2 -1/100');
    expect(w(worked.sizes.clearHeight.value)).toBe(w(subtract(l('62 1/2'), l('36 mm'))));
    expect(checkOf(worked).every((line) => line.meets)).toBe(true);
  });

  test('a bottom that is to keep an old mark has it, and the shelf and the clear width follow', () => {
    const worked = made(shells, { across: l('42 11/16') });
    expect([long(worked, 'bottom'), long(worked, 'shelf')]).toEqual(['42 11/16 41/2032', '42 11/16 41/2032']);
    expect(w(worked.sizes.clearWidth.value)).toBe('42 3/16');
  });
});

test('a back that comes to the length of the bottom by chance, once the mark is reckoned in, still enters its rabbets', () => {
  // the bottom by the drawing: 43 5/8 − 1 7/16 + 1/2 = 42 11/16; cut at 42 9/16 the case is 43 1/2 wide,
  // and the back 43 1/2 − 1 7/16 + 2 × 3/8 − 1/8 = 42 11/16, not the 42 9/16 of the bottom
  const worked = made({ ...shells, ease: l('1/8') }, { across: l('42 9/16') }, '23/32');
  expect(w(part(worked, 'back').width.sum.value)).toBe('42 11/16');
  expect(w(part(worked, 'back').width.mark.value)).toBe('42 11/16');
});

describe('equals of unlike stock or grain', () => {
  // 18 3/4 − .319 = 18.431: with the bottom, which sets it, 18 7/16; alone the shelf goes down to 18 13/32
  const inside = [{ id: 'shelf', kind: 'loose' as const, bay: 1 }];
  const c: Case = { ...shells, backWide: l('.319'), inside };
  const stuff = [sheet('a', '18 mm'), sheet('k', '1/4'), sheet('s', '1/2')];
  const shelf = (of: Case, said: Parameters<typeof matched>[3]) => {
    const worked = partsOf(of, { stuff, tape: '1/32', ...(said ? { said } : {}) });
    if (!worked.ok) throw new Error('not worked out');
    const { mark, unlike } = part(worked.value, 'shelf').width;
    return `${w(mark.value)} ${unlike}`;
  };
  const other = { ...c, stocks: { ...c.stocks, shelf: 's' } };
  const wide = (alikeWide: 'together' | 'apart') => (id: string) => (id === 'c1~shelf' ? { alikeWide } : {});

  test('share the mark and are asked about, where that is not the mark each would have', () => {
    expect(shelf(other, undefined)).toBe('18 7/16 asked');
    expect(shelf(c, undefined)).toBe('18 7/16 undefined');
  });

  test('have their own mark once that is said, or share it and are not asked again', () => {
    expect(shelf(other, wide('apart'))).toBe('18 13/32 apart');
    expect(shelf(other, wide('together'))).toBe('18 7/16 together');
  });

  test('of one sheet, the one that lies the other way on it is unlike too', () => {
    expect(shelf(c, (id) => (id === 'c1~shelf' ? { lies: 'across' } : {}))).toBe('18 7/16 asked');
  });

  test('are not asked about where it makes no difference: 18 3/4 − 9/32 is on the mark', () => {
    expect(shelf({ ...other, backWide: l('9/32') }, undefined)).toBe('18 15/32 undefined');
    // and a full shelf follows from the mark of the bottom whatever it is of
    const full = { ...other, backWide: l('9/32'), inside: shells.inside };
    const worked = partsOf(full, { stuff, tape: '1/32' });
    expect(worked.ok && part(worked.value, 'shelf').length.unlike).toBeUndefined();
  });
});
