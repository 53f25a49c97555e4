import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { inches, type Length, less, subtract } from '../../../src/length/length';
import { stripsOf } from '../../../src/trade/sheets/strips';
import { runs } from '../../runs';
import { kerf, n, w } from './cutting';

describe('strips of one width', () => {
  const at = { across: n(48, 3, 8), trim: n(0, 3, 16), strip: n(17, 3, 4), kerf };

  test('Example 1 of sheets: usable 48, two strips, offcut 12 1/4', () => {
    const found = stripsOf(at);
    expect(found.ok && [w(found.value.usable), found.value.count, w(found.value.offcut)]).toEqual([
      '48',
      2,
      '12 1/4',
    ]);
  });

  test('Example 1 of sheets: the last strip needs no kerf: three of 15 11/12 from 48, nothing over', () => {
    const found = stripsOf({ across: n(48), trim: n(0), strip: n(15, 11, 12), kerf });
    expect(found.ok && [found.value.count, w(found.value.offcut)]).toEqual([3, '0']);
  });

  test('no kerf, trims that eat the sheet, a strip wider than it: each named', () => {
    const code = (own: Partial<typeof at> & { kerf?: Length }) => {
      const found = stripsOf({ ...at, ...own });
      return found.ok ? '' : found.error.code;
    };
    expect(code({ kerf: n(0) })).toBe('kerf-missing');
    expect(code({ trim: n(25) })).toBe('trim-eats-it');
    expect(code({ strip: n(49) })).toBe('wider-than-sheet');
    expect(code({ strip: n(0) })).toBe('no-width');
  });

  test('a trim below nothing is refused: it would make 50 of 48', () => {
    const trim = subtract(n(0), n(1));
    expect(stripsOf({ ...at, across: n(48), trim })).toEqual({
      ok: false,
      error: { code: 'trim-negative', trim },
    });
  });

  test('as many strips as are said fit with their kerfs, and one more does not', () => {
    const eighths = fc.integer({ min: 1, max: 400 }).map((k) => inches(BigInt(k), 8n));
    fc.assert(
      fc.property(eighths, eighths, (across, strip) => {
        const found = stripsOf({ across, trim: n(0), strip, kerf });
        fc.pre(found.ok);
        const needs = (k: number) =>
          inches(BigInt(k))
            .mul(strip)
            .add(inches(BigInt(k - 1)).mul(kerf)) as Length;
        expect(less(across, needs(found.value.count))).toBe(false);
        expect(less(across, needs(found.value.count + 1))).toBe(true);
      }),
      { numRuns: runs(200) },
    );
  });
});
