import { describe, expect, test } from 'vitest';
import type { Piece } from '../../../src/trade/stacks/pieces';
import { spreadShims } from '../../../src/trade/stacks/spread';
import { l } from '../grooves/sample';

const on = (...pieces: readonly (readonly [number, string, Piece['kind']])[]) => {
  const chosen = pieces.map(([count, size, kind]): Piece => ({ count, size: l(size), kind }));
  const { order, ridges } = spreadShims({ outer: l('1/8'), chosen });
  return {
    order: order.map((o) => (o.kind === 'outer' ? 'outer' : o.size.toString())).join(' '),
    ridges: ridges.map((r) => `${r.gap}: ${r.holds.toString()}`),
  };
};

describe('spreadShims', () => {
  test('Example 8 of stacks: the three shims each have a gap of their own', () => {
    expect(
      on(
        [3, '1/8', 'chipper'],
        [1, '1/16', 'chipper'],
        [1, '.012', 'shim'],
        [1, '.010', 'shim'],
        [1, '.005', 'shim'],
      ),
    ).toEqual({ order: 'outer 0.012 0.125 0.01 0.125 0.005 0.125 0.0625 outer', ridges: [] });
  });

  test('Example 8 of stacks: more than .020 where there are too few gaps is named by its gap', () => {
    expect(on([1, '1/16', 'chipper'], [2, '.020', 'shim'], [1, '.005', 'shim'])).toEqual({
      order: 'outer 0.02 0.005 0.0625 0.02 outer',
      ridges: ['1: 0.025'],
    });
  });

  test('.020 in a gap is not too much, a thousandth more is', () => {
    expect(on([2, '.010', 'shim']).ridges).toEqual([]);
    expect(on([2, '.0105', 'shim']).ridges).toEqual(['1: 0.021']);
  });

  test('shims that the emptiest gap would not take well are moved about', () => {
    // Thickest first into the emptiest: .009 .006 .006 against .008 .006, which leaves .021.
    expect(
      on([1, '1/8', 'chipper'], [1, '.009', 'shim'], [1, '.008', 'shim'], [3, '.006', 'shim']).ridges,
    ).toEqual([]);
  });

  test('outers alone have nothing between them', () => {
    expect(on()).toEqual({ order: 'outer outer', ridges: [] });
  });

  test('a box full of shims is spread without trying for ever', () => {
    expect(on([1, '1/8', 'chipper'], [15, '.007', 'shim'], [15, '.011', 'shim']).ridges).toHaveLength(2);
  });
});
