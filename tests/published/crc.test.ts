import { crc32 as zlib } from 'node:zlib';
import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { crc32 } from '../../src/store/crc32';
import { runs } from '../runs';

/**
 * Source: the check value of CRC-32/ISO-HDLC, "123456789" → cbf43926, as general CRC catalogues print it; from memory. The same
 * sum as gzip's, RFC 1952 (May 1996) section 8, which zlib works out.
 */
test('the check value of CRC-32', () => {
  expect(crc32(new TextEncoder().encode('123456789')).toString(16)).toBe('cbf43926');
});

test('agrees with zlib on any bytes', () => {
  fc.assert(
    fc.property(fc.uint8Array({ maxLength: 3000 }), (bytes) => {
      expect(crc32(bytes)).toBe(zlib(bytes));
    }),
    { numRuns: runs(200) },
  );
});
