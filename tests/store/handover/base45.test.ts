import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { fromBase45, toBase45 } from '../../../src/store/handover/base45';
import { runs } from '../../runs';
import { hex } from './codes';

describe('toBase45 and fromBase45', () => {
  test('any bytes come back the same', () => {
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 300, size: 'max' }), (bytes) => {
        expect(hex(fromBase45(toBase45(bytes)))).toBe(hex(bytes));
      }),
      { numRuns: runs(200) },
    );
  }, 600_000);

  test.each([['A'], ['BB8A'], ['bb8'], ['B_8'], [':::'], ['::'], ['GGX'], ['U5X'], ['BB8 é']])(
    '%j is no such text',
    (text) => expect(fromBase45(text)).toBeUndefined(),
  );

  test('the greatest group of three and of two are taken, one more is not', () => {
    expect(fromBase45('FGW')).toEqual(new Uint8Array([255, 255]));
    expect(fromBase45('GGW')).toBeUndefined();
    expect(fromBase45('U5')).toEqual(new Uint8Array([255]));
    expect(fromBase45('V5')).toBeUndefined();
  });
});
