import { describe, expect, test } from 'vitest';
import { crc32 } from '../../src/store/crc32';
import { fromBase45, toBase45 } from '../../src/store/handover/base45';

const ascii = (text: string): Uint8Array => new TextEncoder().encode(text);

// Source: RFC 9285, The Base45 Data Encoding, August 2022 (rfc-editor.org/rfc/rfc9285.pdf, title page seen), sections
// 4.3 and 4.4. All four pairs were read second-hand, in the tests of public Base45 programs that give them as the
// document's examples. No row is worked by us.
describe('Base45', () => {
  test.each([
    ['AB', 'BB8'],
    ['Hello!!', '%69 VD92EX0'],
    ['base-45', 'UJCLQE7W581'],
    ['ietf!', 'QED8WEX0'],
  ])('%s is %s and back', (plain, text) => {
    expect(toBase45(ascii(plain))).toBe(text);
    expect(fromBase45(text)).toEqual(ascii(plain));
  });
});

// Source: the entry "CRC-32/ISO-HDLC", alias "CRC-32,CRC-32/ADCCP,CRC-32/V-42,CRC-32/XZ,PKZIP", of the catalogue of
// parametrised CRC algorithms (reveng.sourceforge.net/crc-catalogue/all.htm; date not read), "check=0xcbf43926", the
// sum of the nine digits 123456789. Read second-hand, in copies of that catalogue. RFC 1952 (May 1996), section 8,
// has the same sum for gzip: from memory; that it is zlib's is tested in tests/store/crc32.test.ts.
test('CRC-32 of 123456789 is CBF43926', () => {
  expect(crc32(ascii('123456789')).toString(16).toUpperCase()).toBe('CBF43926');
});
