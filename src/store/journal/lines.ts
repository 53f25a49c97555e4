import { crc32 } from '../crc32';
import type { Row } from './row';

const text = new TextEncoder();
const kinds = new Set(['log', 'settings', 'shop', 'aside', 'purge', 'begin', 'whole']);

/** Rows as lines: CRC-32 in eight digits, a space, the row as JSON. @example bytesOf(rows).length */
export const bytesOf = (rows: readonly Row[]): Uint8Array => text.encode(rows.map(lineOf).join(''));

function lineOf(row: Row): string {
  const json = JSON.stringify(row);
  return `${crc32(text.encode(json)).toString(16).padStart(8, '0')} ${json}\n`;
}

/**
 * What a file holds: rows whose check holds, in order; how many lines are damaged, a torn last one too; and how many are whole but
 * of a kind that only a later version of the app knows.
 */
export type Read = { readonly rows: readonly Row[]; readonly bad: number; readonly later: number };

/**
 * Reads lines back. A damaged one is left out and those after it are read all the same: each stands for itself.
 *
 * @example readLines(bytesOf(rows)).rows
 */
export function readLines(bytes: Uint8Array): Read {
  const rows: Row[] = [];
  const decoder = new TextDecoder();
  let [bad, later] = [0, 0];
  let from = 0;
  while (from < bytes.length) {
    const end = bytes.indexOf(10, from);
    const line = bytes.subarray(from, end < 0 ? bytes.length : end);
    from = end < 0 ? bytes.length : end + 1;
    if (line.length === 0) continue;
    const row = readLine(line, decoder);
    if (row === undefined) bad += 1;
    else if (isKnown(row)) rows.push(row);
    else later += 1;
  }
  return { rows, bad, later };
}

const isKnown = (row: readonly unknown[]): row is Row => kinds.has(row[0] as string);

function readLine(line: Uint8Array, decoder: TextDecoder): readonly unknown[] | undefined {
  const json = line.subarray(9);
  const check = decoder.decode(line.subarray(0, 9));
  if (!/^[0-9a-f]{8} $/.test(check) || Number.parseInt(check, 16) !== crc32(json)) return undefined;
  try {
    const row: unknown = JSON.parse(decoder.decode(json));
    return Array.isArray(row) ? row : undefined;
  } catch {
    return undefined;
  }
}
