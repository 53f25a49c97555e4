import { expect, test } from 'vitest';
import type { Length } from '../../../src/length/length';
import { wasteNamed } from '../../../src/trade/sheets/laid-sheet';
import { placesOf } from '../../../src/trade/sheets/tree';
import { eighth, n, piece, plan, pool, sheet } from './pools';

test('what is too small to keep is waste: of a stick less than 12 long, or a sliver beside what is wider', () => {
  const own = pool([piece('p', n(95), n(46))]);
  const [whole] = plan(own).sheets;
  if (!whole) throw new Error('no sheet');
  const named = wasteNamed(whole, { kerf: eighth, stock: sheet() });
  expect(placesOf({ ...whole, tree: named }, eighth).some((p) => p.branch.is === 'left')).toBe(false);
  const stick = pool([piece('p', n(60), n(2))], {
    kind: 'stick',
    stocks: [sheet({ kind: 'stick', wide: n(2) })],
  });
  const lefts = (wide: Length, long = n(60)) => {
    const stock = sheet({ kind: 'stick', wide });
    const own = { size: { long, wide }, tree: { is: 'left' } as const };
    return wasteNamed(own, { kerf: eighth, stock }).is;
  };
  const [one] = plan(stick).sheets;
  const tree = one && wasteNamed(one, { kerf: eighth, stock: sheet({ kind: 'stick', wide: n(2) }) });
  expect(one && tree && placesOf({ ...one, tree }, eighth).some((p) => p.branch.is === 'left')).toBe(true);
  expect([lefts(n(2)), lefts(n(0, 1, 2)), lefts(n(2), n(12)), lefts(n(2), n(11))]).toEqual([
    'left',
    'left',
    'left',
    'waste',
  ]);
  const sliver = { size: { long: n(60), wide: n(0, 7, 8) }, tree: { is: 'left' } as const };
  expect(wasteNamed(sliver, { kerf: eighth, stock: sheet({ kind: 'stick', wide: n(5) }) }).is).toBe('waste');
});
