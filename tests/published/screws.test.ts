import { describe, expect, test } from 'vitest';
import { equals, inches, less, subtract } from '../../src/length/length';
import { newCase } from '../../src/trade/carcass/case';
import { nailerCount } from '../../src/trade/carcass/nailer-places';
import { nailerWarnings } from '../../src/trade/carcass/nailers';
import { sizesOf } from '../../src/trade/carcass/sizes';
import { anchorCard } from '../../src/trade/install/anchor';
import { screwHoles } from '../../src/trade/install/holes';
import { screwFor } from '../../src/trade/install/screw';
import { l } from '../trade/grooves/sample';

// Source: a table of wood screws (mcavallo-git/Coding, hardware/screws-screwdrivers/wood-screw_dimensions-sizes.md):
// number 6 .138, 8 .164, 10 .190: second-hand. That they are .060 + .013 × number: from memory.
describe('the printed diameters of wood screws', () => {
  test.each([
    [6, 138n],
    [8, 164n],
    [10, 190n],
  ] as const)('number %s: %s thousandths, and the drill for it is the next 64th', (gauge, thousandths) => {
    const { shank, clearance } = screwHoles(gauge, 'soft');
    expect(equals(shank, inches(thousandths, 1000n))).toBe(true);
    expect(less(clearance, shank)).toBe(false);
    expect(less(subtract(clearance, inches(1n, 64n)), shank)).toBe(true);
  });
});

// Source: Wood Handbook, FPL-GTR-190, 2010, p. 8-10 (page 197 of the scan): the root averages about two thirds of the
// shank: seen. A pilot no thinner than that and thinner than the shank leaves the thread something to hold.
test('every pilot lies between the printed root and the shank', () => {
  for (const gauge of [6, 8, 10] as const)
    for (const wood of ['soft', 'hard'] as const) {
      const { pilot, shank } = screwHoles(gauge, wood);
      expect([pilot.mul(3n).gte(shank.mul(2n)), less(pilot, shank)]).toEqual([true, true]);
    }
});

// Source: PS 1-19, Structural Plywood, performance category 23/32, .688 to .750 in (text on PS 1 of APA,
// dev.carverwilde.com/apawood-europe): seen. The case is ours: through one such sheet into the face of another.
test('a screw chosen for 23/32 keeps out of the far face of the thinnest sheet sold as that', () => {
  const [thin, thick] = [inches(688n, 1000n), inches(750n, 1000n)];
  const shelf = ['3/4', '1', '1 1/4', '1 1/2'].map(l);
  const at = { sunk: l('0'), leastBite: l('3/8'), margin: l('1/8'), lengths: shelf };
  for (const sheet of [thin, thick]) {
    const { pick, bite } = screwFor({ ...at, through: sheet, into: sheet });
    if (!pick || !bite) throw new Error('no screw');
    expect(equals(pick, l('1 1/4'))).toBe(true);
    expect(less(subtract(sheet, bite), at.margin)).toBe(false);
    expect(less(bite, at.leastBite)).toBe(false);
  }
});

// Source: Architectural Woodwork Standards, first edition, 2009, p. 281 (page 283 of the scan): anchor strips 1/2 ×
// 2 1/2 or more, one between in cabinets over 60 in: seen.
test('the printed strip is the least nailer of a case, which over 60 has one between', () => {
  const nailed = { ...newCase('c'), width: l('30'), depth: l('12'), hasNailers: true, stocks: { side: 'a' } };
  const of = (height: string, wide = '2 1/2', thick = '1/2') => {
    const stuff = [{ id: 'a', name: '', thickness: l(thick), measured: true }];
    const made = sizesOf({ ...nailed, height: l(height), nailerWide: l(wide) }, stuff);
    if (!made.ok) throw new Error('sizes');
    return made.value;
  };
  expect([nailerCount(of('60')), nailerCount(of('61'))]).toEqual([2, 3]);
  expect(nailerWarnings(of('60'))).toEqual([]);
  expect(nailerWarnings(of('60', '2 15/32')).map(({ code }) => code)).toEqual(['nailer-narrow']);
  expect(nailerWarnings(of('60', '2 1/2', '15/32')).map(({ code }) => code)).toEqual(['nailer-thin']);
});

test('the printed strip is the one on the card, and over 60 there is one between', () => {
  const card = anchorCard({ high: l('61'), wall: 'framing', fixings: 2, washers: false });
  if (!card.ok) throw new Error(card.error.code);
  const [strip] = card.value.facts.filter((fact) => fact.code === 'cleat');
  expect(strip?.code === 'cleat' && [strip.thick.toString(), strip.wide.toString()]).toEqual(['0.5', '2.5']);
  expect(card.value.facts.some((fact) => fact.code === 'strip-between')).toBe(true);
});
