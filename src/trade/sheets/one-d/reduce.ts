import type { Kinds, Stick } from './kinds';

/** Sticks settled beforehand, and what is left to plan: some best plan holds these sticks. */
type Reduced = { readonly sticks: readonly Stick[]; readonly left: Int32Array };

/**
 * Pairs that fill a stick to the end: whatever lies beside one of them can change places with the other.
 */
function fullPairs({ sizes, capacity }: Kinds, left: Int32Array): Stick[] {
  const sticks: Stick[] = [];
  let a = 0;
  let b = sizes.length - 1;
  while (a <= b) {
    const sum = (sizes[a] ?? 0) + (sizes[b] ?? 0);
    if (sum === capacity) {
      const pairs = a === b ? (left[a] ?? 0) >> 1 : Math.min(left[a] ?? 0, left[b] ?? 0);
      for (let p = 0; p < pairs; p += 1) sticks.push([a, b]);
      left[a] = (left[a] ?? 0) - pairs;
      left[b] = (left[b] ?? 0) - pairs;
    }
    if (sum > capacity) a += 1;
    else b -= 1;
  }
  return sticks;
}

/** The kinds of the two shortest pieces left, other than one of the kind `but`. */
function shortestTwo(left: Int32Array, but: number): readonly [number, number] | undefined {
  let first = -1;
  for (let k = left.length - 1; k >= 0; k -= 1) {
    let free = (left[k] ?? 0) - (k === but ? 1 : 0);
    if (first < 0 && free > 0) {
      first = k;
      free -= 1;
    }
    if (first >= 0 && free > 0) return [first, k];
  }
  return undefined;
}

/** The longest piece left that fits into `room`, other than one of the kind `but`. */
function longestIn({ sizes }: Kinds, left: Int32Array, { room, but }: { room: number; but: number }): number {
  for (let k = 0; k < left.length; k += 1) {
    const free = (left[k] ?? 0) - (k === but ? 1 : 0);
    if (free > 0 && (sizes[k] ?? 0) <= room) return k;
  }
  return -1;
}

/**
 * Settles what needs no search: pairs that fill a stick, and long pieces that have room for at most one more, with the
 * longest that fits.
 *
 * Source: dominance as in S. Martello, P. Toth, Knapsack Problems (1990), chapter 8.
 *
 * @param kinds sizes in whole grid steps, longest first
 * @returns sticks some best plan holds, and how many pieces of each kind are left
 * @example reduce(kindsOf({ capacity: 10, items: [{ size: 7, count: 1 }, { size: 3, count: 1 }] })).sticks // [[0, 1]]
 */
export function reduce(kinds: Kinds): Reduced {
  const { sizes, capacity } = kinds;
  const left = Int32Array.from(kinds.wanted);
  const sticks = fullPairs(kinds, left);
  for (let longest = 0; longest < left.length; ) {
    if ((left[longest] ?? 0) === 0) {
      longest += 1;
      continue;
    }
    const room = capacity - (sizes[longest] ?? 0);
    const two = shortestTwo(left, longest);
    if (two && (sizes[two[0]] ?? 0) + (sizes[two[1]] ?? 0) <= room) break;
    left[longest] = (left[longest] ?? 0) - 1;
    const mate = longestIn(kinds, left, { room, but: -1 });
    if (mate < 0) sticks.push([longest]);
    else {
      left[mate] = (left[mate] ?? 0) - 1;
      sticks.push([longest, mate]);
    }
  }
  return { sticks, left };
}
