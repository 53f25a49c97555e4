import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { inches, ratio } from '../../../src/length/length';
import { slabWeight } from '../../../src/trade/loads/stuff';
import { type Weighable, weighAll } from '../../../src/trade/loads/weights';
import { runs } from '../../runs';
import { l } from '../grooves/sample';

const piece = (id: string, long: string, wide: string, count = 1, thick = '23/32'): Weighable => ({
  id,
  of: 'case',
  count,
  slab: { long: l(long), wide: l(wide), thick: l(thick) },
});
const found = (list: readonly Weighable[]) => {
  const result = weighAll(list);
  if (!result.ok) throw new Error(result.error.map((e) => e.code).join());
  return result.value;
};

describe('weighAll', () => {
  const cabinet: readonly Weighable[] = [
    piece('side', '64 1/4', '17 1/2', 2),
    piece('bottom', '37 1/2', '17 7/32'),
    piece('top', '37 5/8', '17 7/32'),
    piece('partition', '59 1/4', '17 7/32'),
    piece('back', '37 9/16', '60 1/16', 1, '7/32'),
    { id: 'rest', of: 'hardware', count: 1, pounds: ratio(10n) },
  ];

  // square inches: 2 × 64.25 × 17.5 = 2248.75; 134.375 (37.5 + 37.625 + 59.25) × 17.21875 = 2313.77; together 4562.52
  // ÷ 144 × 2.2 = 69.705; back 37.5625 × 60.0625 = 2256.10 ÷ 144 × .75 = 11.751; + 10 = 91.456
  test('Example 2 of loads: a case of six things comes to 91.5 lb', () => {
    const { all, sums, pieces } = found(cabinet);
    expect(all.valueOf()).toBeCloseTo(91.456, 2);
    expect([sums.case.valueOf(), sums.hardware.valueOf()].map((x) => x.toFixed(2))).toEqual([
      '81.46',
      '10.00',
    ]);
    expect(pieces.map((x) => x.running.valueOf().toFixed(1))).toEqual([
      '34.4',
      '44.2',
      '54.1',
      '69.7',
      '81.5',
      '91.5',
    ]);
    expect(pieces[0]?.one.mul(2n).equals(pieces[0].all)).toBe(true);
  });

  test('each group has its own sum', () => {
    const of = (id: string, group: Weighable['of'], pounds: bigint): Weighable => ({
      id,
      of: group,
      count: 2,
      pounds: ratio(pounds),
    });
    const { sums, all } = found([
      of('a', 'drawer', 9n),
      of('b', 'sheet', 70n),
      of('c', 'loose', 3n),
      of('d', 'drawer', 1n),
    ]);
    expect([sums.case, sums.drawer, sums.loose, sums.sheet, sums.hardware, all].map(String)).toEqual([
      '0',
      '20',
      '6',
      '140',
      '0',
      '166',
    ]);
  });

  test('every fault of the list is named, and nothing is left out of a sum', () => {
    const result = weighAll([
      piece('a', '0', '4'),
      piece('b', '4', '4', 1.5),
      { id: 'c', of: 'loose', count: -1, pounds: ratio(-1n) },
      {
        id: 'd',
        of: 'sheet',
        count: 1,
        slab: { long: l('1'), wide: l('1'), thick: l('-1'), perFoot: ratio(0n) },
      },
    ]);
    expect(result.ok ? [] : result.error).toEqual([
      { code: 'size-not-positive', id: 'a', what: 'long' },
      { code: 'count-not-whole', id: 'b' },
      { code: 'count-not-whole', id: 'c' },
      { code: 'pounds-negative', id: 'c' },
      { code: 'size-not-positive', id: 'd', what: 'thick' },
      { code: 'per-foot-not-positive', id: 'd' },
    ]);
  });

  test('an empty list weighs nothing', () => expect(found([]).all.toString()).toBe('0'));

  test('the sum is that of its groups and of its pieces, in whatever order they come', () => {
    const slab = fc.record({
      long: fc.bigInt({ min: 1n, max: 6000n }).map((n) => inches(n, 64n)),
      wide: fc.bigInt({ min: 1n, max: 3000n }).map((n) => inches(n, 64n)),
      thick: fc.bigInt({ min: 8n, max: 96n }).map((n) => inches(n, 64n)),
      stuff: fc.constantFrom('ply' as const, 'hardwood' as const, 'pressed' as const),
    });
    const item = fc.record({
      id: fc.string(),
      of: fc.constantFrom(
        'case' as const,
        'drawer' as const,
        'loose' as const,
        'sheet' as const,
        'hardware' as const,
      ),
      count: fc.nat(9),
      slab,
    });
    fc.assert(
      fc.property(fc.array(item, { maxLength: 8 }), (list) => {
        const { all, sums, pieces } = found(list);
        const again = list.reduce(
          (so, x) => so.add(slabWeight(x.slab).mul(BigInt(x.count))) as typeof so,
          ratio(0n),
        );
        expect(again.equals(all)).toBe(true);
        expect(
          Object.values(sums)
            .reduce((a, b) => a.add(b) as typeof a)
            .equals(all),
        ).toBe(true);
        expect(found([...list].reverse()).all.equals(all)).toBe(true);
        if (pieces.length > 0) expect(pieces[pieces.length - 1]?.running.equals(all)).toBe(true);
      }),
      { numRuns: runs(100) },
    );
  });
});
