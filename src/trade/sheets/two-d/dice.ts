/**
 * Numbers from a seed: the same ones on every machine. `next(n)` is a whole number from 0 up to but not including n.
 */
export type Dice = { readonly next: (n: number) => number; readonly part: () => number };

/**
 * A small generator (mulberry32): quick, and good enough to shuffle with.
 *
 * @param seed any whole number
 * @example diceOf(1).next(6) // a whole number, 0 to 5
 * Source: common practice, no source.
 */
export function diceOf(seed: number): Dice {
  let state = seed | 0;
  const part = () => {
    state = (state + 0x6d2b79f5) | 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 2 ** 32;
  };
  return { part, next: (n) => Math.floor(part() * n) };
}
