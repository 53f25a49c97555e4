import { layNodes, type Packing } from './packing';
import { clearAll, openSheet, type State } from './state';
import { childrenOf } from './tree';

/** One sheet by itself: a piece, or a row and what stands in it; `what` as in a `Packing`. */
export type Nest = { readonly what: number; readonly of: readonly Nest[] };

/** What lies on a sheet, from node k down. @example nestOf(lay).of.length */
export function nestOf(lay: Packing, k = 0): Nest {
  const what = lay.what[k] ?? 0;
  return { what, of: what >= 0 ? [] : childrenOf(lay, k).map((j) => nestOf(lay, j)) };
}

/** The pieces of a nest by number, in rising order. @example piecesOn({ what: 6, of: [] }) // [3] */
export function piecesOn(nest: Nest): readonly number[] {
  const all = (n: Nest): readonly number[] => (n.what >= 0 ? [n.what >> 1] : n.of.flatMap(all));
  return [...all(nest)].sort((a, b) => a - b);
}

/** A row that holds these: one alone is no row, and a row in a row of the same way is part of it. */
export function rowOf(what: number, of: readonly Nest[]): Nest | undefined {
  const [only, ...others] = of;
  if (only === undefined || others.length === 0) return only;
  return { what, of: of.flatMap((n) => (n.what === what ? n.of : [n])) };
}

/** As much of a nest as is still wanted, taken off `left`. @example takeNest(nest, left) */
export function takeNest(nest: Nest, left: Int32Array): Nest | undefined {
  const piece = nest.what >> 1;
  if (nest.what >= 0) {
    if ((left[piece] ?? 0) === 0) return undefined;
    left[piece] = (left[piece] ?? 0) - 1;
    return nest;
  }
  return rowOf(
    nest.what,
    nest.of.flatMap((n) => takeNest(n, left) ?? []),
  );
}

type Node = { readonly what: number; readonly up: number; readonly w: number; readonly h: number };

/** The nodes of a nest in the order of a `Packing`. */
function nodesOf({ stock }: State, nest: Nest): readonly Node[] {
  const nodes: Node[] = [];
  const go = ({ what, of }: Nest, up: number): void => {
    const w = stock.w[what >> 1] ?? 0;
    const h = stock.h[what >> 1] ?? 0;
    const turned = (what & 1) === 1;
    const at = nodes.length;
    if (what < 0) nodes.push({ what, up, w: 0, h: 0 });
    else nodes.push({ what, up, w: turned ? h : w, h: turned ? w : h });
    for (const n of of) go(n, at);
  };
  go(nest, -1);
  return nodes;
}

/**
 * Lays the sheets anew, each as its nest says; pieces on none of them are loose. For pieces of no group.
 *
 * @param nests no piece more often than there is of it @param left what is on none of them, by piece
 * @example layNests(state, [], state.stock.count)
 */
export function layNests(state: State, nests: readonly Nest[], left: Int32Array): void {
  clearAll(state);
  for (const nest of nests) {
    const lay = state.lays[openSheet(state, 0)];
    if (lay) layNodes(lay, nodesOf(state, nest));
  }
  state.looseCount = 0;
  state.looseArea = 0;
  for (const [piece, count] of left.entries()) {
    for (let k = 0; k < count; k += 1) {
      state.loose[state.looseCount] = piece;
      state.looseCount += 1;
    }
    state.looseArea += count * (state.stock.area[piece] ?? 0);
  }
}
