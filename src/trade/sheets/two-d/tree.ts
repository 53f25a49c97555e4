import { alongX, type Packing } from './packing';
import type { Tree } from './two-d';

type Size = { readonly w: number; readonly h: number };

/** Numbers of the nodes that stand in row k. @example childrenOf(lay, 0) */
export function childrenOf(lay: Packing, k: number): readonly number[] {
  const children: number[] = [];
  for (let j = k + 1; j < lay.n && (lay.up[j] ?? 0) >= k; j += 1) if (lay.up[j] === k) children.push(j);
  return children;
}

const left = ({ w, h }: Size): Tree => ({ w, h, is: 'left' });

function cutAlong(at: number, a: Tree, b: Tree): Tree {
  return { w: a.w + b.w, h: a.h, is: 'cut', across: false, at, a, b };
}

function cutAcross(at: number, a: Tree, b: Tree): Tree {
  return { w: a.w, h: a.h + b.h, is: 'cut', across: true, at, a, b };
}

/** Cuts a rectangle down to what is needed of it; of the two ways the one that leaves the larger piece whole. */
function trimmed(room: Size, inner: Tree): Tree {
  const { w, h } = inner;
  const right = (height: number) => left({ w: room.w - w, h: height });
  const above = (width: number) => left({ w: width, h: room.h - h });
  if (room.w === w && room.h === h) return inner;
  if (room.h === h) return cutAlong(w, inner, right(h));
  if (room.w === w) return cutAcross(h, inner, above(w));
  const rightFirst = Math.max((room.w - w) * room.h, w * (room.h - h));
  const aboveFirst = Math.max(room.w * (room.h - h), (room.w - w) * h);
  return rightFirst >= aboveFirst
    ? cutAlong(w, cutAcross(h, inner, above(w)), right(room.h))
    : cutAcross(h, cutAlong(w, inner, right(h)), above(room.w));
}

/** A row from its first piece to its last: each is cut off what is still there, the last is what remains or is left. */
function chain(lay: Packing, k: number, room: Size): Tree {
  const x = lay.what[k] === alongX;
  const size = (j: number): number => (x ? lay.nw[j] : lay.nh[j]) ?? 0;
  const piece = (along: number): Size => (x ? { w: along, h: room.h } : { w: room.w, h: along });
  const inOrder = [...childrenOf(lay, k)].sort((a, b) => size(b) - size(a) || a - b);
  const over = (x ? room.w : room.h) - size(k);
  const trees = [
    ...inOrder.map((j) => branch(lay, j, piece(size(j)))),
    ...(over > 0 ? [left(piece(over))] : []),
  ];
  return trees.reduceRight((rest, tree) =>
    x ? cutAlong(tree.w, tree, rest) : cutAcross(tree.h, tree, rest),
  );
}

/**
 * A row in its room. What is left at its end comes off last, so that equal pieces share a setting; it comes off first
 * only where that leaves a larger rectangle whole.
 */
function rowIn(lay: Packing, k: number, room: Size): Tree {
  const w = lay.nw[k] ?? 0;
  const h = lay.nh[k] ?? 0;
  const x = lay.what[k] === alongX;
  const beside = x ? room.h - h : room.w - w;
  if (beside === 0) return chain(lay, k, room);
  const end = x ? room.w - w : room.h - h;
  const endFirst = Math.max(end * (x ? room.h : room.w), beside * (x ? w : h));
  const besideFirst = Math.max(beside * (x ? room.w : room.h), end * (x ? h : w));
  if (end > 0 && endFirst > besideFirst) return trimmed(room, chain(lay, k, { w, h }));
  return trimmed(room, chain(lay, k, x ? { w: room.w, h } : { w, h: room.h }));
}

function branch(lay: Packing, k: number, room: Size): Tree {
  const what = lay.what[k] ?? 0;
  if (what < 0) return rowIn(lay, k, room);
  const size = { w: lay.nw[k] ?? 0, h: lay.nh[k] ?? 0 };
  return trimmed(room, { ...size, is: 'piece', piece: what >> 1, turned: (what & 1) === 1 });
}

/**
 * The cuts that take a sheet apart.
 *
 * @param size the whole sheet, no smaller than what is laid on it
 * @example treeOf(lay, { w: 96, h: 48 }).is // 'cut'
 */
export function treeOf(lay: Packing, size: Size): Tree {
  return lay.n === 0 ? left(size) : branch(lay, 0, size);
}
