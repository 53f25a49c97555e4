import { err, ok, type Result } from '../../length/result';
import { crc32 } from '../crc32';
import { fromBase45, toBase45 } from './base45';

/** What stands before the bytes of every code of ours, with the version of what follows. */
const mark = 'KL1:';
const anyMark = /^KL(\d+):/;
/** Bytes of a code besides its block: bundle 4, length 3, count 2, number 2, check 4. */
const around = 15;
/** Blocks a bundle may be cut into, and so codes in one pass. */
export const mostBlocks = 512;
/** Numbers go round after this many: at five a second, in three and a half hours. */
export const numbers = 0x10000;

/** One code: a block of a bundle, or a mix of blocks. */
export type CodeFrame = {
  /** First bytes of the bundle's SHA-256: which bundle this is a piece of. */
  readonly bundle: number;
  /** Length of the whole bundle, bytes. */
  readonly length: number;
  /** How many blocks it is cut into. */
  readonly count: number;
  /** Which code this is, 0 up: see `mixOf`. */
  readonly number: number;
  readonly block: Uint8Array;
};

export type FrameError =
  /** A code, but none of ours. */
  | { readonly code: 'not-ours' }
  /** A code of a newer version of this app. */
  | { readonly code: 'newer-code'; readonly version: number }
  /** Ours, and misread: it is thrown away. */
  | { readonly code: 'misread' };

/** How long each block is. */
export const blockSize = (length: number, count: number): number => Math.ceil(length / count);

/** The text a code shows: readable by any reader, told apart by its beginning, checked by its end. */
export function writeFrame({ bundle, length, count, number, block }: CodeFrame): string {
  const bytes = new Uint8Array(around + block.length);
  const view = new DataView(bytes.buffer);
  view.setUint32(0, bundle);
  view.setUint8(4, length >> 16);
  view.setUint16(5, length & 0xffff);
  view.setUint16(7, count);
  view.setUint16(9, number);
  bytes.set(block, 11);
  view.setUint32(bytes.length - 4, crc32(bytes.subarray(0, -4)));
  return mark + toBase45(bytes);
}

/** Reads the text of a code; what is not ours to the last bit is refused. */
export function readFrame(text: string): Result<CodeFrame, FrameError> {
  const version = Number(anyMark.exec(text)?.[1] ?? 0);
  if (version > 1) return err({ code: 'newer-code', version });
  if (!text.startsWith(mark)) return err({ code: 'not-ours' });
  const bytes = fromBase45(text.slice(mark.length));
  const frame = bytes && frameOf(bytes);
  return frame ? ok(frame) : err({ code: 'misread' });
}

function frameOf(bytes: Uint8Array): CodeFrame | undefined {
  if (bytes.length <= around) return undefined;
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.length);
  if (view.getUint32(bytes.length - 4) !== crc32(bytes.subarray(0, -4))) return undefined;
  const length = (view.getUint8(4) << 16) | view.getUint16(5);
  const count = view.getUint16(7);
  const block = bytes.slice(11, -4);
  const fits = count > 0 && count <= mostBlocks && block.length === blockSize(length, count);
  return fits ? { bundle: view.getUint32(0), length, count, number: view.getUint16(9), block } : undefined;
}
