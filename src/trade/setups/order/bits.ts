/** Rows of bits, all as wide as each other: sets of operations, fast to join and to compare. */
export type Rows = { readonly words: number; readonly bits: Int32Array };

/** So many empty rows, each wide enough for `width` members. @example emptyRows(2, 40).words // 2 */
export function emptyRows(count: number, width: number): Rows {
  const words = (width + 31) >>> 5;
  return { words, bits: new Int32Array(count * words) };
}

/** The number at a place; nothing there is 0. @example at(new Int32Array([7]), 0) // 7 */
export const at = (numbers: Int32Array, k: number): number => numbers[k] ?? 0;

/** True when member k is in row r. @example has(emptyRows(1, 8), 0, 3) // false */
export const has = ({ words, bits }: Rows, r: number, k: number): boolean =>
  ((at(bits, r * words + (k >>> 5)) >>> (k & 31)) & 1) === 1;

/** Puts member k into row r. @example put(rows, 0, 3) */
export function put({ words, bits }: Rows, r: number, k: number): void {
  const w = r * words + (k >>> 5);
  bits[w] = at(bits, w) | (1 << (k & 31));
}

/** Takes member k out of row r. @example drop(rows, 0, 3) */
export function drop({ words, bits }: Rows, r: number, k: number): void {
  const w = r * words + (k >>> 5);
  bits[w] = at(bits, w) & ~(1 << (k & 31));
}

/** Adds to row r all that is in row `other` of `from`. @example join(rows, 0, { from: rows, other: 1 }) */
export function join({ words, bits }: Rows, r: number, { from, other }: { from: Rows; other: number }): void {
  const to = r * words;
  const source = other * words;
  for (let w = 0; w < words; w += 1) bits[to + w] = at(bits, to + w) | at(from.bits, source + w);
}

/** True when all of row a is in row b. @example within(rows, 0, 1) */
export function within({ words, bits }: Rows, a: number, b: number): boolean {
  for (let w = 0; w < words; w += 1) {
    if ((at(bits, a * words + w) & ~at(bits, b * words + w)) !== 0) return false;
  }
  return true;
}

/** The members of row r, least first. @example members(rows, 0) // [3] */
export function members({ words, bits }: Rows, r: number): number[] {
  const found: number[] = [];
  for (let w = 0; w < words; w += 1) {
    let word = at(bits, r * words + w);
    while (word !== 0) {
      const bit = 31 - Math.clz32(word & -word);
      found.push(w * 32 + bit);
      word &= word - 1;
    }
  }
  return found;
}
