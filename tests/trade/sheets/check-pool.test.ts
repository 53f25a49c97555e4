import { describe, expect, test } from 'vitest';
import { type Length, subtract } from '../../../src/length/length';
import { writeLength } from '../../../src/length/write';
import { checkPool } from '../../../src/trade/sheets/check-pool';
import type { RoughPiece } from '../../../src/trade/sheets/pieces';
import type { Pool } from '../../../src/trade/sheets/pool';
import { eighth, n, piece, plan, pool, sheet } from './pools';

describe('what keeps a stock from being laid out', () => {
  const codes = (given: Pool, kerf: Length | undefined = eighth) => checkPool(given, kerf).map((p) => p.code);

  test('a kerf not measured, of 0, or less is asked for', () => {
    expect(checkPool(pool([piece('p', n(10), n(10))]), undefined)).toEqual([{ code: 'kerf-missing' }]);
    expect(codes(pool([piece('p', n(10), n(10))]), n(0))).toEqual(['kerf-missing']);
  });

  test('a piece larger than the sheet is named, by how much, with what would fit; one that just fits is not', () => {
    const [problem] = checkPool(pool([piece('p', n(97, 1, 2), n(20))]), eighth);
    expect(
      problem?.code === 'too-large' && [
        problem.piece.id,
        writeLength(problem.over.long),
        writeLength(problem.most.long),
      ],
    ).toEqual(['p/1', '1 1/2', '96']);
    expect(codes(pool([piece('p', n(96), n(48))]))).toEqual([]);
  });

  test('the grain may forbid the only way it fits; free, it fits', () => {
    const tall = piece('p', n(40), n(60));
    expect(codes(pool([tall]))).toEqual(['grain-forbids']);
    expect(codes(pool([{ ...tall, lies: 'free' }]))).toEqual([]);
    expect(codes(pool([tall], { stocks: [sheet({ grain: 'none' })] }))).toEqual([]);
  });

  test('a trim below nothing would make the sheet larger than it is: refused', () => {
    const trim = subtract(n(0), n(1));
    expect(checkPool(pool([piece('p', n(97), n(10))], { stocks: [sheet({ trim })] }), eighth)).toEqual([
      { code: 'trim-negative', stock: 'a', trim },
    ]);
  });

  test('trims that eat the sheet are said once, before anything else', () => {
    expect(codes(pool([piece('p', n(10), n(10))], { stocks: [sheet({ trim: n(24) })] }))).toEqual([
      'trim-eats-it',
    ]);
    expect(codes(pool([piece('p', n(10), n(0, 1, 4))], { stocks: [sheet({ trim: n(23, 7, 8) })] }))).toEqual(
      [],
    );
  });

  test('a piece longer than any stick, or wider, is named by how much', () => {
    const own = (p: RoughPiece) =>
      pool([p], { kind: 'stick', stocks: [sheet({ kind: 'stick', wide: n(6) })] });
    const [long] = checkPool(own(piece('p', n(97), n(2))), eighth);
    expect(long?.code === 'too-long-for-stick' && writeLength(long.by)).toBe('1');
    const [wide] = checkPool(own(piece('p', n(40), n(6, 1, 8))), eighth);
    expect(wide?.code === 'wider-than-stick' && writeLength(wide.by)).toBe('1/8');
  });

  test('with none left and no more to be had, what is left over still serves', () => {
    const none = { stocks: [sheet({ noMore: true })] };
    const one = [piece('p', n(30), n(20))];
    expect(checkPool(pool(one, none), eighth)).toEqual([{ code: 'sheets-run-out', left: 1 }]);
    const own = pool(one, { ...none, lefts: [{ id: 'o', stock: 'a', long: n(31), wide: n(21) }] });
    expect(checkPool(own, eighth)).toEqual([]);
    expect(plan(own).sheets.map((s) => s.left)).toEqual(['o']);
  });

  test('thirty pieces alike are named once', () => {
    const trays = Array.from({ length: 30 }, (_, k) =>
      piece('tray', n(97), n(20), { id: `tray/${k}`, copy: `${k}` }),
    );
    expect(codes(pool(trays))).toEqual(['too-large']);
  });
});
