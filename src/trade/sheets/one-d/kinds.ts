/** One capacity and pieces of several sizes, each so many times. */
export type OneD = {
  readonly capacity: number;
  readonly items: readonly { readonly size: number; readonly count: number }[];
};

/** What is cut from one stick: indices into the problem's items, one entry a piece. */
export type Fill = { readonly items: readonly number[] };

/** A stick inside the solver: kinds of size, one entry a piece, in rising order of kind. */
export type Stick = readonly number[];

/** Sizes that differ, longest first, and how many pieces of each are wanted. */
export type Kinds = {
  readonly capacity: number;
  readonly sizes: Float64Array;
  readonly wanted: Int32Array;
};

const isWhole = (n: number, least: number): boolean => Number.isSafeInteger(n) && n >= least;

/**
 * Refuses what no caller may ask.
 *
 * @param problem sizes and capacity in whole grid steps
 * @throws RangeError if a figure is not a whole number, a size is below 1 or above the capacity, or a count below 0
 * @example checkOneD({ capacity: 10, items: [{ size: 3, count: 2 }] })
 */
export function checkOneD({ capacity, items }: OneD): void {
  if (!isWhole(capacity, 1)) throw new RangeError('capacity must be a whole number above 0');
  for (const { size, count } of items) {
    if (!isWhole(size, 1) || size > capacity) throw new RangeError('a size must be whole, 1 to the capacity');
    if (!isWhole(count, 0)) throw new RangeError('a count must be whole, 0 or more');
  }
  const sum = items.reduce((s, { size, count }) => s + size * count, capacity);
  // the dual feasible functions multiply by up to a thousand, and must stay exact
  if (sum > Number.MAX_SAFE_INTEGER / 4096) throw new RangeError('the sizes together are too large');
}

/**
 * Sorts pieces into kinds of equal size.
 *
 * @param problem sizes and capacity in whole grid steps
 * @returns the kinds, longest first; kinds nobody wants are left out
 * @example kindsOf({ capacity: 10, items: [{ size: 3, count: 2 }, { size: 3, count: 1 }] }).wanted // [3]
 */
export function kindsOf({ capacity, items }: OneD): Kinds {
  const wanted = new Map<number, number>();
  for (const { size, count } of items) if (count > 0) wanted.set(size, (wanted.get(size) ?? 0) + count);
  const sorted = [...wanted].sort(([a], [b]) => b - a);
  return {
    capacity,
    sizes: Float64Array.from(sorted, ([size]) => size),
    wanted: Int32Array.from(sorted, ([, count]) => count),
  };
}

/**
 * Hands the real pieces out to sticks of kinds.
 *
 * @param problem the problem the kinds were made of
 * @param sticks each piece wanted once, in all
 * @returns the sticks with indices into the problem's items
 * @example fillsOf({ capacity: 10, items: [{ size: 3, count: 2 }] }, [[0, 0]]) // [{ items: [0, 0] }]
 */
export function fillsOf(problem: OneD, sticks: readonly Stick[]): readonly Fill[] {
  const { sizes } = kindsOf(problem);
  const bySize = new Map<number, number[]>();
  problem.items.forEach(({ size, count }, k) => {
    const line = bySize.get(size) ?? [];
    for (let c = 0; c < count; c += 1) line.push(k);
    bySize.set(size, line);
  });
  const next = new Map<number, number>();
  return sticks.map((stick) => ({
    items: stick.map((kind) => {
      const size = sizes[kind] ?? 0;
      const at = next.get(size) ?? 0;
      next.set(size, at + 1);
      return bySize.get(size)?.[at] ?? -1;
    }),
  }));
}

/** How long the pieces of a stick are together. @example lengthOf(kinds, [0, 0]) */
function lengthOf({ sizes }: Kinds, stick: Stick): number {
  let sum = 0;
  for (const k of stick) sum += sizes[k] ?? 0;
  return sum;
}

/** How many pieces are wanted in all. @example pieceCount(kinds) // 3 */
export const pieceCount = ({ wanted }: Kinds): number => wanted.reduce((s, n) => s + n, 0);

/** True when the sticks hold each piece wanted once, and none is over its capacity. @example isPlan(kinds, [[0, 0]]) */
export function isPlan(kinds: Kinds, sticks: readonly Stick[]): boolean {
  const left = Int32Array.from(kinds.wanted);
  for (const stick of sticks) {
    if (lengthOf(kinds, stick) > kinds.capacity) return false;
    for (const k of stick) left[k] = (left[k] ?? 0) - 1;
  }
  return left.every((n) => n === 0);
}
