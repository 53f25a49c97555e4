import { describe, expect, test } from 'vitest';
import type { Case, Inside } from '../../../src/trade/carcass/case';
import { partsOf } from '../../../src/trade/carcass/parts';
import { l, w } from '../grooves/sample';
import { framedCase, plainCase, sheets } from './sample-case';

function found(inside: readonly Inside[], c: Case = plainCase) {
  const made = partsOf({ ...c, inside }, { stuff: sheets(), tape: '1/32' });
  return (made.ok ? [] : made.error).flatMap((p) =>
    p.code === 'overlap' ? [[p.in, p.with, w(p.by), p.under && w(p.under), p.over && w(p.over)]] : [p.code],
  );
}

const fixed = (id: string, at: string, bay = 2): Inside => ({ id, kind: 'fixed', bay, at: l(at) });

describe('shelves that stand in each other', () => {
  test('say by how much, and where the one said last clears the other', () => {
    // 23/32 thick at 30 and at 30 1/4: 23/32 - 1/4; under it 30 - 23/32, over it 30 + 23/32
    expect(found([fixed('a', '30'), fixed('b', '30 1/4')])).toEqual([
      ['b', 'a', '15/32', '29 9/32', '30 23/32'],
    ]);
    expect(found([fixed('a', '30'), fixed('b', '30')])).toEqual([['b', 'a', '23/32', '29 9/32', '30 23/32']]);
  });

  test('one right on the other, or in another bay, stands in nothing', () => {
    expect(found([fixed('a', '30'), fixed('b', '30 23/32')])).toEqual([]);
    expect(found([fixed('a', '30'), fixed('b', '30', 1)])).toEqual([]);
  });

  test('no room under or over the other is not offered', () => {
    expect(found([fixed('a', '1/4'), fixed('b', '1/2')])).toEqual([['b', 'a', '15/32', undefined, '31/32']]);
    // 58 11/16 clear: at 57 1/2 it leaves 15/32 over itself
    expect(found([fixed('a', '57 1/2'), fixed('b', '57 3/4')])).toEqual([
      ['b', 'a', '15/32', '56 25/32', undefined],
    ]);
  });

  test('rails of the frame by their widths', () => {
    const rail = (id: string, at: string): Inside => ({
      id,
      kind: 'rail',
      bay: 2,
      at: l(at),
      wide: l('1 3/4'),
    });
    expect(found([rail('a', '20'), rail('b', '21')], framedCase)).toEqual([
      ['b', 'a', '3/4', '18 1/4', '21 3/4'],
    ]);
  });
});
