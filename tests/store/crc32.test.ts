import { crc32 as zlib } from 'node:zlib';
import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { crc32 } from '../../src/store/crc32';
import { runs } from '../runs';

test('crc32 agrees with zlib on any bytes', () => {
  fc.assert(
    fc.property(fc.uint8Array({ maxLength: 3000 }), (bytes) => {
      expect(crc32(bytes)).toBe(zlib(bytes));
    }),
    { numRuns: runs(200) },
  );
});
