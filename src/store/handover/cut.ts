import { blockSize, type CodeFrame, mostBlocks, numbers, writeFrame } from './frame';
import { mixOf, xorInto } from './mixes';

/** How much goes on one code, bytes: a single still one may be finer than those of a set that goes by. */
export type Fineness = { readonly still: number; readonly passing: number };

/** A bundle as codes: as many as it takes in one pass, and without end after. */
export type Codes = { readonly count: number; readonly text: (number: number) => string };

/**
 * Cuts a bundle into codes; undefined when it is too long for them.
 *
 * @param bundle whole bundle, at least one byte
 */
export function cut(bundle: Uint8Array, { still, passing }: Fineness): Codes | undefined {
  const count = bundle.length <= still ? 1 : Math.ceil(bundle.length / passing);
  if (count > mostBlocks) return undefined;
  const size = blockSize(bundle.length, count);
  const blocks = Array.from({ length: count }, (_, k) =>
    padded(bundle.subarray(k * size, (k + 1) * size), size),
  );
  const same = { bundle: nameOf(bundle), length: bundle.length, count };
  const frame = (number: number): CodeFrame => ({ ...same, number, block: mixed(blocks, number) });
  return { count, text: (number) => writeFrame(frame(number % numbers)) };
}

/** The first four bytes of its check: which bundle a code belongs to. */
const nameOf = (bundle: Uint8Array): number =>
  bundle.slice(1, 5).reduce((name, byte) => name * 256 + byte, 0);

function padded(bytes: Uint8Array, size: number): Uint8Array {
  const block = new Uint8Array(size);
  block.set(bytes);
  return block;
}

function mixed(blocks: readonly Uint8Array[], number: number): Uint8Array {
  const sum = new Uint8Array(blocks[0]?.length ?? 0);
  for (const [k, inIt] of mixOf(number, blocks.length).entries()) {
    if (inIt && blocks[k]) xorInto(sum, blocks[k]);
  }
  return sum;
}
