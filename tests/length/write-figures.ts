import type { Length } from '../../src/length/length';
import { readLength } from '../../src/length/read';

/** A length as it is written: `13 7/16`, `18 mm`. Any denominator: `36 973/1016`. */
export function l(text: string): Length {
  const read = readLength(text);
  if (!read.ok) throw new Error(`not a length: ${text}`);
  return read.value.value;
}

/** Exact, whatever the denominator. */
export const w = (x: Length): string => x.toFraction(true);
