import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { absolute, atMost, fromMillimetres, ratio, subtract } from '../../../src/length/length';
import { card, cardDoubt, lengthOf, pointsOf, screenDoubt } from '../../../src/trade/paper/screen-rule';
import { runs } from '../../runs';

describe('screenDoubt', () => {
  test('whatever a screen truly is, within what was doubted, no length is farther off than told', () => {
    const tenths = (n: number) => ratio(BigInt(n), 10n);
    fc.assert(
      fc.property(
        fc.integer({ min: 2000, max: 6000 }),
        fc.integer({ min: 0, max: 20 }),
        fc.integer({ min: 1, max: 10_000 }),
        fc.integer({ min: -10, max: 10 }),
        fc.integer({ min: -13, max: 13 }),
        (p, e, drawn, lineOff, cardOff) => {
          const at = { points: tenths(p), doubt: tenths(e), cardDoubt };
          // the card truly so long, its lines truly so far apart: the same screen has its true points in a millimetre
          const long = fromMillimetres(8560n + BigInt(cardOff), 100n);
          const points = ratio(BigInt(drawn), 10n);
          const true_ = long
            .mul(points)
            .div(ratio(BigInt(p) * 10n + BigInt(lineOff * e), 100n)) as typeof long;
          const off = absolute(subtract(true_, lengthOf(points, at)));
          expect(atMost(off, screenDoubt(points, at))).toBe(true);
        },
      ),
      { numRuns: runs(300) },
    );
  });

  test('a length and its points go back and forth', () => {
    const at = { points: ratio(481n) };
    expect(pointsOf(card.long, at).equals(ratio(481n))).toBe(true);
    expect(lengthOf(pointsOf(fromMillimetres(7n), at), at).equals(fromMillimetres(7n))).toBe(true);
  });
});
