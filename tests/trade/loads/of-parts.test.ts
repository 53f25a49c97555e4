import { describe, expect, test } from 'vitest';
import { ratio } from '../../../src/length/length';
import { newCase } from '../../../src/trade/carcass/case';
import type { Part } from '../../../src/trade/carcass/part';
import { partsToWeigh } from '../../../src/trade/loads/of-parts';
import { weighAll } from '../../../src/trade/loads/weights';
import { l } from '../../length/write-figures';
import { framedCase, part, plainCase, sheets, work } from '../carcass/sample-case';

const ply = () => undefined;
const byId = (parts: readonly Part[], kind: Parameters<typeof partsToWeigh>[1] = ply) => {
  const { list, unknown } = partsToWeigh(parts, kind);
  const found = weighAll(list);
  if (!found.ok) throw new Error('refused');
  return { unknown, ...found.value, of: (id: string) => found.value.pieces.find((p) => p.id === `c1~${id}`) };
};

describe('partsToWeigh', () => {
  const worked = work(plainCase);
  const weighed = byId(worked.parts);

  // side 64 1/4 × 17 1/2 ÷ 144 × 2.2 = 17.178; bottom 37 1/2 × 17 7/32 ÷ 144 × 2.2 = 9.865; back 60 1/16 × 37 9/16 ÷
  // 144 × .75 = 11.751
  test('Example 9 of loads: the parts of a case weigh what their exact sizes say', () => {
    const one = (id: string) => weighed.of(id)?.one.valueOf().toFixed(2);
    expect([one('left'), one('right'), one('bottom'), one('back')]).toEqual([
      '17.18',
      '17.18',
      '9.86',
      '11.75',
    ]);
    expect(weighed.unknown).toEqual([]);
  });

  // a side of 66 1/2 × 18 3/4 less a notch of 3 1/4 × 4, 1246 7/8 − 13 = 1233 7/8 square inches, ÷ 144 × 2.2 = 18.851
  test('what is notched out of a side is not weighed', () => {
    const notched = {
      ...newCase('c1'),
      width: l('43 5/8'),
      height: l('66 1/2'),
      depth: l('18 3/4'),
      feet: l('4'),
    };
    const toed = {
      ...notched,
      hasToe: true,
      toeHow: 'notch',
      toeBack: l('2 17/32'),
      stocks: { side: 'a' },
    } as const;
    // 2 17/32 + 23/32 = 3 1/4 deep
    expect(byId(work(toed).parts).of('left')?.one.valueOf().toFixed(3)).toBe('18.851');
  });

  test('trays come out before it is moved, a fixed shelf does not; every tray counts', () => {
    expect([weighed.of('trays')?.of, weighed.of('fixed1')?.of]).toEqual(['loose', 'case']);
    const trays = part(worked, 'trays');
    expect(trays.copies).toBeGreaterThan(1);
    expect(weighed.sums.loose.equals(weighed.of('trays')?.one.mul(BigInt(trays.copies)) ?? 0n)).toBe(true);
  });

  test('a strip is hardwood until somebody says of what its stock is, and what was weighed goes first', () => {
    const framed = work(framedCase);
    const own = framed.parts.filter((p) => p.strip);
    expect(own.length).toBeGreaterThan(0);
    const kind = (more: Parameters<typeof partsToWeigh>[1]) => byId(own, more).all;
    expect(kind(() => ({ stuff: 'hardwood' })).equals(kind(ply))).toBe(true);
    expect(kind(() => ({ stuff: 'softwood' })).lt(kind(ply))).toBe(true);
    expect(kind(() => ({ perFoot: ratio(5n) })).gt(kind(ply))).toBe(true);
  });

  test('a part whose thickness nobody knows is named, not weighed as nothing', () => {
    const back = part(worked, 'back');
    const bare = worked.parts.map((p) => (p === back ? { ...p, thickness: undefined } : p));
    const said = partsToWeigh(bare, ply);
    expect(said.unknown).toEqual(['c1~back']);
    expect(said.list.length).toBe(worked.parts.length - 1);
    const gone = partsToWeigh([{ ...back, thickness: l('0') }], ply);
    expect([gone.list, gone.unknown]).toEqual([[], ['c1~back']]);
  });

  test('fronts are weighed and what they are cut out of is not; box and front go with the drawer', () => {
    const left = part(worked, 'left');
    const named = (id: string, name: Part['name']): Part => ({ ...left, id, name });
    const { list } = partsToWeigh(
      [
        named('blank', { role: 'blank' }),
        named('front', { role: 'front', no: 1 }),
        named('box', { role: 'side', no: 1 }),
        named('shelf', { role: 'inside', kind: 'loose' }),
        named('rail', { role: 'inside', kind: 'rail' }),
        named('board', { role: 'board', named: 'Lid' }),
      ],
      ply,
    );
    expect(list.map((x) => `${x.id} ${x.of}`)).toEqual([
      'front drawer',
      'box drawer',
      'shelf loose',
      'rail case',
      'board case',
    ]);
  });

  test('thinner sheet weighs less, in all of the case', () => {
    expect(byId(work(plainCase, sheets('11/16')).parts).all.lt(weighed.all)).toBe(true);
  });
});
