export const bytesOf = (length: number, seed: number): Uint8Array =>
  Uint8Array.from(
    { length },
    (_, k) => (Math.imul(k + 1, Math.imul(seed + 1, 0x9e3779b1) | 1) >>> 13) & 0xff,
  );

/** Bytes as text: two runs of thousands are compared at once. */
export const hex = (bytes: Uint8Array | undefined): string => Buffer.from(bytes ?? []).toString('hex');
