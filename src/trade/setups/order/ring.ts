/** What waits on what, by number; the number is also the place in the list given. */
export type Waits = {
  readonly before: readonly (readonly number[])[];
  readonly after: readonly (readonly number[])[];
};

/** Puts k into a list kept greatest first. @example insert([5, 2], 3) // the list is 5, 3, 2 */
export function insert(list: number[], k: number): void {
  let low = 0;
  let high = list.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((list[middle] ?? 0) > k) low = middle + 1;
    else high = middle;
  }
  list.splice(low, 0, k);
}

/**
 * All that can be done, each after all it waits on; of those that could come next, the first in the list.
 *
 * @returns fewer than there are when some wait on each other in a ring
 * @example inTurn({ before: [[1], []], after: [[], [0]] }) // 1, 0
 */
export function inTurn({ before, after }: Waits): number[] {
  const waiting = before.map((list) => list.length);
  const order: number[] = [];
  const ready = waiting.flatMap((n, k) => (n === 0 ? [k] : [])).reverse();
  for (let k = ready.pop(); k !== undefined; k = ready.pop()) {
    order.push(k);
    for (const next of after[k] ?? []) {
      const still = (waiting[next] ?? 0) - 1;
      waiting[next] = still;
      if (still === 0) insert(ready, next);
    }
  }
  return order;
}

/**
 * The shortest way from k back to k, shorter than `most`, by what comes after; none: empty. Counts the looks it
 * takes.
 */
function wayBack(
  after: Waits['after'],
  k: number,
  limit: { readonly most: number; looks: number },
): number[] {
  const cameFrom = new Map<number, number>();
  let edge = [k];
  for (let long = 1; long < limit.most && edge.length > 0; long += 1) {
    const further: number[] = [];
    for (const x of edge) {
      for (const y of after[x] ?? []) {
        limit.looks -= 1;
        if (y === k) {
          const way: number[] = [];
          for (let z = x; z !== k; z = cameFrom.get(z) ?? k) way.push(z);
          return [k, ...way.reverse()];
        }
        if (cameFrom.has(y)) continue;
        cameFrom.set(y, x);
        further.push(y);
      }
    }
    edge = further;
  }
  return [];
}

/** Looks after which a ring in hand is short enough: long rings in long lists are not worth more. */
const enoughLooks = 200_000;

/**
 * A ring of "after": the shortest, the first in the list of those as short, unless that takes too many looks.
 *
 * @returns numbers in the order they would have to be done, the last before the first again; empty when there is none
 * @example ringIn({ before: [[1], [0]], after: [[1], [0]] }) // 0, 1
 */
export function ringIn(waits: Waits): number[] {
  const fine = new Set(inTurn(waits));
  let ring: number[] = [];
  let looks = enoughLooks;
  for (let k = 0; k < waits.before.length; k += 1) {
    if (fine.has(k)) continue;
    const limit = { most: ring.length || Number.POSITIVE_INFINITY, looks };
    const way = wayBack(waits.after, k, limit);
    if (way.length > 0) ring = way;
    looks = limit.looks;
    if (ring.length > 0 && looks <= 0) break;
  }
  return ring;
}
