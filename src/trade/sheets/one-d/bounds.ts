import { checkOneD, type Kinds, kindsOf, type OneD } from './kinds';

/**
 * A whole number that is at least n/d, without a float's error: n ≥ 0, d > 0, both exact.
 * @example ceilDiv(7, 3) // 3
 */
export function ceilDiv(n: number, d: number): number {
  const rest = n % d;
  return (n - rest) / d + (rest > 0 ? 1 : 0);
}

/** Sum of the images of all pieces. */
function total({ sizes, wanted }: Kinds, image: (size: number) => number): number {
  let sum = 0;
  for (let k = 0; k < sizes.length; k += 1) sum += (wanted[k] ?? 0) * image(sizes[k] ?? 0);
  return sum;
}

/** Breakpoints: the sizes up to half a stick, and what is left beside those above it; thinned to at most `most`. */
function breakpoints({ sizes, capacity }: Kinds, most: number): readonly number[] {
  const found = new Set<number>();
  for (const size of sizes) {
    if (2 * size <= capacity) found.add(size);
    else if (size < capacity) found.add(capacity - size);
  }
  const all = [...found].sort((a, b) => a - b);
  const step = Math.max(1, Math.ceil(all.length / most));
  return all.filter((_, k) => k % step === 0);
}

/**
 * Dual feasible: sizes within l of a full stick count as full, those below l as nothing, the rest as they are.
 * Source: S. Martello, P. Toth, Knapsack Problems (1990), bound L2; as a function in S. P. Fekete, J. Schepers,
 * Mathematical Programming 91 (2001).
 */
const cutOff =
  (capacity: number, l: number) =>
  (size: number): number =>
    size > capacity - l ? capacity : size < l ? 0 : size;

/**
 * Dual feasible, k times the size counted in whole sticks: image of a full stick is k · capacity.
 * Source: Fekete and Schepers (2001), u(k); known before as Lueker's rounding.
 */
const stepped =
  (capacity: number, k: number) =>
  (size: number): number => {
    const up = (k + 1) * size;
    return up % capacity === 0 ? k * size : Math.floor(up / capacity) * capacity;
  };

/**
 * Dual feasible: how many pieces of length l a piece takes the place of, doubled; a full stick counts 2 · floor(C / l).
 * Source: J. Carlier, F. Clautiaux, A. Moukrim, Computers & Operations Research 34 (2007), f2.
 */
const shared =
  (capacity: number, l: number) =>
  (size: number): number => {
    if (2 * size > capacity) return 2 * (Math.floor(capacity / l) - Math.floor((capacity - size) / l));
    return 2 * size === capacity ? Math.floor(capacity / l) : 2 * Math.floor(size / l);
  };

/** The same as `stickLowerBound`, of kinds. @example boundOf(kindsOf(problem)) */
export function boundOf(kinds: Kinds): number {
  const { capacity } = kinds;
  let best = ceilDiv(
    total(kinds, (size) => size),
    capacity,
  );
  const all = breakpoints(kinds, 400);
  for (const l of all) {
    best = Math.max(best, ceilDiv(total(kinds, cutOff(capacity, l)), capacity));
    best = Math.max(best, ceilDiv(total(kinds, shared(capacity, l)), 2 * Math.floor(capacity / l)));
  }
  const few = breakpoints(kinds, 40);
  for (let k = 1; k <= 20; k += 1) {
    const step = stepped(capacity, k);
    best = Math.max(best, ceilDiv(total(kinds, step), k * capacity));
    for (const l of few) {
      const cut = cutOff(capacity, l);
      best = Math.max(
        best,
        ceilDiv(
          total(kinds, (size) => step(cut(size))),
          k * capacity,
        ),
      );
    }
  }
  return best;
}

/**
 * No plan has fewer sticks than this: the sum of lengths, and families of dual feasible functions.
 *
 * @param problem sizes and capacity in whole grid steps, kerf already added to both
 * @returns sticks, whole, ≥ 0
 * @throws RangeError if the problem is not one (see `checkOneD`)
 * @example stickLowerBound({ capacity: 10, items: [{ size: 6, count: 3 }] }) // 3
 */
export function stickLowerBound(problem: OneD): number {
  checkOneD(problem);
  return boundOf(kindsOf(problem));
}
