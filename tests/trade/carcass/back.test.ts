import { describe, expect, test } from 'vitest';
import { outsideOf } from '../../../src/plan/outside';
import { backProblems, backWarnings } from '../../../src/trade/carcass/back';
import { type Case, newCase } from '../../../src/trade/carcass/case';
import { partsOf, type Worked } from '../../../src/trade/carcass/parts';
import { operationsOf } from '../../../src/trade/setups/operations';
import { l, w } from '../grooves/sample';
import { part, sheet, sheets, work } from './sample-case';

/** 43 5/8 × 66 1/2 × 18 3/4, 4 off the floor, of 23/32: 42 3/16 × 61 1/16 clear. Its back reads 15/64. */
const bare: Case = {
  ...newCase('c1'),
  width: l('43 5/8'),
  height: l('66 1/2'),
  depth: l('18 3/4'),
  feet: l('4'),
  partitions: 1,
  stocks: { side: 'a', back: 'thin' },
  hasBack: true,
  inside: [{ id: 's1', kind: 'fixed', bay: 1, at: l('30') }],
};
const grooved: Case = {
  ...bare,
  backHow: 'groove',
  backGroove: l('1/4'),
  backGrooveWide: l('1/4'),
  backLand: l('1/2'),
};
const stuff = [...sheets(), sheet('thin', '15/64')];
const made = (c: Case): Worked => work(c, stuff);
const size = (of: Worked, role: string) => {
  const { length, width } = part(of, role);
  return `${w(length.sum.value)} × ${w(width.sum.value)}`;
};
const codes = (c: Case) => {
  const found = partsOf(c, { stuff, tape: '1/32' });
  return found.ok ? [] : found.error.map((p) => ('by' in p ? `${p.code} ${w(p.by)}` : p.code));
};

describe('a back in a groove', () => {
  // 42 3/16 + 2 × 1/4 − 1/16 = 42 5/8; 61 1/16 + 2 × 1/4 − 1/16 = 61 1/2
  test('is the clear opening and two groove depths, less its room', () =>
    expect(size(made(grooved), 'back')).toBe('61 1/2 × 42 5/8'));

  // 18 3/4 − 1/2 − 1/4 = 18
  test('what stands inside ends at the front wall of the groove; bottom and top run past it', () => {
    const of = made(grooved);
    for (const role of ['partition1', 's1']) expect(w(part(of, role).width.sum.value)).toBe('18');
    for (const role of ['bottom', 'top', 'left']) expect(w(part(of, role).width.sum.value)).toBe('18 3/4');
  });

  test('the same groove is cut in sides, bottom and top, and no rabbet for a back', () => {
    const of = made(grooved);
    for (const role of ['left', 'right', 'bottom', 'top']) {
      const { along, rabbets } = part(of, role);
      expect(along?.map((a) => [a.edge.named, w(a.near), w(a.width), w(a.depth)])).toEqual([
        ['back', '1/2', '1/4', '1/4'],
      ]);
      expect(rabbets.filter((r) => r.takes.part === 'back')).toEqual([]);
    }
  });

  // 61 1/16 + 1/4 − 1/16
  test('under no top it runs up to the upper ends of the sides', () =>
    expect(w(part(made({ ...grooved, height: l('65 25/32'), hasTop: false }), 'back').length.sum.value)).toBe(
      '61 1/4',
    ));

  test('as built it is measured to the groove floors: no measure of a rabbet is taken for it', () => {
    const built = { backw: { used: l('40') }, backgw: { used: l('42 3/4') }, backgh: { used: l('61 5/8') } };
    expect(size(made({ ...grooved, built }), 'back')).toBe('61 9/16 × 42 11/16');
  });

  test('goes in at the glue-up: the second side goes on last, or the back itself where there is no top', () => {
    const last = (c: Case) =>
      operationsOf(
        { parts: made(c).parts, cases: [{ id: 'c1', name: '' }], hand: [], recuts: () => ({}) },
        { shop: {}, tape: '1/32' },
      ).find(({ what }) => what === 'glue-up')?.which;
    expect(last(grooved)).toEqual({ is: 'back-in', last: 'side' });
    expect(last({ ...grooved, hasTop: false })).toEqual({ is: 'back-in', last: 'back' });
    expect(last(bare)).toBeUndefined();
  });

  test('cleats lie behind it, and partitions are not notched', () => {
    const of = made({ ...grooved, cleats: 1, backLand: l('23/32') });
    const [cleat] = part(of, 'left').rabbets.filter((r) => r.takes.part === 'cleat');
    expect(cleat && w(cleat.width)).toBe('23/32');
    expect(part(of, 'partition1').notches).toEqual([]);
  });
});

describe('a back laid on', () => {
  const applied: Case = { ...bare, backHow: 'applied', backInset: l('1/16') };

  // 43 5/8 − 2 × 1/16 = 43 1/2; 66 1/2 − 4 − 2 × 1/16 = 62 3/8
  test('covers the case less its inset, each way', () =>
    expect(size(made(applied), 'back')).toBe('62 3/8 × 43 1/2'));

  // 18 3/4 inside; 18 3/4 + 15/64 = 18 63/64
  test('leaves the whole depth inside, and the case stands that much deeper', () => {
    const of = made(applied);
    expect(w(part(of, 'partition1').width.sum.value)).toBe('18 3/4');
    expect(w(outsideOf(of).stands.depth)).toBe('18 63/64');
    expect(w(outsideOf(made(bare)).stands.depth)).toBe('18 3/4');
  });

  test('nothing is cut for it', () => {
    const of = made(applied);
    expect(part(of, 'left').along).toBeUndefined();
    expect(part(of, 'left').rabbets.map((r) => r.takes.part)).toEqual(['top']);
  });
});

describe('what cannot be says by how much', () => {
  test.each([
    // 15/64 − 7/32 = 1/64
    ['a back thicker than its groove', { backGrooveWide: l('7/32') }, 'back-too-thick 1/64'],
    // 18 1/2 + 1/4 = 18 3/4: nothing is left, 0 over
    ['a groove that takes the whole depth', { backLand: l('18 1/2') }, 'no-depth 0'],
    // 23/32 − 1/2 = 7/32
    ['cleats that find no room behind it', { cleats: 1 }, 'cleats-behind 7/32'],
    // 3/8 − 1/4 = 1/8
    ['more room than the groove is deep', { ease: l('3/8') }, 'too-much 1/8'],
    ['a groove through the sides', { backGroove: l('23/32') }, 'through'],
  ] as const)('%s', (_, wrong, said) => expect(codes({ ...grooved, ...wrong })).toContain(said));

  // a side of 23/32 laid on all round: 13/16 − 23/32 = 3/32
  test('a back laid on that ends inside the sides', () =>
    expect(codes({ ...bare, backHow: 'applied', backInset: l('13/16') })).toContain('too-much 3/32'));

  test('nothing is wrong with a back in a rabbet', () => expect(backProblems(made(bare).sizes)).toEqual([]));
});

// common practice, no source: the land behind a groove no less than 3/8, nor than the groove is deep
test.each([
  ['3/8', '1/4', []],
  ['11/32', '1/4', ['3/8']],
  ['3/8', '7/16', ['7/16']],
])('a land of %s behind a groove %s deep', (land, deep, least) => {
  const of = made({ ...grooved, backLand: l(land), backGroove: l(deep) });
  expect(backWarnings(of.sizes).map((x) => w(x.code === 'thin-land' ? x.least : undefined))).toEqual(least);
});
