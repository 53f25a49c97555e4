/** A short random name nobody else has made: 16 letters and figures, about 80 bits. */
export function randomId(): string {
  return Array.from(crypto.getRandomValues(new Uint8Array(16)), (byte) => (byte % 36).toString(36)).join('');
}
