import { describe, expect, test } from 'vitest';
import { crc32 } from '../../src/store/crc32';
import { fromBase45, toBase45 } from '../../src/store/handover/base45';

const ascii = (text: string): Uint8Array => new TextEncoder().encode(text);

// Source: RFC 9285, "The Base45 Data Encoding", August 2022.
// Section 4.3, encoding examples: the string "AB" … the encoded string "BB8"; "Hello!!" … "%69 VD92EX0"; "base-45" …
// "UJCLQE7W581". Section 4.4, decoding example: the string "QED8WEX0" … is "ietf!".
// The first was read in the document; the other three are written down from memory of it. No row is worked by us.
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

// Source: the check value usually printed for CRC-32 as in ISO 3309 (1991), ITU-T V.42 (2002), section 8.1.1.6.2, and
// zip: the nine digits "123456789" give CBF43926. Written down from memory.
test('CRC-32 of 123456789 is CBF43926', () => {
  expect(crc32(ascii('123456789')).toString(16).toUpperCase()).toBe('CBF43926');
});
