import type { State } from './state';

/** Orders in which loose pieces are given places; the first of each group counts for all of it. */
export const orders = ['area', 'long', 'w', 'h', 'around', 'any'] as const;

export type Order = (typeof orders)[number];

function keyOf(state: State, piece: number, order: Order): number {
  const w = state.stock.w[piece] ?? 0;
  const h = state.stock.h[piece] ?? 0;
  switch (order) {
    case 'area':
      return w * h;
    case 'long':
      return Math.max(w, h);
    case 'w':
      return w;
    case 'h':
      return h;
    case 'around':
      return w + h;
    case 'any':
      return state.dice.part();
  }
}

let keys = new Float64Array(64);

/** From so many on it pays to sort by halves. Common practice, no source. */
const many = 100;

/** Puts each in its place among those before it: quick for few. */
function sortFew(state: State): void {
  const { loose, looseCount } = state;
  let moves = 0;
  for (let k = 1; k < looseCount; k += 1) {
    const piece = loose[k] ?? 0;
    const key = keys[k] ?? 0;
    let to = k - 1;
    while (to >= 0 && (keys[to] ?? 0) < key) {
      loose[to + 1] = loose[to] ?? 0;
      keys[to + 1] = keys[to] ?? 0;
      to -= 1;
    }
    moves += k - 1 - to;
    loose[to + 1] = piece;
    keys[to + 1] = key;
  }
  state.work += looseCount * 2 + moves / 8;
}

/** The same order, for many; equal keys stay as they lie in both. */
function sortMany(state: State): void {
  const { loose, looseCount } = state;
  const inOrder = Array.from(loose.subarray(0, looseCount).keys());
  inOrder.sort((a, b) => (keys[b] ?? 0) - (keys[a] ?? 0));
  loose.set(inOrder.map((k) => loose[k] ?? 0));
  state.work += looseCount * 12;
}

/** Puts the loose pieces in order, the largest first; with `noise` (0 to 1) not strictly. */
export function sortLoose(state: State, order: Order, noise: number): void {
  const { loose, looseCount, stock } = state;
  if (keys.length < looseCount) keys = new Float64Array(2 * looseCount);
  const rough = 1 + noise * (state.dice.part() - 0.5);
  for (let k = 0; k < looseCount; k += 1) {
    const piece = loose[k] ?? 0;
    const group = stock.group[piece] ?? -1;
    const lift = group >= 0 ? 1 : 0;
    const key = keyOf(state, piece, order) * (noise > 0 ? 1 + noise * (state.dice.part() - 0.5) : rough);
    keys[k] = lift > 0 ? key + 1e15 * (group + 1) : key;
  }
  if (looseCount > many) sortMany(state);
  else sortFew(state);
}
