import { describe, expect, test } from 'vitest';
import { add, half, inches, subtract, times } from '../../src/length/length';
import { newCase } from '../../src/trade/carcass/case';
import { partsOf } from '../../src/trade/carcass/parts';
import { layOut } from '../../src/trade/grooves/lay-out';
import { board, l, run, w } from '../trade/grooves/sample';

// Source: Edwin W. Foster, Carpentry and Woodwork, Garden City, Doubleday, Page & Company 1911 (title page), p. 120 of
// bitlit.ru/page/en/edwin-w-foster/carpentry-and-woodwork/120. Seen: "4 pcs. 245⁄8 × 12 × 1⁄2 shelves", "2 pcs. 14 ×
// 12 × 1⁄2 ends", "1 pcs. 251⁄8 × 14 × 1⁄4 back"; the shelves "were gained into the sides", and the top and bottom
// were to be rabbeted into them. The text runs whole numbers and fractions together: 24 5/8, 25 1/8. Worked from it:
// the depth of the grooves, from the back, which covers the outside of the ends; two shelves, the four less top and
// bottom; 13 between top and bottom.
describe("Foster's cabinet", () => {
  const [shelf, end, back] = [l('24 5/8'), l('1/2'), l('25 1/8')];

  test('a back over the ends leaves dadoes 1/4 deep, half the thickness, and 24 1/8 clear', () => {
    const depth = subtract(end, half(subtract(back, shelf)));
    expect(w(depth)).toBe('1/4');
    expect(w(subtract(shelf, times(depth, 2n)))).toBe('24 1/8');
    expect(w(add(subtract(shelf, times(depth, 2n)), times(end, 2n)))).toBe('25 1/8');
  });

  test('its ends lay out with those dadoes: as deep as half, so neither too deep nor thin behind', () => {
    // The spacing is ours.
    const shelves = run({
      spacing: 'openings',
      count: 2,
      width: inches(1n, 2n),
      depth: inches(1n, 4n),
      first: l('1/2'),
      span: l('13'),
    });
    const layout = layOut(board({ length: l('14'), thickness: end, runs: [shelves] }));
    expect([layout.problems, layout.warnings]).toEqual([[], []]);
    expect(w(layout.facts[0]?.opening)).toBe('4');
    expect(layout.endForEndSafe).toBe(true);
  });

  // 14 less twice 1/2 is 13 between top and bottom. The places of the shelves are ours.
  test('a case of its outside and those dadoes, its back laid on, is cut to the printed list', () => {
    const cabinet = {
      ...newCase('c'),
      ...({ width: back, height: l('14'), depth: l('12'), dado: l('1/4'), hasBack: true } as const),
      ...({ backHow: 'applied', backInset: l('0'), topRabbet: l('1/4') } as const),
      stocks: { side: 'half', back: 'thin' },
      inside: ['4', '8 1/2'].map((at, k) => ({ id: `s${k}`, kind: 'fixed' as const, bay: 1, at: l(at) })),
    };
    const stuff = (['1/2', '1/4'] as const).map((thick, k) => ({
      id: k === 0 ? 'half' : 'thin',
      name: thick,
      thickness: l(thick),
      measured: true,
    }));
    const found = partsOf(cabinet, { stuff, tape: '1/32' });
    if (!found.ok) throw new Error('no parts');
    const size = (role: string) =>
      found.value.parts
        .filter(({ id }) => id === `c~${role}`)
        .map(({ length, width }) => `${w(length.mark.value)} × ${w(width.mark.value)}`);
    const printed = '24 5/8 × 12';
    expect([size('bottom'), size('top'), size('s0'), size('s1')].flat()).toEqual(Array(4).fill(printed));
    expect([...size('left'), ...size('right')]).toEqual(['14 × 12', '14 × 12']);
    expect(size('back').map((x) => x.split(' × ').sort())).toEqual([['14', '25 1/8']]);
  });
});
