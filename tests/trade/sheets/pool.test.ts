import { describe, expect, test } from 'vitest';
import { add, times } from '../../../src/length/length';
import { writeLength } from '../../../src/length/write';
import { groundsOf, poolsOf } from '../../../src/trade/sheets/pool';
import { eighth, n, piece, pool, sheet } from './pools';

describe('stocks of one stuff', () => {
  const pieces = [piece('p', n(10), n(10)), piece('q', n(10), n(10), { stuff: 'b' })];

  test('are one pool while both are as thick, and part when a reading parts them', () => {
    const like = sheet({ id: 'b', like: 'a' });
    expect(poolsOf({ stocks: [sheet(), like], lefts: [], pieces }).pools.map((p) => p.pieces.length)).toEqual(
      [2],
    );
    const thin = { ...like, thickness: n(0, 45, 64) };
    expect(poolsOf({ stocks: [sheet(), thin], lefts: [], pieces }).pools.map((p) => p.id)).toEqual([
      'a',
      'b',
    ]);
  });

  test('a piece of no stock is named', () => {
    const lost = piece('x', n(1), n(1), { stuff: undefined });
    expect(poolsOf({ stocks: [sheet()], lefts: [], pieces: [lost] }).homeless).toEqual([lost]);
  });
});

test('grounds of a stock trimmed more than once over are what is usable', () => {
  const [ground] = groundsOf(pool([], { stocks: [sheet({ trim: n(0, 1, 16) })] }), eighth);
  // a trim takes at least the kerf
  expect(ground && writeLength(ground.usable.wide)).toBe(writeLength(add(n(48), times(eighth, -2n))));
});
