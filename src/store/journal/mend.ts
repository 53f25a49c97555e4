import { crc32 } from '../crc32';

/** The table of CRC-32. No two entries share an upper byte, so that a step of the check can be undone. */
const tableOf = (): Uint32Array =>
  Uint32Array.from({ length: 256 }, (_, n) => {
    let c = n;
    for (let k = 0; k < 8; k += 1) c = c & 1 ? 0xedb88320 ^ (c >>> 1) : c >>> 1;
    return c >>> 0;
  });

let steps: { readonly table: Uint32Array; readonly byTop: Uint8Array } | undefined;

function stepsBack() {
  if (steps) return steps;
  const table = tableOf();
  const byTop = new Uint8Array(256);
  table.forEach((c, n) => {
    byTop[c >>> 24] = n;
  });
  steps = { table, byTop };
  return steps;
}

/**
 * Bytes with the one byte put right that was turned since their check was written; undefined where no single byte, or
 * more than one, would do. The check is linear: what it is off by, followed back byte by byte from the end, shows at
 * one place as what one turned byte does there.
 *
 * @param check CRC-32 as it was written
 */
export function mended(bytes: Uint8Array, check: number): Uint8Array | undefined {
  const { table, byTop } = stepsBack();
  let off = (crc32(bytes) ^ check) >>> 0;
  let found: Uint8Array | undefined;
  for (let at = bytes.length - 1; at >= 0 && off !== 0; at -= 1) {
    const turned = byTop[off >>> 24] ?? 0;
    if (table[turned] === off) {
      if (found) return undefined;
      found = bytes.slice();
      found[at] = (found[at] ?? 0) ^ turned;
    }
    off = (((off ^ (table[turned] ?? 0)) << 8) | turned) >>> 0;
  }
  return found;
}
