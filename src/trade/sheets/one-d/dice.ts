/** Draws a whole number from 0 up to but not including n. */
export type Dice = (n: number) => number;

/**
 * Whole numbers from a seed: the same seed gives the same numbers on every machine.
 *
 * @param seed any whole number
 * @returns draws a whole number, 0 … n − 1, for n ≥ 1
 * @example diceOf(1)(1) // 0
 * Source: the mixing steps are those of mulberry32 (T. Ettinger, public domain).
 */
export function diceOf(seed: number): Dice {
  let state = seed | 0;
  return (n) => {
    state = (state + 0x6d2b79f5) | 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return Math.floor((((t ^ (t >>> 14)) >>> 0) / 2 ** 32) * n);
  };
}
