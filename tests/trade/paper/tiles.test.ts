import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  add,
  atMost,
  equals,
  inches,
  type Length,
  less,
  subtract,
  times,
  zero,
} from '../../../src/length/length';
import { tilesOf } from '../../../src/trade/paper/tiles';
import { runs } from '../../runs';

const length = (least: number, most: number) =>
  fc
    .tuple(fc.integer({ min: least * 64, max: most * 64 }), fc.constantFrom(64n, 127n))
    .map(([n, d]) => inches(BigInt(n), d));

const asked = fc.record({
  stick: length(1, 200),
  side: length(8, 17),
  margin: length(0, 2),
  overlap: length(0, 2),
});

describe('tilesOf', () => {
  test('laid one on the other by their laps the tiles are the stick, with no more of them than it takes', () => {
    fc.assert(
      fc.property(asked, (at) => {
        const laid = tilesOf(at);
        fc.pre(laid.ok);
        const { usable, tiles, laps } = laid.value;
        expect(laps.length).toBe(tiles.length - 1);
        let reach: Length = zero;
        for (const [k, { from, to }] of tiles.entries()) {
          const lap = k === 0 ? zero : at.overlap;
          expect(equals(from, subtract(reach, lap))).toBe(true);
          expect(atMost(subtract(to, from), usable)).toBe(true);
          expect(less(reach, to)).toBe(true); // each brings something new
          reach = to;
        }
        expect(equals(reach, at.stick)).toBe(true);
        const fewer = add(usable, times(subtract(usable, at.overlap), BigInt(tiles.length - 2)));
        if (tiles.length > 1) expect(less(fewer, at.stick)).toBe(true);
      }),
      { numRuns: runs(300) },
    );
  });

  test('a lap of a whole sheet, or white that meets, is refused by how much', () => {
    fc.assert(
      fc.property(asked, length(0, 12), ({ stick, side, margin }, overlap) => {
        const laid = tilesOf({ stick, side, margin, overlap });
        fc.pre(!laid.ok && laid.error.code === 'overlap-eats');
        const { by } = laid.error;
        const least = subtract(subtract(overlap, by), inches(1n, 64n));
        fc.pre(!less(least, zero));
        expect(tilesOf({ stick, side, margin, overlap: least }).ok).toBe(true);
      }),
      { numRuns: runs(60) },
    );
    const white = tilesOf({ stick: inches(9n), side: inches(11n), margin: inches(6n), overlap: zero });
    expect(white).toEqual({ ok: false, error: { code: 'margins-eat', by: inches(1n) } });
  });
});
