/** SHA-256 in hex; undefined where the page has none: it did not come over https. */
export async function hashOf(bytes: ArrayBuffer): Promise<string | undefined> {
  const { subtle } = globalThis.crypto;
  if (!subtle) return undefined;
  const sum = new Uint8Array(await subtle.digest('SHA-256', bytes));
  return [...sum].map((byte) => byte.toString(16).padStart(2, '0')).join('');
}
