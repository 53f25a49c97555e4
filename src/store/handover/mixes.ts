/**
 * Which blocks a code carries. The first `count` codes carry one block each, in order; every later one carries the
 * XOR of about half of them, chosen by its number alone. So one clean pass is enough, and after it any code not yet
 * seen fills any gap: about two more than were missed, where plain repeating would wait for the very ones.
 *
 * @param number which code, 0 up
 * @param count how many blocks, 1 up
 * @returns one byte a block, 1 where it is in; never all 0
 */
export function mixOf(number: number, count: number): Uint8Array {
  const mix = new Uint8Array(count);
  if (number < count) {
    mix[number] = 1;
    return mix;
  }
  const next = chance(number ^ Math.imul(count, 0x9e3779b1));
  for (let k = 0; k < count; k += 1) mix[k] = next() >>> 31;
  if (!mix.includes(1)) mix[number % count] = 1;
  return mix;
}

/** Whole numbers of 32 bits that look like chance, the same on every phone. */
function chance(seed: number): () => number {
  let state = seed | 0;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let x = Math.imul(state ^ (state >>> 15), state | 1);
    x ^= x + Math.imul(x ^ (x >>> 7), x | 61);
    return (x ^ (x >>> 14)) >>> 0;
  };
}

/** Adds one run of bytes to another, without carry: twice is not at all. Both of one length. */
export function xorInto(sum: Uint8Array, other: Uint8Array): void {
  for (let k = 0; k < sum.length; k += 1) sum[k] = (sum[k] ?? 0) ^ (other[k] ?? 0);
}
