import { describe, expect, test } from 'vitest';
import { guidePlaces } from '../../../src/trade/sheets/guide';
import { kerf, n, w } from './cutting';

describe('the guide of a circular saw', () => {
  test('Example 2 of sheets: a line at 17 3/4, shoe 1 7/16, kerf 5/64: on the waste at 19 17/64; shoe 5 1/32: on what is kept at 12 23/32', () => {
    const shop = { shoeKeep: n(5, 1, 32), shoeWaste: n(1, 7, 16) };
    const found = guidePlaces(n(17, 3, 4), { keep: 'near', kerf: n(0, 5, 64), shop });
    expect([w(found.onKeep), w(found.onWaste)]).toEqual(['12 23/32', '19 17/64']);
  });

  test('a trim keeps what is beyond the line: the kerf and the waste lie on this side of it', () => {
    const shop = { shoeKeep: n(5), shoeWaste: n(1) };
    const found = guidePlaces(n(2), { keep: 'far', kerf, shop });
    expect([w(found.onKeep), w(found.onWaste)]).toEqual(['7', '7/8']);
  });

  test('a shoe not measured gives no place', () => {
    expect(guidePlaces(n(17), { keep: 'near', kerf, shop: {} })).toEqual({});
    expect(guidePlaces(n(17), { keep: 'near', kerf, shop: { shoeKeep: n(0) } })).toEqual({});
    // of a saw whose teeth stand at the edge of its guide 0 is a figure: on the line, or beyond the kerf
    const atGuide = { shoeKeep: n(0), shoeWaste: n(0), atGuide: true } as const;
    expect(guidePlaces(n(17), { keep: 'near', kerf, shop: atGuide })).toEqual({
      onKeep: n(17),
      onWaste: n(17).add(kerf),
    });
  });
});
