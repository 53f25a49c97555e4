import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { add, inches, type Length, less, ratio, times } from '../../../src/length/length';
import { liftable, liftedFirst, weightOf } from '../../../src/trade/sheets/carry';
import { checkPool } from '../../../src/trade/sheets/check-pool';
import { wasteNamed } from '../../../src/trade/sheets/laid-sheet';
import { type Branch, halvesOf, piecesIn, placesOf } from '../../../src/trade/sheets/tree';
import { runs } from '../../runs';
import { eighth, n, piece, plan, pool, sheet } from './pools';
import { cutApart, faultsOf } from './verify';

describe('the first cut', () => {
  const carry = { thick: n(0, 23, 32), most: ratio(50n), kerf: eighth };

  test('halves a sheet too heavy to carry between two pieces', () => {
    const own = pool(['1', '2', '3', '4', '5'].map((k) => piece(`p${k}`, n(19), n(48))));
    const [whole] = plan(own).sheets;
    if (!whole) throw new Error('no sheet');
    const tree = liftedFirst(whole, carry);
    if (tree.is !== 'cut') throw new Error('no cut');
    const { near, far } = halvesOf(whole.size, tree, eighth);
    expect([liftable(whole.size, carry), liftable(near, carry), liftable(far, carry)]).toEqual([
      false,
      true,
      true,
    ]);
    expect(faultsOf([{ ...whole, tree }], own.pieces, { kerf: eighth, grain: 'long', exact: true })).toEqual(
      [],
    );
    expect([...piecesIn(tree)].sort()).toEqual(own.pieces.map((p) => p.id));
  });

  test('stays where it was when one person carries the sheet', () => {
    const [whole] = plan(pool([piece('p', n(40), n(20))])).sheets;
    expect(whole && liftedFirst(whole, { ...carry, most: ratio(100n) })).toBe(whole?.tree);
  });

  test('a grid is cut the other way first where only that makes halves one can lift', () => {
    const four = ['1', '2', '3', '4'].map((k) => piece(`p${k}`, n(46), n(k < '3' ? 40 : 7)));
    const rip = (at: Length, near: Branch, far: Branch): Branch => ({ is: 'cut', way: 'rip', at, near, far });
    const cross = (at: Length, near: Branch, far: Branch): Branch => ({
      is: 'cut',
      way: 'cross',
      at,
      near,
      far,
    });
    const leaf = (k: number): Branch => ({ is: 'piece', piece: `p${k}/1`, turned: false });
    const left: Branch = { is: 'left' };
    const row = (a: number, b: number) => cross(n(46), leaf(a), cross(n(46), leaf(b), left));
    // a strip 40 wide and 96 long is still some 58 pounds: across first, both halves are under 40
    const whole = {
      size: { long: n(96), wide: n(48) },
      tree: rip(n(40), row(1, 2), rip(n(7), row(3, 4), left)),
    };
    const tree = liftedFirst(whole, carry);
    expect(faultsOf([{ ...whole, tree }], four, { kerf: eighth, grain: 'long', exact: true })).toEqual([]);
    if (tree.is !== 'cut') throw new Error('no cut');
    expect(tree.way).toBe('cross');
  });

  test('keeps what is trimmed off trimmed off, however thin, and whichever way it is cut first', () => {
    const eighths = (from: number, to: number) =>
      fc.integer({ min: from, max: to }).map((k) => inches(BigInt(k), 8n));
    fc.assert(
      fc.property(
        fc.constantFrom(n(0, 1, 16), eighth, n(0, 1, 4), n(1)),
        fc.tuple(eighths(120, 380), eighths(90, 378), fc.integer({ min: 1, max: 9 })),
        fc.constantFrom(15n, 25n, 50n),
        (trim, [long, wide, count], most) => {
          const pieces = Array.from({ length: count }, (_, k) => piece(`p${k}`, long, wide));
          const own = pool(pieces, { stocks: [sheet({ trim })] });
          fc.pre(checkPool(own, eighth).length === 0);
          const off = less(trim, eighth) ? eighth : trim;
          for (const whole of plan(own, eighth, 5).sheets) {
            const tree = wasteNamed(
              { ...whole, tree: liftedFirst(whole, { ...carry, most: ratio(most) }) },
              { kerf: eighth, stock: sheet() },
            );
            for (const { from, size } of cutApart({ ...whole, tree }, eighth))
              for (const way of ['long', 'wide'] as const) {
                expect(less(from[way], off)).toBe(false);
                expect(less(add(whole.size[way], times(off, -1n)), add(from[way], size[way]))).toBe(false);
              }
            // nothing too small to keep is offered for the rack
            for (const { branch, size } of placesOf({ ...whole, tree }, eighth))
              if (branch.is === 'left') expect(less(size.long, n(3)) || less(size.wide, n(3))).toBe(false);
          }
        },
      ),
      {
        numRuns: runs(60),
        examples: [
          [eighth, [n(40), n(47, 3, 4), 2], 50n],
          [eighth, [n(23), n(47, 3, 4), 4], 50n],
          [n(1), [n(46), n(22), 4], 25n],
        ],
      },
    );
  });

  test('a sheet of 23/32 weighs what 32 square feet of it do', () => {
    expect(
      weightOf({ long: n(96), wide: n(48) }, carry).equals(weightOf({ long: n(48), wide: n(96) }, carry)),
    ).toBe(true);
    expect(
      weightOf({ long: n(96), wide: n(48) }, carry).equals(
        weightOf({ long: n(12), wide: n(12) }, carry).mul(32n),
      ),
    ).toBe(true);
  });
});
