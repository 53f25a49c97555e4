import type { Meter } from '../one-d/meter';
import { type Nest, rowOf } from './nest';
import { alongX, alongY } from './packing';
import type { Kind, PieceTable } from './stock';

/** The least rectangles that hold some pieces: width and height in turn, widths rising, heights falling. */
type Sizes = Float64Array;

/**
 * Pieces that lie on one sheet, in rising rank, and the least sizes of every part of them: bit k of a part is its piece
 * k. `keys`: each part as one number.
 */
export type PieceSet = {
  readonly pieces: readonly number[];
  readonly sizes: readonly Sizes[];
  readonly keys: readonly number[];
};

/** What a sheet takes. A rank is the place of a piece among all, the largest first: `pieces` has their numbers. */
export type SheetSets = {
  readonly pieces: readonly number[];
  readonly none: PieceSet;
  /** Whether a set and a piece that ranks no higher lie on one sheet; undefined where that is too much to find out. */
  readonly takes: (set: PieceSet, rank: number) => boolean | undefined;
  /** A set with one piece more that it takes. */
  readonly plus: (set: PieceSet, rank: number) => PieceSet;
  /** How the pieces of a set lie. */
  readonly nest: (set: PieceSet) => Nest;
};

/** Parts looked at, at most: each is kept. Measured, no source. */
const mostKept = 1_000_000;

/** Pieces in a set, at most: its parts are twice as many with each. Measured, no source. */
const mostInSet = 12;

/** Steps of the meter for a part looked up, for one that is new, for two sizes put together. Measured, no source. */
const lookUp = 90;
const making = 900;
const putting = 20;

const nothing: Sizes = new Float64Array(0);

/** Sizes put together, none of which holds another. */
function gathered() {
  let ws = new Float64Array(64);
  let hs = new Float64Array(64);
  let count = 0;
  const put = (w: number, h: number): void => {
    for (let k = 0; k < count; k += 1) if ((ws[k] ?? 0) <= w && (hs[k] ?? 0) <= h) return;
    let kept = 0;
    for (let k = 0; k < count; k += 1) {
      if (w <= (ws[k] ?? 0) && h <= (hs[k] ?? 0)) continue;
      ws[kept] = ws[k] ?? 0;
      hs[kept] = hs[k] ?? 0;
      kept += 1;
    }
    if (kept === ws.length) [ws, hs] = [doubled(ws), doubled(hs)];
    ws[kept] = w;
    hs[kept] = h;
    count = kept + 1;
  };
  const taken = (): Sizes => {
    if (count === 0) return nothing;
    const order = [...Array(count).keys()].sort((a, b) => (ws[a] ?? 0) - (ws[b] ?? 0));
    count = 0;
    return Float64Array.from(order.flatMap((k) => [ws[k] ?? 0, hs[k] ?? 0]));
  };
  return { put, taken };
}

function doubled(list: Float64Array): Float64Array<ArrayBuffer> {
  const larger = new Float64Array(2 * list.length);
  larger.set(list);
  return larger;
}

/** All parts of what a part leaves, with their sizes by bits. */
type Halves = { readonly own: readonly Sizes[]; readonly others: readonly Sizes[] };

/** Puts the sizes of two parts side by side, and one over the other, where a sheet takes them. */
function joiner({ w, h }: Pick<Kind, 'w' | 'h'>, meter: Meter) {
  const sizes = gathered();
  const both = (a: Sizes, b: Sizes): void => {
    for (let x = 0; x < a.length; x += 2)
      for (let y = 0; y < b.length; y += 2) {
        const [aw, ah, bw, bh] = [a[x] ?? 0, a[x + 1] ?? 0, b[y] ?? 0, b[y + 1] ?? 0];
        if (aw + bw <= w) sizes.put(aw + bw, Math.max(ah, bh));
        if (ah + bh <= h) sizes.put(Math.max(aw, bw), ah + bh);
      }
    meter.spent += (1 + (a.length * b.length) / 4) * putting;
  };
  /** Of a piece and the parts of `bits`: every way to cut them in two. */
  return (bits: number, { own, others }: Halves): Sizes => {
    for (let part = bits; part > 0; ) {
      part = (part - 1) & bits;
      both(own[part] ?? nothing, others[bits ^ part] ?? nothing);
    }
    meter.spent += making;
    return sizes.taken();
  };
}

function sizesAlone({ w, h, turn }: PieceTable, piece: number, room: Pick<Kind, 'w' | 'h'>): Sizes {
  const [pw, ph] = [w[piece] ?? 0, h[piece] ?? 0];
  const ways = turn[piece] === 1 ? [[pw, ph] as const, [ph, pw] as const] : [[pw, ph] as const];
  const fitting = ways.filter(([x, y]) => x <= room.w && y <= room.h);
  return Float64Array.from(fitting.sort(([a], [b]) => a - b).flat());
}

/**
 * Which sets of pieces a sheet takes, cut from edge to edge: exactly, by the least sizes of all their parts.
 *
 * @param stock pieces of no group @param sheet its usable size @param meter what the looking costs is added to it
 * @example const { none, takes } = setsOn(stock, sheet, meter); takes(none, 0) // the largest piece
 */
export function setsOn(stock: PieceTable, sheet: Pick<Kind, 'w' | 'h'>, meter: Meter): SheetSets {
  const area = (piece: number): number => stock.area[piece] ?? 0;
  const pieces = [...stock.count.keys()].sort((a, b) => area(b) - area(a) || a - b);
  const alone = pieces.map((piece) => sizesAlone(stock, piece, sheet));
  const known = new Map<number, Sizes>();
  const join = joiner(sheet, meter);
  const keyOf = (key: number, rank: number): number => key * (pieces.length + 1) + rank + 1;
  const longest = Math.min(mostInSet, Math.floor(53 / Math.log2(pieces.length + 1)));
  /** Of the parts that have the new piece, the sizes; none once one of them finds no room. */
  const grown = ({ sizes, keys }: PieceSet, rank: number): readonly Sizes[] => {
    const own: Sizes[] = [alone[rank] ?? nothing];
    for (let bits = 1; bits < sizes.length; bits += 1) {
      const key = keyOf(keys[bits] ?? 0, rank);
      meter.spent += lookUp;
      let found = known.get(key);
      if (!found) {
        found = join(bits, { own, others: sizes });
        known.set(key, found);
      }
      if (found.length === 0) return [];
      own.push(found);
    }
    return own;
  };
  const takes = (set: PieceSet, rank: number): boolean | undefined => {
    if (set.pieces.length === 0) return (alone[rank] ?? nothing).length > 0;
    if (set.pieces.length >= longest) return undefined;
    const key = keyOf(set.keys[set.keys.length - 1] ?? 0, rank);
    meter.spent += lookUp;
    const found = known.get(key);
    if (found) return found.length > 0;
    if (known.size >= mostKept) return undefined;
    const isTaken = grown(set, rank).length > 0;
    if (!isTaken) known.set(key, nothing);
    return isTaken;
  };
  const plus = (set: PieceSet, rank: number): PieceSet => ({
    pieces: [...set.pieces, rank],
    sizes: [...set.sizes, ...grown(set, rank)],
    keys: [...set.keys, ...set.keys.map((key) => keyOf(key, rank))],
  });
  const none: PieceSet = { pieces: [], sizes: [nothing], keys: [0] };
  const nest = (set: PieceSet) => nestIn({ set, stock, pieces }, set.sizes.length - 1, sheet);
  return { pieces, none, takes, plus, nest };
}

type Placing = { readonly set: PieceSet; readonly stock: PieceTable; readonly pieces: readonly number[] };

/** How a part lies in so much room. */
function nestIn(placing: Placing, bits: number, room: Pick<Kind, 'w' | 'h'>): Nest {
  const { set, stock, pieces } = placing;
  const first = bits & -bits;
  if (first === bits) {
    const piece = pieces[set.pieces[31 - Math.clz32(bits)] ?? 0] ?? 0;
    const isAsGiven = (stock.w[piece] ?? 0) <= room.w && (stock.h[piece] ?? 0) <= room.h;
    return { what: 2 * piece + (isAsGiven ? 0 : 1), of: [] };
  }
  for (let part = (bits - 1) & bits; part > 0; part = (part - 1) & bits) {
    const found = (part & first) === 0 ? undefined : cutInTwo(placing, [part, bits ^ part], room);
    if (found) return found;
  }
  throw new RangeError('nestIn: a set that no sheet takes');
}

/** Two parts side by side or one over the other, where that needs no more than the room. */
function cutInTwo(
  placing: Placing,
  [a, b]: readonly [number, number],
  room: Pick<Kind, 'w' | 'h'>,
): Nest | undefined {
  const [of, on] = [placing.set.sizes[a] ?? nothing, placing.set.sizes[b] ?? nothing];
  for (let x = 0; x < of.length; x += 2)
    for (let y = 0; y < on.length; y += 2) {
      const one = { w: of[x] ?? 0, h: of[x + 1] ?? 0 };
      const other = { w: on[y] ?? 0, h: on[y + 1] ?? 0 };
      const isBeside = one.w + other.w <= room.w && Math.max(one.h, other.h) <= room.h;
      const isOver = one.h + other.h <= room.h && Math.max(one.w, other.w) <= room.w;
      if (isBeside || isOver)
        return rowOf(isBeside ? alongX : alongY, [nestIn(placing, a, one), nestIn(placing, b, other)]);
    }
  return undefined;
}
