import { describe, expect, test } from 'vitest';
import { type Case, newCase } from '../../../src/trade/carcass/case';
import { nailerCount, nailerPlaces, topNailer } from '../../../src/trade/carcass/nailer-places';
import { nailerWarnings } from '../../../src/trade/carcass/nailers';
import { partsOf } from '../../../src/trade/carcass/parts';
import { anchorCard } from '../../../src/trade/install/anchor';
import { l, w } from '../grooves/sample';
import { part, sheet, sheets, work } from './sample-case';

/** 43 5/8 × 66 1/2 × 18 3/4, 4 off the floor, of 23/32, no back: 42 3/16 × 61 1/16 clear. */
const nailed: Case = {
  ...newCase('c1'),
  width: l('43 5/8'),
  height: l('66 1/2'),
  depth: l('18 3/4'),
  feet: l('4'),
  partitions: 1,
  hasNailers: true,
  stocks: { side: 'a', back: 'k' },
};
const grooved: Case = { ...nailed, hasBack: true, backHow: 'groove', backGrooveWide: l('1/4') };
const stuff = [...sheets(), sheet('thin', '7/16')];
const made = (c: Case) => work(c, stuff);
const inner = (c: Case) => w(part(made(c), 'partition1').width.sum.value);
const codes = (c: Case) => nailerWarnings(made(c).sizes).map(({ code }) => code);

describe('nailers', () => {
  // Architectural Woodwork Standards, 1 Oct 2009, p. 281, 4.4.18: top and bottom, one between over 60 high
  test.each([
    ['60', 2],
    ['60 1/32', 3],
  ])('a case %s high has %d', (height, count) =>
    expect(nailerCount(made({ ...nailed, height: l(height) }).sizes)).toBe(count),
  );

  // 60 is 1524 mm, nailers of 12 mm and 65 mm are those of a metric shop
  test.each(
    (['in', 'mm'] as const).flatMap((units) =>
      ['1523 mm', '60', '60 1/32', '1525 mm'].map((height) => [units, height] as const),
    ),
  )(
    'in %s a case %s high has one between where its anchor card wants one, and lacks what that says',
    (units, height) => {
      for (const [thick, wide] of [
        ['12 mm', '65 mm'],
        ['1/2', '2 1/2'],
        ['11 mm', '63 mm'],
      ] as const) {
        const own = {
          ...nailed,
          units,
          height: l(height),
          nailerWide: l(wide),
          stocks: { side: 'a', nailer: 'n' },
        };
        const { sizes } = work(own, [...stuff, sheet('n', thick)]);
        const card = anchorCard({
          high: l(height),
          units,
          wall: 'framing',
          cleat: { thick: l(thick), wide: l(wide) },
        });
        if (!card.ok) throw new Error(card.error.code);
        const isTall = card.value.facts.some(({ code }) => code === 'strip-between');
        expect(nailerCount(sizes)).toBe(isTall ? 3 : 2);
        const lacks = card.value.lacks.map(({ code }) => code.replace('cleat', 'nailer'));
        const told = nailerWarnings(sizes).map(({ code }) => code);
        expect(told.filter((code) => /thin|narrow/.test(code))).toEqual(
          lacks.filter((code) => /thin|narrow/.test(code)),
        );
      }
    },
  );

  test('are as long as the case is clear, and as many as said', () => {
    expect(w(part(made(nailed), 'nailer').length.sum.value)).toBe('42 3/16');
    expect(part(made({ ...nailed, nailers: 4 }), 'nailer').copies).toBe(4);
  });

  // 61 1/16 − 2 1/2 = 58 9/16; half of it 29 9/32
  test('stand on the bottom, midway and under the top', () =>
    expect(nailerPlaces(made(nailed).sizes).map(w)).toEqual(['0', '29 9/32', '58 9/16']));

  // 18 3/4 − 23/32 = 18 1/32; 18 3/4 − 1/2 − 1/4 = 18, less 23/32 = 17 9/32; land 3/4: 18 3/4 − 1 = 17 3/4
  test('take depth inside, none behind the back where the land takes them', () => {
    expect(inner(nailed)).toBe('18 1/32');
    expect(inner({ ...grooved, backLand: l('1/2') })).toBe('17 9/32');
    expect(inner({ ...grooved, backLand: l('3/4') })).toBe('17 3/4');
    expect(inner({ ...nailed, hasNailers: false })).toBe('18 3/4');
  });

  test('bottom and top run past them', () =>
    expect(w(part(made(nailed), 'bottom').width.sum.value)).toBe('18 3/4'));

  test('land that is short for them is told: 23/32 − 1/2 = 7/32', () => {
    const [found] = nailerWarnings(made({ ...grooved, backLand: l('1/2') }).sizes);
    expect(found && 'by' in found && w(found.by)).toBe('7/32');
    expect(codes({ ...grooved, backLand: l('23/32') })).toEqual([]);
  });

  // Architectural Woodwork Standards, 1 Oct 2009, p. 281, 4.4.18: 1/2 × 2 1/2 at least
  test('thin or narrow ones are told', () => {
    expect(codes({ ...nailed, stocks: { side: 'a', nailer: 'thin' } })).toEqual(['nailer-thin']);
    expect(codes({ ...nailed, nailerWide: l('2 15/32') })).toEqual(['nailer-narrow']);
  });
});

describe('nailers let into the sides', () => {
  const letIn: Case = { ...nailed, nailerDeep: l('1/4') };
  const cuts = (c: Case) =>
    part(made(c), 'left').rabbets.flatMap(({ id, width, depth, from, to }) =>
      id.startsWith('nailer') ? [[width, depth, from, to].map((x) => w(x)).join(' ')] : [],
    );

  // 42 3/16 + 2 × 1/4; the sides are measured from the floor: 4 + 23/32 + 0, + 29 9/32, + 58 9/16, each 2 1/2 high
  test('are so much longer, and lie in rabbets of the back edges for their own length', () => {
    expect(w(part(made(letIn), 'nailer').length.sum.value)).toBe('42 11/16');
    expect(cuts(letIn)).toEqual([
      '23/32 1/4 4 23/32 7 7/32',
      '23/32 1/4 34 36 1/2',
      '23/32 1/4 63 9/32 65 25/32',
    ]);
    expect(part(made(letIn), 'left').lines?.map(({ id }) => id)).toEqual([]);
  });

  // before a back in a rabbet as wide as it and 1/16: 7/32 + 1/16 + 23/32
  test('before a back in a rabbet they are rabbeted in past it', () =>
    expect(cuts({ ...letIn, hasBack: true, nailers: 1 })).toEqual(['1 1/4 63 9/32 65 25/32']));

  test('butted ones stand on lines of both sides', () => {
    const lines = part(made(nailed), 'right').lines?.map(({ takes, near }) => [takes.no, w(near)]);
    expect(lines).toEqual([
      [1, '4 23/32'],
      [2, '34'],
      [3, '63 9/32'],
    ]);
    expect(w(topNailer(made(nailed).sizes))).toBe('63 9/32');
    expect(topNailer(made({ ...nailed, hasNailers: false }).sizes)).toBeUndefined();
  });
});

describe('what cannot be says by how much', () => {
  test.each([
    // 3 × 21 = 63 against 61 1/16
    ['nailers over the clear height', { nailerWide: l('21') }, ['nailers-full 1 15/16']],
    // 11/16 − 23/32 = −1/32
    ['nailers as deep as the case', { depth: l('11/16') }, ['nailers-deep 1/32']],
    ['let in through the sides', { nailerDeep: l('23/32') }, ['through']],
    // 23/32 − 1/2
    [
      'let in where there is no edge',
      { nailerDeep: l('1/4'), hasBack: true, backHow: 'groove', backGrooveWide: l('1/4') },
      ['nailers-no-edge 7/32'],
    ],
    ['nailers and cleats', { cleats: 1 }, ['nailers-and-cleats']],
  ] as const)('%s', (_, wrong, said) => {
    const found = partsOf({ ...nailed, ...wrong }, { stuff, tape: '1/32' });
    expect(found.ok ? [] : found.error.map((p) => ('by' in p ? `${p.code} ${w(p.by)}` : p.code))).toEqual(
      said,
    );
  });
});
