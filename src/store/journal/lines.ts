import { crc32 } from '../crc32';
import { mended } from './mend';
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
 * What a file holds: rows whose check holds, in order; the text of lines that are damaged past mending; how many were
 * mended; how many are whole but of a kind that only a later version of the app knows. A last line without its end
 * was never acknowledged: it is none of these.
 */
type Read = {
  readonly rows: readonly Row[];
  readonly damaged: readonly string[];
  readonly mended: number;
  readonly later: number;
};

/**
 * Reads lines back. One with a single turned byte is mended by its check; one damaged more is left out, and those
 * after it are read all the same: each stands for itself.
 *
 * @example readLines(bytesOf(rows)).rows
 */
export function readLines(bytes: Uint8Array): Read {
  const rows: Row[] = [];
  const damaged: string[] = [];
  const decoder = new TextDecoder();
  let [mends, later] = [0, 0];
  const take = (row: readonly unknown[]): void => {
    if (isKnown(row)) rows.push(row);
    else later += 1;
  };
  const { lines, torn } = linesOf(bytes);
  for (let k = 0; k < lines.length; k += 1) {
    const line = lines[k] ?? bytes;
    const row = readLine(line, decoder);
    if (row) {
      take(row);
      continue;
    }
    const next = lines[k + 1];
    const [found, used] = mend(line, next && !readLine(next, decoder) ? next : undefined, decoder);
    found.forEach(take);
    if (found.length > 0) mends += 1;
    else damaged.push(decoder.decode(line));
    k += used - 1;
  }
  const last = readLine(torn, decoder);
  if (last) take(last);
  return { rows, damaged, mended: mends, later };
}

/** Lines with their end, and what stands after the last end: a line whose write was cut off, or nothing. */
function linesOf(bytes: Uint8Array): { readonly lines: readonly Uint8Array[]; readonly torn: Uint8Array } {
  const lines: Uint8Array[] = [];
  let from = 0;
  for (let end = bytes.indexOf(10); end >= 0; end = bytes.indexOf(10, from)) {
    if (end > from) lines.push(bytes.subarray(from, end));
    from = end + 1;
  }
  return { lines, torn: bytes.subarray(from) };
}

/**
 * How many of these bytes are whole lines. A line whose write was cut off does not count, unless only its end is
 * missing: it was never acknowledged, and what is added next takes its place.
 */
export function standingIn(bytes: Uint8Array): number {
  const { torn } = linesOf(bytes);
  return torn.length === 0 || readLine(torn, new TextDecoder()) ? bytes.length : bytes.length - torn.length;
}

/**
 * Puts right what one turned byte can do: change a line, join two lines, or cut one in two. Returns the rows and how
 * many lines they take.
 */
function mend(
  line: Uint8Array,
  next: Uint8Array | undefined,
  decoder: TextDecoder,
): readonly [rows: readonly (readonly unknown[])[], lines: number] {
  // a first or last byte turned into a line end leaves an empty line beside it
  for (const one of [line, new Uint8Array([10, ...line]), new Uint8Array([...line, 10])]) {
    const row = mendLine(one, decoder);
    if (row) return [[row], 1];
  }
  const two = parted(line, decoder);
  if (two.length > 0 || !next) return [two, 1];
  const whole = new Uint8Array([...line, 10, ...next]);
  const joined = mendLine(whole, decoder);
  return joined ? [[joined], 2] : [[], 1];
}

/** Two lines whose end between them was turned into another sign. */
function parted(line: Uint8Array, decoder: TextDecoder): readonly (readonly unknown[])[] {
  for (let at = line.indexOf(32, 10); at >= 0; at = line.indexOf(32, at + 1)) {
    const [one, other] = [
      readLine(line.subarray(0, at - 9), decoder),
      readLine(line.subarray(at - 8), decoder),
    ];
    if (one && other) return [one, other];
  }
  return [];
}

const isKnown = (row: readonly unknown[]): row is Row => kinds.has(row[0] as string);

const checkOf = (line: Uint8Array, decoder: TextDecoder): string => decoder.decode(line.subarray(0, 9));

function readLine(line: Uint8Array, decoder: TextDecoder): readonly unknown[] | undefined {
  const json = line.subarray(9);
  const check = checkOf(line, decoder);
  if (!/^[0-9a-f]{8} $/.test(check) || Number.parseInt(check, 16) !== crc32(json)) return undefined;
  return rowOf(json, decoder);
}

/** One byte of the row was turned, or one of its check. */
function mendLine(line: Uint8Array, decoder: TextDecoder): readonly unknown[] | undefined {
  const json = line.subarray(9);
  const check = checkOf(line, decoder);
  if (/^[0-9a-f]{8} $/.test(check)) {
    const found = mended(json, Number.parseInt(check, 16));
    const row = found && rowOf(found, decoder);
    if (row) return row;
  }
  const stands = crc32(json).toString(16).padStart(8, '0');
  return differences(check, `${stands} `) === 1 ? rowOf(json, decoder) : undefined;
}

/** In how many of its signs a text is another than one of the same length. */
const differences = (a: string, b: string): number =>
  a.length === b.length ? [...a].filter((sign, k) => sign !== b[k]).length : Number.POSITIVE_INFINITY;

function rowOf(json: Uint8Array, decoder: TextDecoder): readonly unknown[] | undefined {
  try {
    const row: unknown = JSON.parse(decoder.decode(json));
    return Array.isArray(row) ? row : undefined;
  } catch {
    return undefined;
  }
}
