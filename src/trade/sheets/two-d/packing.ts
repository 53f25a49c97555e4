/**
 * One sheet while it is being laid: a tree of rows, in the order met from the top down, in flat arrays. A row holds
 * what stands side by side along x or along y and is no larger than that needs; nothing says where in the sheet it
 * lies, so all the room left over in a row, or around it, can be had by whatever is added there. Everything in it is
 * mutable: it is the inside of the search and never leaves it.
 */
export type Packing = {
  kind: number;
  /** Usable size; narrowed while the search keeps a leftover whole. */
  w: number;
  h: number;
  /** Area not covered by pieces. */
  free: number;
  /** Nodes in use. */
  n: number;
  /** `alongX`, `alongY`, or a piece: 2 x its number, + 1 when turned. */
  what: Int32Array;
  /** The row a node stands in; -1 for the first node. */
  up: Int32Array;
  /** What the node needs. */
  nw: Float64Array;
  nh: Float64Array;
  /** What the node could take if everything else kept its size. */
  aw: Float64Array;
  ah: Float64Array;
  /** Slot k, room for one more: at the end of row k, or across from piece k; slot n: across from the whole. */
  rx: Float64Array;
  ry: Float64Array;
};

export const alongX = -1;
export const alongY = -2;

/** An empty sheet; kind -1 is a place kept for one. */
export function emptyPacking(nodes: number): Packing {
  const f = () => new Float64Array(nodes + 1);
  const i = () => new Int32Array(nodes + 1);
  const sizes = { nw: f(), nh: f(), aw: f(), ah: f(), rx: f(), ry: f() };
  return { kind: -1, w: 0, h: 0, free: 0, n: 0, what: i(), up: i(), ...sizes };
}

/** Room for so many nodes, and one slot more. */
function widen(lay: Packing, nodes: number): void {
  if (lay.what.length > nodes) return;
  const larger = emptyPacking(2 * nodes + 4);
  larger.what.set(lay.what);
  larger.up.set(lay.up);
  larger.nw.set(lay.nw);
  larger.nh.set(lay.nh);
  lay.what = larger.what;
  lay.up = larger.up;
  lay.nw = larger.nw;
  lay.nh = larger.nh;
  lay.aw = larger.aw;
  lay.ah = larger.ah;
  lay.rx = larger.rx;
  lay.ry = larger.ry;
}

/** Makes an empty sheet of a kind of the place. */
export function openLay(lay: Packing, kind: number, size: { readonly w: number; readonly h: number }): void {
  lay.kind = kind;
  lay.w = size.w;
  lay.h = size.h;
  lay.free = size.w * size.h;
  lay.n = 0;
  lay.rx[0] = size.w;
  lay.ry[0] = size.h;
}

export function copyLay(from: Packing, to: Packing): void {
  to.kind = from.kind;
  to.w = from.w;
  to.h = from.h;
  to.free = from.free;
  to.n = from.n;
  widen(to, from.n + 1);
  for (let k = 0; k < from.n; k += 1) {
    to.what[k] = from.what[k] ?? 0;
    to.up[k] = from.up[k] ?? 0;
    to.nw[k] = from.nw[k] ?? 0;
    to.nh[k] = from.nh[k] ?? 0;
    to.aw[k] = from.aw[k] ?? 0;
    to.ah[k] = from.ah[k] ?? 0;
    to.rx[k] = from.rx[k] ?? 0;
    to.ry[k] = from.ry[k] ?? 0;
  }
  to.rx[from.n] = from.rx[from.n] ?? 0;
  to.ry[from.n] = from.ry[from.n] ?? 0;
}

/** What each row needs, from the pieces up. */
function addUp({ n, what, up, nw, nh }: Packing): void {
  for (let k = 0; k < n; k += 1) {
    if ((what[k] ?? 0) >= 0) continue;
    nw[k] = 0;
    nh[k] = 0;
  }
  for (let k = n - 1; k > 0; k -= 1) {
    const row = up[k] ?? 0;
    const w = nw[k] ?? 0;
    const h = nh[k] ?? 0;
    const rowW = nw[row] ?? 0;
    const rowH = nh[row] ?? 0;
    if (what[row] === alongX) {
      nw[row] = rowW + w;
      if (h > rowH) nh[row] = h;
    } else {
      nh[row] = rowH + h;
      if (w > rowW) nw[row] = w;
    }
  }
}

/** What each node could take, from the sheet down, and with it the room in the slots. */
function shareOut(lay: Packing): void {
  const { n, what, up, nw, nh, aw, ah, rx, ry } = lay;
  for (let k = 0; k < n; k += 1) {
    const row = up[k] ?? 0;
    const w = nw[k] ?? 0;
    const h = nh[k] ?? 0;
    const inX = k > 0 && what[row] === alongX;
    const inY = k > 0 && !inX;
    const canW = k === 0 ? lay.w : inX ? w + (aw[row] ?? 0) - (nw[row] ?? 0) : (aw[row] ?? 0);
    const canH = k === 0 ? lay.h : inY ? h + (ah[row] ?? 0) - (nh[row] ?? 0) : (ah[row] ?? 0);
    aw[k] = canW;
    ah[k] = canH;
    const own = what[k] ?? 0;
    const x = own === alongX || (own >= 0 && !inX);
    rx[k] = x ? canW - w : canW;
    ry[k] = x ? canH : canH - h;
  }
  const rootX = what[0] === alongX;
  rx[n] = rootX || n <= 1 ? lay.w : lay.w - (nw[0] ?? 0);
  ry[n] = rootX || n <= 1 ? lay.h - (n > 0 ? (nh[0] ?? 0) : 0) : lay.h;
}

function refresh(lay: Packing): void {
  addUp(lay);
  shareOut(lay);
}

/** Moves the nodes from `from` on by so many places. */
function shift(lay: Packing, from: number, by: number): void {
  const { what, up, nw, nh } = lay;
  for (let k = lay.n - 1; k >= from; k -= 1) {
    const row = up[k] ?? 0;
    what[k + by] = what[k] ?? 0;
    up[k + by] = row >= from ? row + by : row;
    nw[k + by] = nw[k] ?? 0;
    nh[k + by] = nh[k] ?? 0;
  }
  lay.n += by;
}

/** What is to be put in: `what` as in the tree, and the size it lies in. */
type Put = { readonly what: number; readonly w: number; readonly h: number };

function set(lay: Packing, k: number, up: number, { what, w, h }: Put): void {
  lay.what[k] = what;
  lay.up[k] = up;
  lay.nw[k] = w;
  lay.nh[k] = h;
}

const row = (what: number): Put => ({ what, w: 0, h: 0 });

/** Everything there becomes the first of a row across the way it lies in, the new piece the second. */
function putAcross(lay: Packing, put: Put, slot: number): void {
  const across = lay.n === 1 ? (slot === 0 ? alongX : alongY) : lay.what[0] === alongX ? alongY : alongX;
  shift(lay, 0, 1);
  lay.up[1] = 0;
  set(lay, 0, -1, row(across));
  lay.n += 1;
  set(lay, lay.n - 1, 0, put);
}

/** The piece of the slot and the new one become a row across the row they are in. */
function putBeside(lay: Packing, put: Put, slot: number): void {
  const { what, nw, nh, up } = lay;
  const inRow = up[slot] ?? 0;
  const was = { what: what[slot] ?? 0, w: nw[slot] ?? 0, h: nh[slot] ?? 0 };
  shift(lay, slot + 1, 2);
  set(lay, slot, inRow, row(what[inRow] === alongX ? alongY : alongX));
  set(lay, slot + 1, slot, was);
  set(lay, slot + 2, slot, put);
}

/** The new piece is the last in the row of the slot. */
function putInRow(lay: Packing, put: Put, slot: number): void {
  let end = slot + 1;
  while (end < lay.n && (lay.up[end] ?? 0) >= slot) end += 1;
  shift(lay, end, 1);
  set(lay, end, slot, put);
}

/** Puts a piece into a slot that has room for it. */
export function putIn(lay: Packing, slot: number, put: Put): void {
  widen(lay, lay.n + 3);
  if (lay.n === 0) {
    lay.n = 1;
    set(lay, 0, -1, put);
  } else if (lay.n === 1 || slot === lay.n) putAcross(lay, put, slot);
  else if ((lay.what[slot] ?? 0) >= 0) putBeside(lay, put, slot);
  else putInRow(lay, put, slot);
  lay.free -= put.w * put.h;
  refresh(lay);
}

/** Lays a whole tree on an empty sheet: its nodes in order, each with the row it stands in, pieces with their sizes. */
export function layNodes(lay: Packing, nodes: readonly (Put & { readonly up: number })[]): void {
  widen(lay, nodes.length + 1);
  lay.n = nodes.length;
  nodes.forEach((node, k) => {
    set(lay, k, node.up, node);
    if (node.what >= 0) lay.free -= node.w * node.h;
  });
  refresh(lay);
}

/** Working room for `strike`: how many children stay, and what stands for a node in the new order. */
export type Strike = { stay: Int32Array; to: Int32Array };

export const emptyStrike = (nodes: number): Strike => ({
  stay: new Int32Array(nodes),
  to: new Int32Array(nodes),
});

function countStaying({ n, what, up }: Packing, gone: Uint8Array, stay: Int32Array): void {
  stay.fill(0, 0, n);
  for (let k = n - 1; k >= 0; k -= 1) {
    const leaf = (what[k] ?? 0) >= 0;
    if (leaf) stay[k] = gone[k] ? 0 : 1;
    if (k > 0 && (stay[k] ?? 0) > 0) {
      const row = up[k] ?? 0;
      stay[row] = (stay[row] ?? 0) + 1;
    }
  }
}

/** Takes the marked pieces out; a row of one is no row, and a row in a row of the same way is part of it. */
export function strike(lay: Packing, gone: Uint8Array, { stay, to }: Strike): void {
  const { what, up, nw, nh } = lay;
  countStaying(lay, gone, stay);
  let n = 0;
  for (let k = 0; k < lay.n; k += 1) {
    const staying = stay[k] ?? 0;
    const own = what[k] ?? 0;
    const w = nw[k] ?? 0;
    const h = nh[k] ?? 0;
    if (own >= 0 && gone[k]) lay.free += w * h;
    if (staying === 0) continue;
    const row = k === 0 ? -1 : (to[up[k] ?? 0] ?? 0);
    const joins = own < 0 && (staying === 1 || (row >= 0 && what[row] === own));
    to[k] = joins ? row : n;
    if (joins) continue;
    what[n] = own;
    up[n] = row;
    nw[n] = w;
    nh[n] = h;
    n += 1;
  }
  lay.n = n;
  refresh(lay);
}
