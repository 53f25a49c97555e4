/** The 45 characters a code holds at five and a half bits each. Source: RFC 9285 (August 2022), table 1. */
const alphabet = '0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ $%*+-./:';

/**
 * Bytes as text of the 45 characters: two bytes are three characters, one left over is two. Text, so that every
 * reader hands it back unchanged; a code with raw bytes is taken for some alphabet or other by half of them.
 *
 * Source: RFC 9285, section 4.
 *
 * @example toBase45(new Uint8Array([65, 66])) // 'BB8'
 */
export function toBase45(bytes: Uint8Array): string {
  let text = '';
  for (let k = 0; k < bytes.length; k += 2) {
    const high = bytes[k] ?? 0;
    const low = bytes[k + 1];
    text += low === undefined ? digits(high, 2) : digits(high * 256 + low, 3);
  }
  return text;
}

function digits(value: number, count: number): string {
  let text = '';
  for (let rest = value; text.length < count; rest = Math.floor(rest / 45)) text += alphabet[rest % 45];
  return text;
}

/**
 * The bytes of such a text; undefined for anything that is none: a strange character, a lone one, a group that comes
 * to more than its bytes hold.
 *
 * @example fromBase45('BB8') // Uint8Array [65, 66]
 */
export function fromBase45(text: string): Uint8Array | undefined {
  if (text.length % 3 === 1) return undefined;
  const bytes = new Uint8Array(Math.floor(text.length / 3) * 2 + (text.length % 3 === 2 ? 1 : 0));
  for (let k = 0, at = 0; k < text.length; k += 3) {
    const group = text.slice(k, k + 3);
    const value = numberOf(group);
    if (value === undefined || value > (group.length === 3 ? 0xffff : 0xff)) return undefined;
    if (group.length === 3) bytes[at++] = value >> 8;
    bytes[at++] = value & 0xff;
  }
  return bytes;
}

function numberOf(group: string): number | undefined {
  let value = 0;
  for (let k = group.length - 1; k >= 0; k -= 1) {
    const digit = alphabet.indexOf(group.charAt(k));
    if (digit < 0) return undefined;
    value = value * 45 + digit;
  }
  return value;
}
